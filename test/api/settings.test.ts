import { describe, expect, test } from 'vitest'
import { settingsFrom } from '../../apps/api/src/settings.js'
import readme from '../../README.md?raw'

describe('settings', () => {
  test('have defaults, and an empty variable is none', () => {
    const settings = settingsFrom({ PORT: '', LOG: '' })
    expect(settings).toMatchObject({
      host: '127.0.0.1',
      port: 3000,
      workers: 1,
      log: false,
      requestsPerMinute: 0,
      proxies: 0,
      patience: 30,
    })
  })

  test('are read from the environment', () => {
    expect(settingsFrom({ PORT: '8080', HOST: '::', WORKERS: 'max', LOG: 'json', REQUESTS_PER_MINUTE: '600', PROXIES: '1' })).toMatchObject(
      {
        host: '::',
        port: 8080,
        workers: 0,
        log: true,
        requestsPerMinute: 600,
        proxies: 1,
      },
    )
  })

  /** Every variable with a value that it can't have. */
  const wrong = {
    PORT: '70000',
    HOST: 'http://x',
    WORKERS: '0',
    LOG: 'yes',
    REQUESTS_PER_MINUTE: '-1',
    PROXIES: 'some',
    PATIENCE: '0',
    STOP_DELAY: '1.5',
    STOP_SECONDS: 'soon',
  }

  test('that are wrong are all named at once, with what would be right', () => {
    let message = ''
    try {
      settingsFrom(wrong)
    } catch (error) {
      message = (error as Error).message
    }
    expect(message.split('\n')).toHaveLength(Object.keys(wrong).length)
    for (const [name, value] of Object.entries(wrong)) expect(message).toContain(`${name} is "${value}"; it must be `)
    expect(message).toContain('65535')
  })

  test('are all in the README, with what holds where they are not set', () => {
    const rows = [...readme.matchAll(/^\| (`[A-Z_`, ]+) \| ([^|]+) \|/gm)]
    const told = Object.fromEntries(rows.flatMap(([, names, usual]) => names!.split(', ').map((name, i) => [name, usual!.split(', ')[i]])))
    expect(Object.keys(told).sort()).toEqual(
      Object.keys(wrong)
        .map((name) => `\`${name}\``)
        .sort(),
    )
    const usual = Object.fromEntries(
      Object.entries(told).map(([name, text]) => [name.replaceAll('`', ''), text!.replaceAll('`', '').split(' ')[0]]),
    )
    expect(settingsFrom(usual)).toEqual(settingsFrom({}))
  })
})

/** The reference page: complete, true, and in need of nothing from elsewhere. */
import { createApp, routesFor } from '@pottle/api'
import { beforeAll, describe, expect, test } from 'vitest'
import { ask } from './ask.js'

let page = ''
beforeAll(async () => {
  page = (await ask('/docs')).body
}, 60_000)

const attributes = (name: string): string[] => [...page.matchAll(new RegExp(` ${name}="([^"]*)"`, 'g'))].map(([, value]) => value!)

describe('/docs', () => {
  test('tells of every route, with a request that was really answered', () => {
    for (const { method, path, operation } of routesFor()) {
      expect(page).toContain(`${method.toUpperCase()} ${path}`)
      expect(attributes('id')).toContain(operation)
    }
    expect(page).toContain('half a wine gallon')
    expect(page).not.toMatch(/\/problems\/internal&quot;/)
  })

  test('every link within it leads somewhere, once', () => {
    const ids = attributes('id')
    expect(new Set(ids).size).toBe(ids.length)
    for (const link of attributes('href').filter((href) => href.startsWith('#'))) expect(ids, link).toContain(link.slice(1))
  })

  test('it takes nothing from another host, and needs no script to be read', () => {
    for (const address of [...attributes('href'), ...attributes('src')]) expect(address).toMatch(/^[/#]/)
    expect(page).not.toMatch(/<script(?![^>]* src="\/)/)
    expect(page.replaceAll(/<script[^>]*><\/script>/g, '')).toContain('POST /v1/sheets')
  })

  test('behind a proxy that ends TLS its commands say https', async () => {
    const secure = await createApp().request('http://saltmarsh.example/docs', { headers: { 'x-forwarded-proto': 'https' } })
    const text = await secure.text()
    expect(text).toContain('https://saltmarsh.example/v1/convert')
    expect(text).not.toMatch(/http:\/\/(?:saltmarsh|origin)/)
  })

  test('a limit on requests, which are not its reader’s, does not reach its examples', async () => {
    const app = createApp({ requestsPerMinute: 1 })
    expect(await (await app.request('/docs')).text()).not.toContain('/problems/too-many-requests&quot;')
  })

  test('what a caller claims to be the host cannot break the page', async () => {
    const odd = await createApp().request('http://xn--saltmarsh-.example:81/docs')
    expect(await odd.text()).toContain('xn--saltmarsh-.example:81/v1/convert')
  })
})

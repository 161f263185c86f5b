import { createApp } from '@pottle/api'
import { describe, expect, test } from 'vitest'

describe('the log', () => {
  test('tells the route, the status and the time, and nothing of who asked for what', async () => {
    const entries: object[] = []
    const app = createApp({ log: (entry) => entries.push(entry) })
    await app.request('/v1/convert?phrase=a+secret+pint+of+cream&place=london', { headers: { 'x-request-id': 'one' } })
    await app.request('/v1/sources/digby-1669')
    await app.request('/v1/nonesuch/secret')
    expect(entries[0]).toEqual({
      time: expect.stringMatching(/^\d{4}-\d\d-\d\dT/),
      id: 'one',
      method: 'GET',
      route: '/v1/convert',
      status: 200,
      milliseconds: expect.any(Number),
    })
    expect(entries[1]).toMatchObject({ route: '/v1/sources/:id', status: 200 })
    expect(entries[2]).toMatchObject({ status: 404 })
    expect(JSON.stringify(entries)).not.toMatch(/secret|london|digby|cream/)
  })

  test('a fault of ours is told to the log, by the id that the caller was told, and not to the caller', async () => {
    const faults: object[] = []
    const app = createApp({
      logFault: (entry) => faults.push(entry),
      ready: () => {
        throw new Error('the cellar is flooded')
      },
    })
    const reply = await app.request('/readyz?whose=secret')
    const asked = await app.request('/readyz', { headers: { 'x-request-id': 'kitchen-42' } })
    expect([reply.status, asked.status]).toEqual([400, 500])
    expect(await asked.text()).not.toContain('cellar')
    expect(faults).toEqual([
      {
        time: expect.stringMatching(/^\d{4}-\d\d-\d\dT/),
        id: 'kitchen-42',
        method: 'GET',
        route: '/readyz',
        fault: expect.stringContaining('the cellar is flooded'),
      },
    ])
  })
})

/** How often one address may ask: RateLimit headers (IETF draft-ietf-httpapi-ratelimit-headers-07), Retry-After (RFC 9110). */
import { createApp } from '@pottle/api'
import { describe, expect, test } from 'vitest'
import { networkOf } from '../../apps/api/src/http/limit.js'
import { ask } from './ask.js'
import { conversion } from './questions.js'

describe('limits', () => {
  test('a limit is off unless it is asked for', async () => {
    expect((await ask(conversion)).headers.get('ratelimit')).toBeNull()
  })

  test('so many requests a minute are answered, with what is left in the headers', async () => {
    const app = createApp({ requestsPerMinute: 2 })
    const replies = [await app.request(conversion), await app.request(conversion), await app.request(conversion)]
    expect(replies.map(({ status }) => status)).toEqual([200, 200, 429])
    expect(replies[0]!.headers.get('ratelimit')).toMatch(/^limit=2, remaining=1, reset=\d+$/)
    expect(replies[0]!.headers.get('ratelimit-policy')).toBe('2;w=60')
    expect(replies[0]!.headers.get('etag')).not.toBeNull()
    expect(Number(replies[2]!.headers.get('retry-after'))).toBeGreaterThan(0)
    expect(replies[2]!.headers.get('ratelimit')).toMatch(/^limit=2, remaining=0, reset=\d+$/)
    expect(replies[2]!.headers.get('cache-control')).toBe('no-store')
    expect(await replies[2]!.json()).toMatchObject({ status: 429, type: '/problems/too-many-requests' })
  })

  test.each([
    '/',
    '/measure?phrase=a+pint+of+cream',
    '/heat?phrase=a+slack+oven',
    '/sheet?text=a+pint+of+cream',
    '/loaves',
    '/oven',
    '/measures/pottle',
    '/sources',
    '/embed/measure?phrase=a+pint+of+cream',
    '/embed/loaf.svg?year=1690',
    '/oembed?url=http%3A%2F%2Flocalhost%2Fmeasure%3Fphrase%3Da%2Bpint%2Bof%2Bcream',
    '/docs',
    '/openapi.json',
    '/problems',
    '/nonesuch',
  ])('%s counts, since it does work', async (path) => {
    const app = createApp({ requestsPerMinute: 1 })
    const first = await app.request(path, { headers: { 'accept-encoding': 'gzip' } })
    expect(first.headers.get('ratelimit')).toMatch(/^limit=1, remaining=0, reset=\d+$/)
    expect(first.headers.get('ratelimit-policy')).toBe('1;w=60')
    const second = await app.request(path)
    expect(second.status).toBe(429)
    expect(Number(second.headers.get('retry-after'))).toBeGreaterThan(0)
    expect(await second.json()).toMatchObject({ status: 429, type: '/problems/too-many-requests' })
    const page = await app.request(path, { headers: { accept: 'text/html' } })
    expect([page.status, page.headers.get('cache-control')]).toEqual([429, 'no-store'])
    expect(Number(page.headers.get('retry-after'))).toBeGreaterThan(0)
  })

  test('what does no work is free: how the server is, files that never change, and preflights', async () => {
    const app = createApp({ requestsPerMinute: 1 })
    const [style] = /\/assets\/\w+\/pottle\.css/.exec(await (await app.request('/')).text())!
    expect((await app.request('/')).status).toBe(429)
    for (const path of ['/healthz', '/readyz', style, '/embed/pottle.js']) {
      const { status, headers } = await app.request(path)
      expect([path, status, headers.get('ratelimit')]).toEqual([path, 200, null])
    }
    expect((await app.request('/v1/convert', { method: 'OPTIONS' })).status).toBe(204)
  })

  test('the addresses of one IPv6 network are one client', () => {
    expect(networkOf('2001:db8:1:2:3:4:5:6')).toBe('2001:db8:1:2::/64')
    expect(networkOf('2001:db8:1:2::7')).toBe('2001:db8:1:2::/64')
    expect(networkOf('2001:db8::7')).toBe('2001:db8:0:0::/64')
    expect(networkOf('::1')).toBe('0:0:0:0::/64')
    for (const alone of ['192.0.2.1', '::ffff:192.0.2.1', 'unknown']) expect(networkOf(alone)).toBe(alone)
  })

  test('behind proxies the client is the one that the first of them saw, not the one it claims to be', async () => {
    const app = createApp({ requestsPerMinute: 1, proxies: 1 })
    const from = async (forwarded: string) => (await app.request(conversion, { headers: { 'x-forwarded-for': forwarded } })).status
    expect(await from('192.0.2.1')).toBe(200)
    expect(await from('192.0.2.2')).toBe(200)
    expect(await from('203.0.113.9, 192.0.2.1')).toBe(429)
  })
})

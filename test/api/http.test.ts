/** What every answer has in common: RFC 9110 (semantics), RFC 9111 (caching), RFC 9457 (problems), the Fetch Standard (CORS). */
import { createApp } from '@pottle/api'
import { describe, expect, test } from 'vitest'
import { networkOf } from '../../apps/api/src/http/limit.js'
import { settingsFrom } from '../../apps/api/src/settings.js'
import readme from '../../README.md?raw'
import { ask, post } from './ask.js'

const conversion = '/v1/convert?phrase=a+pottle+of+cream&year=1690'

describe('caches', () => {
  test('one strong tag is the tag of every answer of one form', async () => {
    const tags = await Promise.all([conversion, '/v1/measures/pottle', '/v1/oven-heats', '/openapi.json'].map((path) => ask(path)))
    const all = tags.map(({ headers }) => headers.get('etag'))
    expect(new Set(all).size).toBe(1)
    expect(all[0]).toMatch(/^"[\d.]+-[\d.]+"$/)
    for (const { headers } of tags) expect(headers.get('cache-control')).toBe('public, max-age=86400')
  })

  test.each([(tag: string) => tag, (tag: string) => `W/${tag}`, (tag: string) => `"other", ${tag}`])(
    'a client that has the answer is told so before any work is done',
    async (header) => {
      const { headers } = await ask(conversion)
      // The question is not even read: it would be a fault.
      const reply = await ask('/v1/convert?phrase=', { headers: { 'if-none-match': header(headers.get('etag')!) } })
      expect(reply.status).toBe(304)
      expect(reply.body).toBe('')
      expect(reply.headers.get('etag')).toBe(headers.get('etag'))
      // What guides a cache is told again (RFC 9110, section 15.4.5); what belongs to the body is not.
      for (const name of ['cache-control', 'vary', 'access-control-allow-origin'])
        expect(reply.headers.get(name), name).toBe(headers.get(name))
      expect(reply.headers.get('vary')).toContain('Accept-Encoding')
      expect(reply.headers.get('content-type')).toBeNull()
    },
  )

  test('a tag of another release is no excuse', async () => {
    expect((await ask(conversion, { headers: { 'if-none-match': '"2020.1.0-0.0.1"' } })).status).toBe(200)
  })

  test('each form of a source has a tag of its own, and caches are told what it depends on', async () => {
    const forms = ['application/json', 'application/x-bibtex', 'text/plain']
    const replies = await Promise.all(forms.map((accept) => ask('/v1/sources/digby-1669', { headers: { accept } })))
    expect(new Set(replies.map(({ headers }) => headers.get('etag'))).size).toBe(3)
    for (const { headers } of replies) expect(headers.get('vary')).toMatch(/\bAccept\b/)
    const bibtex = replies[1]!.headers.get('etag')!
    const crossed = await ask('/v1/sources/digby-1669', { headers: { accept: 'text/plain', 'if-none-match': bibtex } })
    expect(crossed.status).toBe(200)
    const both = `${replies[0]!.headers.get('etag')}, ${bibtex}`
    const known = await ask('/v1/sources/digby-1669', { headers: { accept: 'application/x-bibtex', 'if-none-match': both } })
    expect(known.status).toBe(304)
    expect(known.headers.get('etag')).toBe(bibtex)
  })

  test('faults are as lasting as answers, but what is of the moment is not kept', async () => {
    expect((await ask('/v1/convert?phrase=a+pint&year=3000')).headers.get('cache-control')).toBe('public, max-age=86400')
    expect((await post('/v1/convert', { phrase: 'a pint of cream' })).headers.get('cache-control')).toBe('no-store')
    expect((await ask('/healthz')).headers.get('cache-control')).toBe('no-store')
  })
})

describe('methods', () => {
  test.each([conversion, '/healthz', '/v1/oven-heats.svg', '/docs', '/problems/unreadable'])(
    'HEAD %s has the headers of GET and no body',
    async (path) => {
      const [get, head] = [await ask(path), await ask(path, { method: 'HEAD' })]
      expect(head.status).toBe(200)
      expect(head.body).toBe('')
      for (const name of ['content-type', 'etag', 'cache-control', 'vary']) expect(head.headers.get(name), name).toBe(get.headers.get(name))
    },
  )

  test.each([
    ['/v1/measures', 'DELETE', 'GET, HEAD, OPTIONS'],
    ['/v1/measures/pottle', 'PUT', 'GET, HEAD, OPTIONS'],
    ['/v1/convert', 'PATCH', 'GET, HEAD, POST, OPTIONS'],
    ['/v1/readings', 'GET', 'POST, OPTIONS'],
    ['/openapi.json', 'POST', 'GET, HEAD, OPTIONS'],
    ['/docs', 'POST', 'GET, HEAD, OPTIONS'],
  ])('%s refuses %s and says what it takes', async (path, method, allow) => {
    const { status, headers, body } = await ask(path, { method })
    expect(status).toBe(405)
    expect(headers.get('allow')).toBe(allow)
    expect(body.type).toBe('/problems/method-not-allowed')
  })

  test('OPTIONS tells the methods, and a preflight lets pages of any origin ask', async () => {
    const plain = await ask('/v1/measures', { method: 'OPTIONS' })
    expect(plain.status).toBe(204)
    expect(plain.headers.get('allow')).toBe('GET, HEAD, OPTIONS')
    const headers = {
      origin: 'https://saltmarsh.example',
      'access-control-request-method': 'POST',
      'access-control-request-headers': 'content-type',
    }
    const preflight = await ask('/v1/convert', { method: 'OPTIONS', headers })
    expect(preflight.status).toBe(204)
    expect(preflight.headers.get('access-control-allow-origin')).toBe('*')
    expect(preflight.headers.get('access-control-allow-methods')).toContain('POST')
    expect(preflight.headers.get('access-control-allow-headers')).toMatch(/content-type/i)
    expect((await ask('/nonesuch', { method: 'OPTIONS' })).status).toBe(404)
  })
})

describe('negotiation', () => {
  test.each([
    ['application/json', 200],
    ['*/*', 200],
    ['application/*;q=0.5', 200],
    ['text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8', 200],
    ['APPLICATION/JSON; charset=utf-8', 200],
    ['text/csv', 406],
    ['application/json;q=0', 406],
    ['application/json;q=0, */*', 406],
    ['*/*;q=0', 406],
  ])('Accept: %s is %i', async (accept, status) => {
    const reply = await ask(conversion, { headers: { accept } })
    expect(reply.status).toBe(status)
    if (status === 406) expect(reply.body.errors[0].detail).toContain('application/json')
    // A cache that is not told of Accept would give one client's refusal to all the others.
    expect(reply.headers.get('cache-control')).toBe(status === 406 ? 'no-store' : 'public, max-age=86400')
  })

  test('the form that is wanted most is given, the narrowest range deciding', async () => {
    const form = async (accept: string) =>
      (await ask('/v1/sources/digby-1669', { headers: { accept } })).headers.get('content-type')!.split(';')[0]
    expect(await form('text/plain;q=0.5, application/x-bibtex;q=0.6')).toBe('application/x-bibtex')
    expect(await form('text/*;q=0.9, text/plain;q=0.1, application/x-bibtex;q=0.5')).toBe('application/x-bibtex')
    expect(await form('*/*;q=0.1, text/plain')).toBe('text/plain')
  })

  test('a body in another media type is refused with those that are read', async () => {
    for (const path of ['/v1/convert', '/v1/readings', '/v1/sheets', '/v1/bake-plans', '/v1/brick-oven']) {
      const { status, body } = await post(path, '{}', 'text/csv')
      expect(status, path).toBe(415)
      expect(body.errors[0]).toMatchObject({ parameter: 'Content-Type', detail: expect.stringContaining('application/json') })
    }
  })

  test('long answers are compressed piece by piece', async () => {
    const zipped = await createApp().request('/v1/measures', { headers: { 'accept-encoding': 'gzip' } })
    expect(zipped.headers.get('content-encoding')).toBe('gzip')
    const { body } = await ask('/v1/measures')
    expect(await new Response(zipped.body!.pipeThrough(new DecompressionStream('gzip'))).json()).toEqual(body)
  })

  test('a body that is compressed is refused before it unfolds', async () => {
    const zipped = await new Response(
      new Blob(['{"phrase":"a pint of cream"}']).stream().pipeThrough(new CompressionStream('gzip')),
    ).arrayBuffer()
    const headers = { 'content-type': 'application/json', 'content-encoding': 'gzip' }
    for (const path of ['/v1/convert', '/v1/readings', '/v1/sheets']) {
      const { status, body } = await ask(path, { method: 'POST', headers, body: zipped })
      expect(status, path).toBe(415)
      expect(body.errors[0]).toMatchObject({ parameter: 'Content-Encoding' })
    }
  })

  test('answers of some length are compressed for those who ask, and only for them', async () => {
    const app = createApp()
    const zipped = await app.request(conversion, { headers: { 'accept-encoding': 'br, gzip' } })
    expect(zipped.headers.get('content-encoding')).toBe('gzip')
    expect(zipped.headers.get('vary')).toContain('Accept-Encoding')
    // The bytes of a compressed answer are not promised: the tag is a weak one (RFC 9110, section 8.8.1).
    expect(zipped.headers.get('etag')).toMatch(/^W\//)
    const plain = await (await app.request(conversion)).text()
    expect(await new Response(zipped.body!.pipeThrough(new DecompressionStream('gzip'))).text()).toBe(plain)
    // Asked again, and now from memory, the bytes are the same.
    const again = await app.request(conversion, { headers: { 'accept-encoding': 'gzip' } })
    expect(again.headers.get('etag')).toBe(zipped.headers.get('etag'))
    expect(await new Response(again.body!.pipeThrough(new DecompressionStream('gzip'))).text()).toBe(plain)
    for (const encoding of ['identity', 'gzip;q=0', 'br'])
      expect((await app.request(conversion, { headers: { 'accept-encoding': encoding } })).headers.get('content-encoding')).toBeNull()
    expect((await app.request('/healthz', { headers: { 'accept-encoding': 'gzip' } })).headers.get('content-encoding')).toBeNull()
  })
})

describe('every answer', () => {
  test.each([conversion, '/v1/measures', '/nonesuch', '/openapi.json', '/docs', '/problems', '/'])(
    '%s carries the headers of safety',
    async (path) => {
      const { headers } = await ask(path)
      expect(headers.get('x-content-type-options')).toBe('nosniff')
      expect(headers.get('referrer-policy')).toBe('no-referrer')
      expect(headers.get('content-security-policy')).toMatch(/^default-src 'none'/)
      expect(headers.get('content-security-policy')).not.toMatch(/unsafe|https?:|\*/)
      expect(headers.get('access-control-allow-origin')).toBe('*')
    },
  )

  test('has an id: the caller’s own where it is short and plain', async () => {
    const id = async (given?: string) =>
      (await ask('/healthz', given ? { headers: { 'x-request-id': given } } : {})).headers.get('x-request-id')!
    expect(await id('kitchen-42')).toBe('kitchen-42')
    expect(await id()).toMatch(/^[\da-f-]{36}$/)
    expect(await id('two words')).toMatch(/^[\da-f-]{36}$/)
    expect(await id('x'.repeat(65))).toMatch(/^[\da-f-]{36}$/)
    expect(await id()).not.toBe(await id())
  })
})

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

describe('problems', () => {
  test('every kind is explained at its address, to programs and to people', async () => {
    const { body: kinds } = await ask('/problems', { headers: { accept: 'application/json' } })
    expect(kinds.length).toBeGreaterThanOrEqual(12)
    for (const { type, title, status } of kinds) {
      const told = await ask(type)
      expect(told.body).toMatchObject({ type, title, status })
      const page = await ask(type, { headers: { accept: 'text/html' } })
      expect(page.headers.get('content-type')).toMatch(/^text\/html/)
      expect(page.body).toContain(title)
    }
  })

  test('the type of a problem is an address that is there', async () => {
    const faults = [
      await ask('/v1/convert'),
      await ask('/nonesuch'),
      await ask('/v1/convert?phrase=once+upon+a+time'),
      await ask('/v1/loaves?year=1200'),
      await ask('/v1/measures', { method: 'DELETE' }),
      await ask('/v1/measures', { headers: { accept: 'image/png' } }),
      await post('/v1/readings', 'x', 'text/plain'),
      await post('/v1/readings', '{"text":'),
    ]
    for (const { status, body } of faults) {
      expect((await ask(body.type)).body).toMatchObject({ type: body.type, status })
    }
  })
})

describe('problems for people', () => {
  /** As browsers ask for a page (Firefox 132). */
  const browser = { accept: 'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8' }
  const broken = (path: string, log: (entry: { readonly id: string }) => void) =>
    createApp({
      log,
      logFault: () => {},
      ready: () => {
        throw new Error('the cellar is flooded')
      },
    }).request(path, { headers: browser })

  test.each([
    ['/nonesuch', 404, 'There is nothing at this address'],
    ['/assets/0/nonesuch', 404, 'There is nothing at this address'],
    ['/problems/nonesuch', 404, 'There is nothing at this address'],
    ['/sheet?text=a+pint+of+cream&as=papyrus', 404, 'There is nothing at this address'],
  ])('%s is a page with status %i for a browser', async (path, status, title) => {
    const page = await ask(path, { headers: browser })
    expect(page.status).toBe(status)
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
    expect(page.headers.get('content-security-policy')).toMatch(/^default-src 'none'/)
    expect(page.body).toContain(`<h1>${title}</h1>`)
    // Words of the caller are in it, as words.
    expect(page.body).toMatch(/nonesuch|papyrus/)
    expect(page.headers.get('vary')).toContain('Accept')
  })

  test('words of the caller are no markup', async () => {
    const { body } = await ask('/%3Cscript%3Ealert(1)%3C%2Fscript%3E', { headers: browser })
    expect(body).toContain('&lt;script&gt;')
    expect(body).not.toMatch(/<script(?! src="\/assets)/)
  })

  test('a wrong method says what the address takes', async () => {
    const page = await ask('/docs', { method: 'POST', headers: browser })
    expect([page.status, page.headers.get('allow')]).toEqual([405, 'GET, HEAD, OPTIONS'])
    expect(page.body).toContain('/docs answers GET, HEAD, OPTIONS.')
  })

  test('a fault of ours has the id that the log has, and nothing of its cause', async () => {
    const ids: string[] = []
    const page = await broken('/readyz', ({ id }) => ids.push(id))
    const text = await page.text()
    expect(page.status).toBe(500)
    expect(ids).toEqual([page.headers.get('x-request-id')])
    expect(text).toContain(ids[0])
    expect(text).not.toContain('cellar')
    expect(page.headers.get('cache-control')).toBe('no-store')
  })

  test.each([[undefined], ['*/*'], ['application/json'], ['application/problem+json, text/html;q=0.9'], ['text/html;q=0'], ['image/png']])(
    'a client that accepts %s gets problem details',
    async (accept) => {
      const reply = await ask('/nonesuch', accept ? { headers: { accept } } : {})
      expect(reply.status).toBe(404)
      expect(reply.headers.get('content-type')).toBe('application/problem+json')
      expect(reply.headers.get('vary')).toContain('Accept')
    },
  )

  test('the API proper speaks to programs alone, for there are some that ask for pages without knowing it', async () => {
    for (const path of ['/v1/nonesuch', '/v1/convert', '/v1/measures/nonesuch', '/v1/convert?phrase=once+upon+a+time'])
      expect((await ask(path, { headers: browser })).headers.get('content-type'), path).toBe('application/problem+json')
  })
})

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

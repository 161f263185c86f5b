/** What every answer has in common: RFC 9110 (semantics), RFC 9111 (caching), the Fetch Standard (CORS). */
import { createApp } from '@pottle/api'
import { describe, expect, test } from 'vitest'
import { ask, post } from './ask.js'
import { conversion } from './questions.js'

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
    const ours = [await id(), await id('two words'), await id('x'.repeat(65)), await id()]
    for (const one of ours) expect(one).toMatch(/^[\da-f]{8}-[\da-f]{4}-[\da-z]+$/)
    expect(new Set(ours).size).toBe(ours.length)
  })
})

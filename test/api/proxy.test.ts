/** The server behind nginx, with the configuration that ships. Without nginx it fails where `CI` is set, and elsewhere says that it was left out. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { bundleServer } from './bundle.js'
import { type Child, endChildren, openSocket, startChild } from './child.js'
import { hasNginx, type Nginx, startNginx } from './nginx.js'
import { conversion, essence, questions } from './questions.js'

const found = hasNginx()
const advice = 'nginx was not found; install it (Debian: apt-get install nginx-light) and run the tests again'
if (!found && process.env.CI) throw new Error(advice)
if (!found) console.warn(`The tests of the caching proxy are left out: ${advice}.`)

/** A whole line, in however many pieces it comes; nothing follows it until the next question is put. */
async function readLine(reader: ReadableStreamDefaultReader<string>): Promise<string> {
  let line = ''
  while (!line.endsWith('\n')) {
    const { done, value } = await reader.read()
    if (done) throw new Error(`the stream ended after ${JSON.stringify(line)}`)
    line += value
  }
  return line
}

describe.skipIf(!found)('behind nginx', () => {
  let origin: Child
  let nginx: Nginx | undefined
  let url = ''
  let port = 0

  beforeAll(async () => {
    origin = await startChild(await bundleServer())
    nginx = await startNginx(origin.port)
    ;({ url, port } = nginx)
  }, 120_000)

  afterAll(async () => {
    await nginx?.stop()
    endChildren()
  }, 30_000)

  test.each(questions.map((question) => [`${question.init?.method ?? 'GET'} ${question.path}`, question] as const))(
    '%s is the origin’s own, at first and out of the cache',
    async (_, { path, init }) => {
      const asked = { ...init, headers: { ...init?.headers, 'accept-encoding': 'identity' } }
      const direct = await essence(await fetch(origin.url + path, asked))
      expect(await essence(await fetch(url + path, asked))).toEqual(direct)
      const again = await fetch(url + path, asked)
      // Of a POST the cache says nothing; what is of the moment it does not keep.
      const cached = init?.method === 'POST' ? null : path === '/healthz' ? 'MISS' : 'HIT'
      expect(again.headers.get('x-cache')).toBe(cached)
      expect(await essence(again)).toEqual(direct)
    },
  )

  test('the second of two like questions never reaches the origin', async () => {
    const path = '/v1/convert?phrase=a+peck+of+flour&year=1701'
    const [first, second] = [await fetch(url + path), await fetch(url + path)]
    expect([first, second].map(({ headers }) => headers.get('x-cache'))).toEqual(['MISS', 'HIT'])
    expect(await second.text()).toBe(await first.text())
    expect(second.headers.get('x-request-id')).not.toBe(first.headers.get('x-request-id'))
  })

  test('each form of an answer is kept by itself', async () => {
    const as = (accept: string) => fetch(`${url}/v1/sources/digby-1669`, { headers: { accept } }).then((response) => response.text())
    for (let i = 0; i < 2; i++) {
      expect(await as('application/x-bibtex')).toMatch(/^@book/)
      expect(await as('application/json')).toMatch(/^\{/)
    }
  })

  test('what one caller says of its host or scheme reaches no other', async () => {
    const path = '/embed/measure?phrase=a+pint+of+cream&year=1690'
    const as = async (lines: string) => {
      const { socket, received, closed } = await openSocket(port)
      socket.write(`GET ${path} HTTP/1.1\r\n${lines}Connection: close\r\n\r\n`)
      await closed
      return received()
    }
    expect(await as('Host: evil.example\r\nX-Forwarded-Proto: https\r\n')).toContain('http://evil.example/')
    const told = await as('Host: saltmarsh.example\r\n')
    expect(told).toContain('http://saltmarsh.example/')
    expect(told).not.toMatch(/evil|https:\/\/saltmarsh/)
  })

  test('a client that has the answer gets a 304 out of the cache', async () => {
    await fetch(url + conversion)
    const etag = (await fetch(url + conversion, { headers: { 'accept-encoding': 'identity' } })).headers.get('etag')!
    const reply = await fetch(url + conversion, { headers: { 'if-none-match': etag } })
    expect(reply.status).toBe(304)
    expect(reply.headers.get('x-cache')).toBe('HIT')
  })

  test('one kept answer serves those who take gzip and those who do not', async () => {
    const zipped = await fetch(url + conversion, { headers: { 'accept-encoding': 'gzip' } })
    const plain = await fetch(url + conversion, { headers: { 'accept-encoding': 'identity' } })
    expect([zipped, plain].map(({ headers }) => headers.get('content-encoding'))).toEqual(['gzip', null])
    expect([zipped, plain].map(({ headers }) => headers.get('x-cache'))).toEqual(['HIT', 'HIT'])
    expect(zipped.headers.get('vary')).toBe('Accept-Encoding')
    expect(await zipped.text()).toBe(await plain.text())
  })

  test('a line of a stream is answered before the next is sent', async () => {
    let controller!: ReadableStreamDefaultController<Uint8Array>
    const body = new ReadableStream<Uint8Array>({
      start: (one) => {
        controller = one
      },
    })
    const line = new TextEncoder().encode('{"phrase":"a pint of cream","year":1690}\n')
    controller.enqueue(line)
    const init = { method: 'POST', headers: { 'content-type': 'application/x-ndjson' }, body, duplex: 'half' } as RequestInit
    const reader = (await fetch(`${url}/v1/convert`, init)).body!.pipeThrough(new TextDecoderStream()).getReader()
    for (let i = 0; i < 3; i++) {
      expect(JSON.parse(await readLine(reader)).reading.measure).toBe('pint')
      controller.enqueue(line)
    }
    controller.close()
    await reader.cancel()
  })

  test.each([
    ['an endless address', `GET /${'a'.repeat(100_000)} HTTP/1.1\r\nHost: x\r\n\r\n`, 414, 'address-too-long'],
    ['one endless header', `GET / HTTP/1.1\r\nHost: x\r\nX-Long: ${'a'.repeat(100_000)}\r\n\r\n`, 431, 'too-many-headers'],
    ['no HTTP at all', 'a pottle of cream, if you please\r\n\r\n', 400, 'malformed'],
  ])('%s, which nginx itself refuses, is a problem', async (_, text, status, kind) => {
    const { socket, received, closed } = await openSocket(port)
    socket.write(text)
    await closed
    expect(received()).toMatch(new RegExp(`^HTTP/1.1 ${status} `))
    const body = JSON.parse(received().split('\r\n\r\n')[1]!)
    expect(body).toMatchObject({ type: `/problems/${kind}`, status })
    expect((await fetch(origin.url + body.type).then((page) => page.json())).title).toBe(body.title)
  })

  test('an emptied cache, as after a release, is filled anew while nginx goes on', async () => {
    await fetch(url + conversion)
    expect((await fetch(url + conversion)).headers.get('x-cache')).toBe('HIT')
    nginx!.empty()
    const fresh = await fetch(url + conversion)
    expect([fresh.status, fresh.headers.get('x-cache')]).toEqual([200, 'MISS'])
    expect((await fetch(url + conversion)).headers.get('x-cache')).toBe('HIT')
  })

  test('while the origin is down, what was once answered is answered still, and the rest is a problem', async () => {
    await fetch(`${url}/v1/measures/pottle`)
    await origin.stop()
    const kept = await fetch(`${url}/v1/measures/pottle`)
    expect(kept.status).toBe(200)
    const fresh = await fetch(`${url}/v1/measures/gill`)
    expect(fresh.status).toBe(503)
    expect(fresh.headers.get('content-type')).toBe('application/problem+json')
    expect(await fresh.json()).toMatchObject({ status: 503, type: '/problems/draining' })
  })
})

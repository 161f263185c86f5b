/** The server as a process, and clients that break the rules of HTTP, or of manners. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { bundleServer } from './bundle.js'
import { type Child, endChildren, openSocket, pause, startChild } from './child.js'
import { conversion } from './questions.js'

let file = ''
beforeAll(async () => {
  file = await bundleServer()
}, 60_000)
afterAll(endChildren)

describe('rude clients', () => {
  let child: Child
  beforeAll(async () => {
    child = await startChild(file, { PATIENCE: '1' })
  }, 30_000)
  afterAll(() => child.stop())

  /** While others are rude, the polite are served. */
  const expectServed = async (): Promise<void> => {
    const start = performance.now()
    expect((await fetch(`${child.url}${conversion}`)).status).toBe(200)
    expect(performance.now() - start).toBeLessThan(2000)
  }

  const problemIn = (text: string) => {
    const [head, body] = text.split('\r\n\r\n') as [string, string]
    expect(head).toMatch(/content-type: application\/problem\+json/i)
    expect(head).toMatch(/access-control-allow-origin: \*/i)
    return JSON.parse(body.replace(/^[\da-f]+\r\n([\s\S]*?)\r\n0$/, '$1'))
  }

  test('headers that dribble in are cut off, a hundred of them at once', { timeout: 30_000 }, async () => {
    const all = await Promise.all(Array.from({ length: 100 }, () => openSocket(child.port)))
    for (const { socket } of all) socket.write('GET /healthz HTTP/1.1\r\nHost: x\r\nX-Slow: ')
    const dribble = setInterval(() => all.forEach(({ socket }) => void (socket.writable && socket.write('a'))), 200)
    await expectServed()
    await Promise.all(all.map(({ closed }) => closed))
    clearInterval(dribble)
    expect(problemIn(all[0]!.received())).toMatchObject({ status: 408, type: '/problems/too-slow' })
  })

  test('connections that say nothing are closed', { timeout: 30_000 }, async () => {
    const all = await Promise.all(Array.from({ length: 100 }, () => openSocket(child.port)))
    await expectServed()
    await Promise.all(all.map(({ closed }) => closed))
  })

  test('half a connection, whose client is gone without a word, is given up', { timeout: 30_000 }, async () => {
    const { socket, closed } = await openSocket(child.port)
    socket.write('POST /v1/readings HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 100\r\n\r\n{"te')
    socket.end()
    await closed
    await expectServed()
  })

  test.each([
    ['a body', '/v1/readings', 'application/json'],
    ['a form', '/sheet', 'application/x-www-form-urlencoded'],
  ])('%s that dribbles in is answered with 408', { timeout: 30_000 }, async (_, path, type) => {
    const { socket, received, closed } = await openSocket(child.port)
    socket.write(`POST ${path} HTTP/1.1\r\nHost: x\r\nContent-Type: ${type}\r\nContent-Length: 100000\r\n\r\n`)
    const dribble = setInterval(() => socket.writable && socket.write(' '), 100)
    while (!/\r\n\r\n[\s\S]*\}/.test(received())) await pause(50)
    clearInterval(dribble)
    expect(problemIn(received())).toMatchObject({ status: 408, type: '/problems/too-slow' })
    socket.destroy()
    await closed
  })

  test.each([
    ['too many headers', `GET /healthz HTTP/1.1\r\nHost: x\r\n${'X-Flood: aaaaaaaaaaaaaaaa\r\n'.repeat(2000)}\r\n`, 431],
    ['one endless header', `GET /healthz HTTP/1.1\r\nHost: x\r\nX-Long: ${'a'.repeat(1_000_000)}\r\n\r\n`, 431],
    ['an endless address', `GET /v1/convert?phrase=${'a'.repeat(100_000)} HTTP/1.1\r\nHost: x\r\n\r\n`, 414],
    ['an address that is too long but ends', `GET /v1/convert?phrase=${'a'.repeat(20_000)} HTTP/1.1\r\nHost: x\r\n\r\n`, 414],
    ['no HTTP at all', 'a pottle of cream, if you please\r\n\r\n', 400],
    ['a method with a space', 'GE T / HTTP/1.1\r\nHost: x\r\n\r\n', 400],
    ['two lengths', 'POST /v1/convert HTTP/1.1\r\nHost: x\r\nContent-Length: 3\r\nContent-Length: 4\r\n\r\n{}', 400],
    [
      'a length and chunks',
      'POST /v1/convert HTTP/1.1\r\nHost: x\r\nContent-Length: 3\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n',
      400,
    ],
    ['a host that is none', 'GET /healthz HTTP/1.1\r\nHost: a b c\r\n\r\n', 400],
    ['an address that is none', 'GET http://[::1 HTTP/1.1\r\nHost: x\r\n\r\n', 400],
  ])('%s is refused with a problem', { timeout: 30_000 }, async (_, text, status) => {
    const { socket, received, closed } = await openSocket(child.port)
    socket.write(text)
    while (!/\r\n\r\n[\s\S]*\}/.test(received()) && !socket.destroyed) await pause(20)
    expect(received()).toMatch(new RegExp(`^HTTP/1.1 ${status} `))
    expect(problemIn(received())).toMatchObject({ status, type: expect.stringMatching(/^\/problems\//) })
    socket.destroy()
    await closed
    await expectServed()
  })

  test('a body without a length is read no further than the limit', { timeout: 30_000 }, async () => {
    const chunk = new TextEncoder().encode('a pint of cream, '.repeat(4000))
    let sent = 0
    const body = new ReadableStream<Uint8Array>({
      pull(controller) {
        sent += chunk.length
        if (sent > 50_000_000) controller.close()
        else controller.enqueue(chunk)
      },
    })
    const init = { method: 'POST', headers: { 'content-type': 'application/json' }, body, duplex: 'half' } as RequestInit
    const status = await fetch(`${child.url}/v1/readings`, init).then(
      (response) => response.status,
      () => 'the connection was closed',
    )
    expect([413, 'the connection was closed']).toContain(status)
    expect(sent).toBeLessThan(20_000_000)
    await expectServed()
  })

  test('a stream that breaks off in the middle harms nobody', { timeout: 30_000 }, async () => {
    const head = 'POST /v1/convert HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n'
    const line = '{"phrase":"a pint of cream"}\n'
    for (let i = 0; i < 20; i++) {
      const { socket, received, closed } = await openSocket(child.port)
      socket.write(`${head}${line.length.toString(16)}\r\n${line}\r\nff\r\n{"phrase":"a pi`)
      while (!/\r\n\r\n/.test(received())) await pause(10)
      socket.destroy()
      await closed
    }
    await expectServed()
    expect(child.process.exitCode).toBeNull()
  })

  test('a client that sends and never reads is held back, not stored up', { timeout: 60_000 }, async () => {
    const { socket, closed } = await openSocket(child.port)
    socket.pause()
    socket.write('POST /v1/convert HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n')
    const lines = '{"phrase":"a pint of cream","year":1690}\n'.repeat(1000)
    const chunk = `${lines.length.toString(16)}\r\n${lines}\r\n`
    let taken = 0
    const most = 2000
    for (let i = 0; i < most && !socket.destroyed; i++) {
      const all = socket.write(chunk, () => taken++)
      if (!all) await Promise.race([new Promise((resolve) => socket.once('drain', resolve)), closed, pause(1000)])
      if (!all && socket.writableLength > 4_000_000) break
    }
    // Two million answers of some 6 kB would be 12 GB; the kernel's own buffers hold a few megabytes of requests.
    expect(taken).toBeLessThan(300)
    await expectServed()
    // A stream in which nothing moves is closed at last.
    await closed
  })

  test.runIf(process.platform === 'linux')(
    'a stream without end, of a client that reads slowly, needs no more memory the longer it lasts',
    { timeout: 120_000 },
    async () => {
      const { readFileSync } = await import('node:fs')
      const resident = (): number =>
        Number(/^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${child.process.pid}/status`, 'utf8'))![1]) / 1024
      const { socket, closed } = await openSocket(child.port)
      socket.removeAllListeners('data')
      let taken = 0
      // Half of the time nothing is read.
      socket.on('data', (part) => {
        taken += part.length
        socket.pause()
        setTimeout(() => socket.resume(), 1)
      })
      const send = (text: string): boolean => socket.write(`${Buffer.byteLength(text).toString(16)}\r\n${text}\r\n`)
      socket.write('POST /v1/convert HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n')
      let line = 0
      const pump = (): void => {
        while (socket.writable && send(`{"phrase":"${++line} pints of cream","year":${1600 + (line % 200)}}\n`.repeat(20)));
      }
      socket.on('drain', pump)
      pump()
      const until = async (bytes: number): Promise<number> => {
        while (taken < bytes) await pause(20)
        return resident()
      }
      const early = await until(20e6)
      const late = await until(80e6)
      console.log(`a stream without end: ${early.toFixed(0)} MB resident after 20 MB of answers, ${late.toFixed(0)} MB after 80 MB`)
      // Stored up, the answers alone would be 60 MB more; a heap breathes by less.
      expect(late - early).toBeLessThan(45)
      await expectServed()
      socket.destroy()
      await closed
    },
  )

  test('requests that come all in one are answered in their order', { timeout: 30_000 }, async () => {
    const { socket, received, closed } = await openSocket(child.port)
    const paths = Array.from({ length: 50 }, (_, i) => `/v1/nonesuch-${i}`)
    socket.write(paths.map((path) => `GET ${path} HTTP/1.1\r\nHost: x\r\n\r\n`).join(''))
    while ((received().match(/HTTP\/1\.1 404/g) ?? []).length < paths.length) await pause(20)
    const order = [...received().matchAll(/nonesuch-(\d+)/g)].map(([, i]) => Number(i))
    expect(order).toEqual(paths.map((_, i) => i))
    socket.destroy()
    await closed
  })
})

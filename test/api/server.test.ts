/** The server as a process: how it starts, what rude clients can do to it, and that it stops without losing a request. */
import { existsSync } from 'node:fs'
import { Agent, get } from 'node:http'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { bundleServer } from './bundle.js'
import { type Child, endChildren, openSocket, runChild, startChild } from './child.js'

const conversion = '/v1/convert?phrase=a+pottle+of+cream&year=1690'
const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds))

let file = ''
beforeAll(async () => {
  file = await bundleServer()
}, 60_000)
afterAll(endChildren)

describe('starting', () => {
  test('settings that are wrong are named, and nothing is served', { timeout: 30_000 }, async () => {
    const { code, said } = await runChild(file, { PORT: 'eighty', LOG: 'loud' })
    expect(code).toBe(2)
    expect(said).toMatch(/PORT is "eighty"; it must be a whole number from 0 to 65535\nLOG is "loud"; it must be off or json/)
  })

  test.each(['1', '2'])('a port that is taken is said to be, with %s worker(s)', { timeout: 30_000 }, async (workers) => {
    const first = await startChild(file)
    const { code, said } = await runChild(file, { PORT: String(first.port), WORKERS: workers })
    expect(code).toBe(2)
    expect(said).toContain(`Port ${first.port} is taken; set PORT to another.`)
    expect(await first.stop()).toBe(0)
  })
})

describe('the bundle that npm start runs', () => {
  const built = fileURLToPath(new URL('../../apps/api/dist/bundle/main.js', import.meta.url))

  test('answers with all its parts, those too that are loaded when they are asked for', { timeout: 30_000 }, async () => {
    if (!existsSync(built)) throw new Error('the server is not built: run `npm run -s build` first')
    const child = await startChild(built)
    for (const path of [conversion, '/openapi.json', '/docs', '/', '/sources', '/v1/sources/digby-1669', '/embed/pottle.js']) {
      const reply = await fetch(child.url + path)
      expect(reply.status, path).toBe(200)
      expect((await reply.text()).length, path).toBeGreaterThan(100)
    }
    // The same answer as that of the sources.
    const own = await startChild(file)
    const [one, other] = await Promise.all([child, own].map(async ({ url }) => (await fetch(url + conversion)).json()))
    expect(one).toEqual(other)
    for (const each of [child, own]) expect(await each.stop()).toBe(0)
  })
})

describe('logging', () => {
  test.each(['1', '2'])(
    'every line that %s process(es) write is JSON, and there is one for a request',
    { timeout: 30_000 },
    async (workers) => {
      const child = await startChild(file, { LOG: 'json', WORKERS: workers })
      const reply = await fetch(`${child.url}${conversion}`)
      expect(await child.stop()).toBe(0)
      const lines = child.said().trim().split('\n')
      const [first, ...rest] = lines.map((line) => JSON.parse(line))
      expect(first).toEqual({ time: expect.any(String), listening: child.url })
      expect(rest).toEqual([expect.objectContaining({ id: reply.headers.get('x-request-id'), route: '/v1/convert', status: 200 })])
    },
  )
})

/** What a keep-alive client of a balancer sees: it sends no more over a connection, nor to a server, that says it closes. */
async function load(url: string, clients: number, after: number, stop: () => void): Promise<{ whole: number; lost: string[] }> {
  const agent = new Agent({ keepAlive: true, maxSockets: clients })
  const seen = { whole: 0, lost: [] as string[] }
  let closing = false
  const ask = (): Promise<void> =>
    new Promise((resolve) => {
      const request = get(`${url}${conversion}`, { agent }, (response) => {
        let text = ''
        if (response.headers.connection === 'close') closing = true
        response.on('data', (chunk) => (text += chunk))
        response.on('error', (error) => seen.lost.push(`in the answer: ${error.message}`))
        response.on('close', () => {
          if (response.complete && JSON.parse(text).reading.measure === 'pottle') seen.whole++
          else seen.lost.push('an answer ended early')
          if (seen.whole === after) stop()
          resolve()
        })
      })
      request.on('error', (error: NodeJS.ErrnoException) => {
        // Nothing was begun where there was no connection to be had.
        if (error.code !== 'ECONNREFUSED') seen.lost.push(`${error.code}: ${error.message}`)
        closing = true
        resolve()
      })
    })
  await Promise.all(
    Array.from({ length: clients }, async () => {
      while (!closing) await ask()
    }),
  )
  agent.destroy()
  return seen
}

describe('stopping', () => {
  test.each([
    ['one process', '1', '0'],
    ['one process that waits for its balancers', '1', '1'],
    ['two processes', '2', '0'],
  ])('%s under load loses nothing', { timeout: 60_000 }, async (_, workers, delay) => {
    const child = await startChild(file, { WORKERS: workers, STOP_DELAY: delay })
    let code: Promise<number | null> | undefined
    const { whole, lost } = await load(child.url, 24, 300, () => {
      code = child.stop()
    })
    expect(lost).toEqual([])
    expect(whole).toBeGreaterThanOrEqual(300)
    expect(await code).toBe(0)
    console.log(`stop under load (WORKERS=${workers}, STOP_DELAY=${delay}): ${whole} requests answered, ${lost.length} lost`)
  })

  test.skipIf(process.platform === 'win32').each([
    ['SIGTERM', '1'],
    ['SIGINT', '1'],
    ['SIGTERM', '2'],
    ['SIGINT', '2'],
  ] as const)('%s to all of its %s process(es) at once loses nothing either', { timeout: 60_000 }, async (signal, workers) => {
    const child = await startChild(file, { WORKERS: workers })
    let code: Promise<number | null> | undefined
    const { whole, lost } = await load(child.url, 24, 300, () => {
      code = child.stopAll(signal)
    })
    expect(lost).toEqual([])
    expect(whole).toBeGreaterThanOrEqual(300)
    expect(await code).toBe(0)
  })

  test.each(['1', '2'])('with %s process(es), being asked twice changes nothing', { timeout: 30_000 }, async (workers) => {
    const child = await startChild(file, { STOP_DELAY: '1', WORKERS: workers })
    const code = child.stopAll()
    await pause(300)
    child.stopAll()
    expect((await fetch(`${child.url}${conversion}`)).status).toBe(200)
    expect(await code).toBe(0)
  })

  test.each(['1', '2'])('with %s process(es), someone who will not wait need not', { timeout: 30_000 }, async (workers) => {
    const child = await startChild(file, { STOP_DELAY: '20', WORKERS: workers })
    const code = child.stopAll('SIGINT')
    await pause(800)
    child.stopAll('SIGINT')
    expect(await code).toBe(130)
    await expect(fetch(child.url)).rejects.toThrow()
  })

  test('while it waits it denies its readiness, answers, and closes behind each answer', { timeout: 30_000 }, async () => {
    const child = await startChild(file, { STOP_DELAY: '2' })
    expect((await fetch(`${child.url}/readyz`)).status).toBe(200)
    const code = child.stop()
    await pause(300)
    const ready = await fetch(`${child.url}/readyz`)
    expect(ready.status).toBe(503)
    expect(await ready.json()).toMatchObject({ type: '/problems/draining' })
    const answer = await fetch(`${child.url}${conversion}`)
    expect(answer.status).toBe(200)
    expect(answer.headers.get('connection')).toBe('close')
    expect((await fetch(`${child.url}/healthz`)).status).toBe(200)
    expect(await code).toBe(0)
  })

  test('a stream that is under way is finished', { timeout: 30_000 }, async () => {
    const child = await startChild(file)
    const encoder = new TextEncoder()
    let controller!: ReadableStreamDefaultController<Uint8Array>
    const body = new ReadableStream<Uint8Array>({
      start: (one) => {
        controller = one
      },
    })
    const line = encoder.encode('{"phrase":"a pint of cream","year":1690}\n')
    controller.enqueue(line)
    const init = { method: 'POST', headers: { 'content-type': 'application/x-ndjson' }, body, duplex: 'half' } as RequestInit
    const reader = (await fetch(`${child.url}/v1/convert`, init)).body!.getReader()
    let text = new TextDecoder().decode((await reader.read()).value)
    const code = child.stop()
    await pause(1500)
    controller.enqueue(line)
    controller.close()
    for (let part = await reader.read(); !part.done; part = await reader.read()) text += new TextDecoder().decode(part.value)
    expect(text.trim().split('\n')).toHaveLength(2)
    expect(await code).toBe(0)
  })
})

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

describe('on all cores', () => {
  test('a worker that dies is replaced', { timeout: 30_000 }, async () => {
    const child = await startChild(file, { WORKERS: '2' })
    await pause(1500)
    const { readFileSync } = await import('node:fs')
    const workers = () =>
      readFileSync(`/proc/${child.process.pid}/task/${child.process.pid}/children`, 'utf8').trim().split(' ').map(Number)
    if (process.platform === 'linux') {
      const [first] = workers()
      process.kill(first!, 'SIGKILL')
      while (workers().includes(first!) || workers().length < 2) await pause(50)
      expect(workers()).toHaveLength(2)
    }
    for (let i = 0; i < 20; i++) expect((await fetch(`${child.url}/healthz`)).status).toBe(200)
    expect(await child.stop()).toBe(0)
  })
})

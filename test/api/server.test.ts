/** The server as a process: how it starts, what it writes, and that it serves on every core. */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Script } from 'node:vm'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { bundleServer } from './bundle.js'
import { type Child, endChildren, openSocket, pause, runChild, startChild } from './child.js'
import { conversion } from './questions.js'

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
    expect(await child.stop()).toBe(0)
  })

  test('says what the sources say, of letters beyond ASCII too', { timeout: 30_000 }, async () => {
    const [child, own] = await Promise.all([startChild(built), startChild(file)])
    const phrases = [
      'a pottle of cream',
      'gas mark ½',
      '350°',
      '80° Réaumur',
      'a pint of water\u00a0hemlock',
      'ij ℥ of ſuger',
      'vj yolkẽs',
      '2¾ ℔ butter',
    ]
    const asked = [
      ...phrases.flatMap((phrase) => ['/v1/convert', '/v1/oven-heats'].map((path) => `${path}?${new URLSearchParams({ phrase })}`)),
      `/measure?${new URLSearchParams({ phrase: 'a pottle of cream', year: '1650–1700' })}`,
    ]
    for (const path of asked) {
      // A page tells its own address, and names its script by what the build made of it.
      const tell = async ({ url, port }: Child) =>
        (await (await fetch(url + path)).text()).replaceAll(String(port), '').replaceAll(/\/assets\/\w+/g, '')
      const [one, other] = await Promise.all([tell(child), tell(own)])
      expect(one, decodeURIComponent(path)).toBe(other)
    }
    expect((await fetch(`${child.url}/v1/oven-heats?phrase=gas+mark+%C2%BD`)).status).toBe(200)
    for (const each of [child, own]) expect(await each.stop()).toBe(0)
  })

  test('comes with its engine’s own form of the code', () => {
    const folder = dirname(built)
    const code = readFileSync(join(folder, 'server.cjs'), 'latin1')
    const cachedData = readFileSync(join(folder, 'server.cache'))
    expect(code).toMatch(/^[\0-\x7f]*$/)
    const launch = readFileSync(join(folder, 'main.js'), 'utf8')
    // The launcher's own words around the code are part of what the engine keeps.
    const [, before, after] = /new Script\(`(.*?)\$\{code\}(.*?)`/.exec(launch)!
    const script = new Script(before! + code + after!.replaceAll('\\n', '\n'), { filename: join(folder, 'server.cjs'), cachedData })
    expect(script.cachedDataRejected).toBe(false)
  })
})

describe('the folder of the bundle', () => {
  const built = fileURLToPath(new URL('../../apps/api/dist/bundle', import.meta.url))
  const laidElsewhere = (): string => {
    const folder = mkdtempSync(join(tmpdir(), 'pottle-bundle-'))
    cpSync(built, folder, { recursive: true })
    return folder
  }
  const answers = async (folder: string): Promise<void> => {
    const child = await startChild(join(folder, 'main.js'))
    const reply = await fetch(child.url + conversion)
    expect(reply.status).toBe(200)
    expect(await child.stop()).toBe(0)
    rmSync(folder, { recursive: true })
  }

  test('runs wherever it is laid', { timeout: 30_000 }, () => answers(laidElsewhere()))

  test.each([
    ['that is not there', (file: string) => rmSync(file)],
    ['of another engine', (file: string) => writeFileSync(file, readFileSync(file).fill(0, 0, 16))],
    ['that is broken', (file: string) => writeFileSync(file, readFileSync(file).subarray(0, 1000))],
  ])('does without a cache %s', { timeout: 30_000 }, async (_, spoil) => {
    const folder = laidElsewhere()
    spoil(join(folder, 'server.cache'))
    await answers(folder)
  })
})

describe('OPTIONS * (RFC 9110, section 9.3.7)', () => {
  const say = async (port: number, requests: readonly string[]): Promise<string> => {
    const { socket, received, closed } = await openSocket(port)
    const last = requests.length - 1
    socket.write(requests.map((line, i) => `${line} HTTP/1.1\r\nHost: x\r\n${i === last ? 'Connection: close\r\n' : ''}\r\n`).join(''))
    await closed
    return received()
  }

  test('says what the server takes as a whole, and keeps the connection for what comes next', { timeout: 30_000 }, async () => {
    const child = await startChild(file)
    const text = await say(child.port, ['OPTIONS *', 'GET /healthz'])
    const [whole, next] = text.split(/(?<=\r\n\r\n)(?=HTTP)/) as [string, string]
    expect(whole).toMatch(/^HTTP\/1\.1 204 No Content\r\n/)
    expect(whole).toMatch(/\r\nAllow: GET, HEAD, POST, OPTIONS\r\n/i)
    // A 204 has neither a body nor a length (RFC 9110, section 8.6).
    expect(whole).not.toMatch(/content-length|transfer-encoding/i)
    expect(next).toMatch(/^HTTP\/1\.1 200 /)
    // No other method may be asked of all at once (RFC 9112, section 3.2.4).
    expect(await say(child.port, ['GET *'])).toMatch(/^HTTP\/1\.1 400 /)
    expect(await child.stop()).toBe(0)
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

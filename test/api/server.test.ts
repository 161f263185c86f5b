/** The server as a process: how it starts, what it writes, and that it serves on every core. */
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { bundleServer } from './bundle.js'
import { endChildren, pause, runChild, startChild } from './child.js'
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

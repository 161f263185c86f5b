/** The same app as a fetch handler on workerd, the runtime of edge platforms: the same questions, the same bytes. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { copyFileSync, mkdtempSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { createApp } from '@pottle/api'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { essence, questions } from './questions.js'

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

let url = ''
let workerd: ChildProcess | undefined
let said = ''

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number }
      server.close(() => resolve(port))
    })
  })

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), 'pottle-edge-'))
  execFileSync(process.execPath, [here('../../apps/api/tools/edge.mjs'), join(folder, 'worker.mjs')])
  copyFileSync(here('../../apps/api/deploy/workerd.capnp'), join(folder, 'workerd.capnp'))
  const port = await freePort()
  url = `http://127.0.0.1:${port}`
  workerd = spawn(here('../../node_modules/.bin/workerd'), ['serve', 'workerd.capnp', `--socket-addr=http=127.0.0.1:${port}`], {
    cwd: folder,
  })
  for (const stream of [workerd.stdout!, workerd.stderr!]) stream.on('data', (chunk) => (said += chunk))
  for (;;) {
    if (workerd.exitCode !== null) throw new Error(`workerd ended with ${workerd.exitCode}: ${said}`)
    const up = await fetch(`${url}/healthz`).then(
      () => true,
      () => false,
    )
    if (up) return
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
}, 120_000)

afterAll(() => void workerd?.kill())

const app = createApp()

test.each(questions.map((question) => [`${question.init?.method ?? 'GET'} ${question.path}`, question] as const))(
  '%s',
  { timeout: 30_000 },
  async (_, { path, init }) => {
    for (const encoding of ['identity', 'gzip']) {
      // Fetch would ask for every encoding that it knows; what the app makes of gzip is undone on both sides.
      const asked = { ...init, headers: { ...init?.headers, 'accept-encoding': encoding } }
      const [edge, node] = [await fetch(url + path, asked), await app.request(url + path, asked)]
      const unzipped = node.headers.has('content-encoding')
        ? new Response(node.body!.pipeThrough(new DecompressionStream('gzip')), node)
        : node
      expect(edge.headers.get('content-encoding')).toBe(node.headers.get('content-encoding'))
      expect(await essence(edge)).toEqual(await essence(unzipped))
    }
  },
)

test('a client that has the answer is told so', async () => {
  const path = `${url}/v1/convert?phrase=a+pottle+of+cream`
  const etag = (await fetch(path)).headers.get('etag')!.replace('W/', '')
  expect((await fetch(path, { headers: { 'if-none-match': etag } })).status).toBe(304)
})

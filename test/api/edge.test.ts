/** The same app as a fetch handler on workerd, the runtime of edge platforms: the same questions, the same bytes. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { createApp } from '@pottle/api'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { essence, questions } from './questions.js'
import { startWorkerd, type Workerd } from './workerd.js'

let workerd: Workerd

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), 'pottle-edge-'))
  const tool = fileURLToPath(new URL('../../apps/api/tools/edge.mjs', import.meta.url))
  execFileSync(process.execPath, [tool, join(folder, 'worker.mjs')])
  workerd = await startWorkerd(folder)
}, 120_000)

afterAll(() => workerd?.stop())

const app = createApp()

test.each(questions.map((question) => [`${question.init?.method ?? 'GET'} ${question.path}`, question] as const))(
  '%s',
  { timeout: 30_000 },
  async (_, { path, init }) => {
    for (const encoding of ['identity', 'gzip']) {
      // Fetch would ask for every encoding that it knows; what the app makes of gzip is undone on both sides.
      const asked = { ...init, headers: { ...init?.headers, 'accept-encoding': encoding } }
      const [edge, node] = [await fetch(workerd.url + path, asked), await app.request(workerd.url + path, asked)]
      const unzipped = node.headers.has('content-encoding')
        ? new Response(node.body!.pipeThrough(new DecompressionStream('gzip')), node)
        : node
      expect(edge.headers.get('content-encoding')).toBe(node.headers.get('content-encoding'))
      expect(await essence(edge)).toEqual(await essence(unzipped))
    }
  },
)

test('a client that has the answer is told so', async () => {
  const path = `${workerd.url}/v1/convert?phrase=a+pottle+of+cream`
  const etag = (await fetch(path)).headers.get('etag')!.replace('W/', '')
  expect((await fetch(path, { headers: { 'if-none-match': etag } })).status).toBe(304)
})

/**
 * Requests a second and the 99th percentile beside a bare Hono route and bare node:http, in the same run, over loopback, each server in a process
 * of its own. The processor time that a request costs the server is told too: on a machine that does other work it is the steadier figure.
 */
import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import autocannon from 'autocannon'
import { median } from './measure.mjs'

const one = '/v1/convert?phrase=a+pottle+of+cream&year=1690&place=london'
const rounds = Number(process.env.ROUNDS ?? 7)
const seconds = 2

const measures = ['pint', 'pound', 'quart', 'peck', 'gill', 'ounce', 'pottle', 'gallon', 'bushel', 'dram']
const things = ['cream', 'flour', 'sugar', 'butter', 'ale', 'sack', 'almonds', 'currants', 'honey', 'vinegar']

/** Twenty thousand phrases, all different: many more than the server keeps answers, so that each is worked out anew. */
const many = Array.from({ length: 200 }, (_, i) =>
  measures.flatMap((measure, j) =>
    things.map((thing, k) => {
      const year = 1600 + ((i * 37 + j * 11 + k * 5) % 25) * 10
      return { path: `/v1/convert?${new URLSearchParams({ phrase: `${i + 1} ${measure}s of ${thing}`, year: String(year) })}` }
    }),
  ),
).flat()

let turn = 0

/** Every connection begins somewhere else, and goes on where the last round ended, so that no two of them ask the same. */
function shareOut(client) {
  const share = Math.floor(many.length / 32)
  const from = (turn++ % 32) * share
  client.setRequests([...many.slice(from + share / 2), ...many.slice(0, from + share / 2)])
}

async function serve(kind) {
  const child = fork(fileURLToPath(new URL('./served.mjs', import.meta.url)), [kind])
  const { port } = await new Promise((resolve) => child.once('message', resolve))
  const spent = () =>
    new Promise((resolve) => {
      child.once('message', ({ cpu }) => resolve(cpu))
      child.send('cpu')
    })
  return { url: `http://127.0.0.1:${port}`, spent, end: () => child.kill() }
}

async function shoot({ url, spent }, options) {
  const before = await spent()
  const result = await autocannon({ url, connections: 32, duration: seconds, ...options })
  const total = result.requests.total
  if (result.non2xx > 0 && result['3xx'] !== total) throw new Error(`${result.non2xx} answers were faults`)
  return { rate: result.requests.average, p99: result.latency.p99, cpu: ((await spent()) - before) / total }
}

export async function run() {
  const [http, bare, pottle] = await Promise.all(['http', 'bare', 'pottle'].map(serve))
  const etag = (await fetch(pottle.url + one)).headers.get('etag')
  const contenders = {
    'bare node:http': () => shoot(http, {}),
    'bare Hono route': () => shoot(bare, {}),
    'a conditional request': () => shoot(pottle, { requests: [{ path: one, headers: { 'if-none-match': etag } }] }),
    'a conversion, asked again': () => shoot(pottle, { requests: [{ path: one }] }),
    'conversions, all new': () => shoot(pottle, { setupClient: shareOut }),
    'a heat phrase': () => shoot(pottle, { requests: [{ path: '/v1/oven-heats?phrase=a+slack+oven&year=1690' }] }),
  }
  const seen = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]))
  for (let round = 0; round < rounds; round++) for (const [name, shot] of Object.entries(contenders)) seen[name].push(await shot())
  for (const server of [http, bare, pottle]) server.end()

  const middle = (name, field) => median(seen[name].map((row) => row[field]))
  const least = (name) => Math.min(...seen[name].map(({ cpu }) => cpu))
  const yard = 'bare Hono route'
  console.log(`api: medians of ${rounds} interleaved rounds of ${seconds} s, 32 connections, beside a bare Hono route`)
  for (const name of Object.keys(contenders)) {
    const [rate, p99] = [middle(name, 'rate'), middle(name, 'p99')]
    const beside = `${(rate / middle(yard, 'rate')).toFixed(2)} of its throughput, ${(p99 / middle(yard, 'p99')).toFixed(1)} times its 99th percentile`
    const cost = `${least(name).toFixed(0)} us of processor, at best (${(least(yard) / least(name)).toFixed(2)})`
    console.log(`  ${name.padEnd(26)} ${String(Math.round(rate)).padStart(6)} a second, p99 ${p99} ms: ${beside}; ${cost}`)
  }
}

/**
 * Requests a second and the 99th percentile beside a bare Hono route and bare node:http, in the same run, over loopback, each server in a process
 * of its own. The processor time that a request costs the server is told too: on a machine that does other work it is the steadier figure.
 */
import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { one, shoot } from './load.mjs'
import { median } from './measure.mjs'

const rounds = Number(process.env.ROUNDS ?? 7)

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

export async function run() {
  const servers = await Promise.all(['http', 'bare', 'anew', 'pottle'].map(serve))
  const [http, bare, anew, pottle] = servers
  const etag = (await fetch(pottle.url + one)).headers.get('etag')
  const contenders = {
    'bare node:http': () => shoot(http),
    'bare Hono route': () => shoot(bare),
    'the same, as long an answer': () => shoot(bare, { path: '/long' }),
    'our answer, written by a bare route': () => shoot(anew),
    'a conditional request': () => shoot(pottle, { path: one, headers: { 'if-none-match': etag } }),
    'a conversion, asked again': () => shoot(pottle, { path: one }),
    'the same, compressed': () => shoot(pottle, { path: one, headers: { 'accept-encoding': 'gzip' } }),
    'values, all new': () => shoot(pottle, { fresh: '/v1/values' }),
    'conversions, all new': () => shoot(pottle, { fresh: '/v1/convert' }),
    'a heat phrase': () => shoot(pottle, { path: '/v1/oven-heats?phrase=a+slack+oven&year=1690' }),
  }
  const seen = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]))
  for (let round = 0; round < rounds; round++) for (const [name, shot] of Object.entries(contenders)) seen[name].push(await shot())
  for (const server of servers) server.end()

  const middle = (name, field) => median(seen[name].map((row) => row[field]))
  const least = (name) => Math.min(...seen[name].map(({ cpu }) => cpu))
  const yard = 'bare Hono route'
  console.log(`api: medians of ${rounds} interleaved rounds of 2 s, 32 connections, beside a bare Hono route`)
  for (const name of Object.keys(contenders)) {
    const [rate, p99] = [middle(name, 'rate'), middle(name, 'p99')]
    const beside = `${(rate / middle(yard, 'rate')).toFixed(2)} of its throughput, ${(p99 / middle(yard, 'p99')).toFixed(1)} times its 99th percentile`
    const cost = `${least(name).toFixed(0)} us of processor, at best (${(least(yard) / least(name)).toFixed(2)})`
    console.log(`  ${name.padEnd(35)} ${String(Math.round(rate)).padStart(6)} a second, p99 ${p99.toFixed(1)} ms: ${beside}; ${cost}`)
  }
}

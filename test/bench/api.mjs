/** Requests a second and the 99th percentile beside a bare Hono route and bare node:http, in the same run, over loopback. */
import { createServer } from 'node:http'
import { createAdaptorServer } from '@hono/node-server'
import { createApp } from '@pottle/api'
import autocannon from 'autocannon'
import { Hono } from 'hono'
import { median } from './measure.mjs'

const conversion = '/v1/convert?phrase=a+pottle+of+cream&year=1690&place=london'
const rounds = 5
const seconds = 2

const bare = new Hono().get('/', (context) => context.json({ status: 'ok' }))

function listen(server) {
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)))
}

async function shoot(server, path, headers = {}) {
  const { port } = server.address()
  const result = await autocannon({ url: `http://127.0.0.1:${port}${path}`, connections: 32, duration: seconds, headers })
  return { rate: result.requests.average, p99: result.latency.p99 }
}

export async function run() {
  const http = await listen(createServer((_, response) => response.setHeader('content-type', 'application/json').end('{"status":"ok"}')))
  const hono = await listen(createAdaptorServer({ fetch: bare.fetch }))
  const pottle = await listen(createAdaptorServer({ fetch: createApp().fetch }))
  const tag = (await fetch(`http://127.0.0.1:${pottle.address().port}${conversion}`)).headers.get('etag')
  const contenders = {
    'bare node:http': () => shoot(http, '/'),
    'bare Hono route': () => shoot(hono, '/'),
    'a conversion': () => shoot(pottle, conversion),
    'a conditional request': () => shoot(pottle, conversion, { 'if-none-match': tag }),
  }
  const seen = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]))
  for (let round = 0; round < rounds; round++) for (const [name, shot] of Object.entries(contenders)) seen[name].push(await shot())
  for (const server of [http, hono, pottle]) server.close()

  const rateOf = (name) => median(seen[name].map(({ rate }) => rate))
  const p99Of = (name) => median(seen[name].map(({ p99 }) => p99))
  const [rate, p99] = [rateOf('bare Hono route'), p99Of('bare Hono route')]
  console.log(`api: medians of ${rounds} interleaved rounds of ${seconds} s, 32 connections, beside a bare Hono route`)
  for (const name of Object.keys(contenders)) {
    const ratio = `${(rateOf(name) / rate).toFixed(2)} of its throughput, ${(p99Of(name) / p99).toFixed(1)} times its 99th percentile`
    console.log(`  ${name.padEnd(22)} ${String(Math.round(rateOf(name))).padStart(7)} a second, p99 ${p99Of(name)} ms: ${ratio}`)
  }
}

import type { Server } from 'node:http'
import { serve } from '@hono/node-server'
import { convert } from '@pottle/core'
import { createApp } from './app.js'
import { type Settings, settingsFrom } from './settings.js'
import { showAnswer } from './show.js'

const example = { phrase: 'a pottle of cream', year: 1690, place: 'london' }

/** A request that is not answered by then, though the server is going down, is given up. */
const drainMilliseconds = 10_000

function readSettings(): Settings {
  try {
    return settingsFrom(process.env)
  } catch (error) {
    console.error((error as Error).message)
    process.exit(2)
  }
}

function greet(host: string, port: number): void {
  const query = new URLSearchParams({ phrase: example.phrase, year: String(example.year), place: example.place })
  console.log(showAnswer(convert(example.phrase, example)))
  console.log(`\nListening on http://${host}:${port}\nThe same by HTTP: http://${host}:${port}/v1/convert?${query}`)
}

const { host, port, log, requestsPerMinute } = readSettings()
let ready = true

const app = createApp({
  requestsPerMinute,
  ready: () => ready,
  ...(log ? { log: (entry) => console.log(JSON.stringify(entry)) } : {}),
})

const server = serve({ fetch: app.fetch, hostname: host, port }, ({ port: bound }) => greet(host, bound)) as Server
// Slow or silent clients may not hold a connection for ever: half a minute for the headers is ten times what a slow network needs.
server.headersTimeout = 30_000
server.requestTimeout = 300_000
server.keepAliveTimeout = 5_000

server.on('error', (error: NodeJS.ErrnoException) => {
  console.error(error.code === 'EADDRINUSE' ? `Port ${port} is taken; set PORT to another.` : error.message)
  process.exitCode = 1
})

/** Takes no new connection, finishes what has begun, and ends by itself when the last answer is out. */
function stop(): void {
  ready = false
  server.close()
  setTimeout(() => server.closeAllConnections(), drainMilliseconds).unref()
}

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, stop)

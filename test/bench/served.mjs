/** One server in a process of its own for the benches: `bare` or `pottle`. Tells its port, and what it has spent when it is asked. */
import { createServer } from 'node:http'
import { createAdaptorServer } from '@hono/node-server'
import { Hono } from 'hono'

const makers = {
  http: () => createServer((_, response) => response.setHeader('content-type', 'application/json').end('{"status":"ok"}')),
  bare: () => createAdaptorServer({ fetch: new Hono().get('/', (context) => context.json({ status: 'ok' })).fetch }),
  pottle: async () => createAdaptorServer({ fetch: (await import('@pottle/api')).createApp().fetch }),
}

const server = await makers[process.argv[2]]()
server.listen(0, '127.0.0.1', () => process.send({ port: server.address().port }))
process.on('message', () => {
  globalThis.gc?.()
  const { heapUsed, rss } = process.memoryUsage()
  const { user, system } = process.cpuUsage()
  process.send({ heap: heapUsed, rss, cpu: user + system })
})
process.on('disconnect', () => process.exit())

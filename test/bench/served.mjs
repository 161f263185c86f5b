/** One server in a process of its own for the benches: `http`, `bare`, `anew` or `pottle`, in `WORKERS` processes. Tells its port, and what it has spent when it is asked. */
import cluster from 'node:cluster'
import { createServer } from 'node:http'
import { createAdaptorServer } from '@hono/node-server'
import { Hono } from 'hono'

/** As long as the answer to a phrase usually is. */
const long = new Uint8Array(6000).fill(0x20)

const bare = new Hono()
  .get('/', (context) => context.json({ status: 'ok' }))
  .get('/long', (context) => context.body(long, 200, { 'content-type': 'application/json' }))

const makers = {
  http: () => createServer((_, response) => response.setHeader('content-type', 'application/json').end('{"status":"ok"}')),
  bare: () => createAdaptorServer({ fetch: bare.fetch }),
  anew: async () => {
    const { convert } = await import('@pottle/core')
    const answer = JSON.parse(JSON.stringify(convert('a pottle of cream', { year: 1690 })))
    return createAdaptorServer({ fetch: new Hono().get('/', (context) => context.json(answer)).fetch })
  },
  pottle: async () => createAdaptorServer({ fetch: (await import('@pottle/api')).createApp().fetch }),
}

async function serve() {
  const server = await makers[process.argv[2]]()
  server.listen(0, '127.0.0.1', () => process.send({ port: server.address().port }))
  process.on('message', () => {
    globalThis.gc?.()
    const { heapUsed, rss } = process.memoryUsage()
    const { user, system } = process.cpuUsage()
    process.send({ heap: heapUsed, rss, cpu: user + system })
  })
  process.on('disconnect', () => process.exit())
}

const workers = Number(process.env.WORKERS ?? 1)
if (workers > 1 && cluster.isPrimary) {
  for (let i = 0; i < workers; i++) cluster.fork()
  cluster.once('listening', (_, { port }) => process.send({ port }))
  process.on('disconnect', () => process.exit())
} else await serve()

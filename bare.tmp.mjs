import { serve } from '@hono/node-server'
import { Hono } from 'hono'
serve({ fetch: new Hono().get('/', (c) => c.json({ status: 'ok' })).fetch, port: Number(process.env.PORT), hostname: '127.0.0.1' }, ({port}) => console.log(`http://127.0.0.1:${port}`))

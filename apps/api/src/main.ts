import { serve } from '@hono/node-server'
import { convert } from '@pottle/core'
import { createApp } from './app.js'
import { settingsFrom } from './settings.js'
import { showAnswer } from './show.js'

const { host, port } = settingsFrom(process.env)
const example = { phrase: 'a pottle of cream', year: 1690, place: 'london' }

const server = serve({ fetch: createApp().fetch, hostname: host, port }, ({ port: bound }) => {
  const query = new URLSearchParams({ phrase: example.phrase, year: String(example.year), place: example.place })
  console.log(showAnswer(convert(example.phrase, example)))
  console.log(`\nListening on http://${host}:${bound}\nThe same by HTTP: http://${host}:${bound}/v1/convert?${query}`)
})

server.on('error', (error: NodeJS.ErrnoException) => {
  console.error(error.code === 'EADDRINUSE' ? `Port ${port} is taken; set PORT to another.` : error.message)
  process.exitCode = 1
})

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => server.close())

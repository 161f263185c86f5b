// Writes the pictures of the README: each is what the server answers to its question in apps/api/pictures/asked.json.
import { readFileSync, writeFileSync } from 'node:fs'
import { createApp } from '../dist/app.js'

const folder = new URL('../pictures/', import.meta.url)
const app = createApp()

for (const [file, { path, body }] of Object.entries(JSON.parse(readFileSync(new URL('asked.json', folder), 'utf8')))) {
  const headers = { accept: 'image/svg+xml', 'content-type': 'application/json' }
  const response = await app.request(path, body ? { method: 'POST', headers, body: JSON.stringify(body) } : { headers })
  if (!response.ok) throw new Error(`${path} answers ${response.status}: ${await response.text()}`)
  writeFileSync(new URL(file, folder), await response.text())
}

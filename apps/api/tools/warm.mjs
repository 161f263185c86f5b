// Starts the bundled server, asks it what most are asked, and keeps the engine's own form of the code that this took.
import { writeFileSync } from 'node:fs'
import { createServer } from 'node:net'

const questions = ['/v1/convert?phrase=a+pottle+of+cream&year=1690', '/v1/oven-heats?phrase=a+slack+oven&year=1690', '/readyz', '/']

const freePort = () =>
  new Promise((resolve, reject) => {
    const server = createServer().once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address()
      server.close(() => resolve(port))
    })
  })

/** A server is asked until it is there. */
async function ask(url, tries = 100) {
  try {
    const { status } = await fetch(url)
    if (status !== 200) throw new Error(`${url} answered ${status}`)
  } catch (error) {
    if (tries === 0 || !(error instanceof TypeError)) throw error
    await new Promise((resolve) => setTimeout(resolve, 50))
    await ask(url, tries - 1)
  }
}

const port = await freePort()
// Whatever the builder's own server is set to.
const unset = ['WORKERS', 'LOG', 'REQUESTS_PER_MINUTE', 'PROXIES', 'PATIENCE', 'STOP_DELAY', 'STOP_SECONDS']
for (const name of unset) delete process.env[name]
Object.assign(process.env, { HOST: '127.0.0.1', PORT: String(port) })
const folder = new URL('../dist/bundle/', import.meta.url)
const { script } = await import(new URL('main.js', folder))
for (const question of questions) await ask(`http://127.0.0.1:${port}${question}`)
writeFileSync(new URL('server.cache', folder), script.createCachedData())
process.exit(0)

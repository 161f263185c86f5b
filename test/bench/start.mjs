/**
 * Cold start: from the start of a process until its first answer, beside a bare Hono server, in the same run. Ours is started as it is deployed,
 * and its first answer is a conversion.
 */
import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { median } from './measure.mjs'

const rounds = 11
const path = (relative) => fileURLToPath(new URL(relative, import.meta.url))

/** Tells the processor time that a server has spent, in milliseconds, when it is asked. */
const teller = `data:text/javascript,${encodeURIComponent(
  "process.on('message', () => { const { user, system } = process.cpuUsage(); process.send({ spent: (user + system) / 1000 }) })",
)}`

const bare = { file: path('./served.mjs'), args: ['bare'], ask: '/' }
const pottle = { file: path('../../apps/api/dist/bundle/main.js'), args: [], ask: '/v1/convert?phrase=a+pottle+of+cream&year=1690' }

/** The port of a server: told by a message, or in its log. */
function portOf(child) {
  return new Promise((resolve, reject) => {
    let said = ''
    child.once('message', ({ port }) => resolve(port))
    child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)))
    child.stdout.on('data', (chunk) => {
      said += chunk
      const [, port] = /"listening":"http:\/\/[^:]+:(\d+)"/.exec(said) ?? []
      if (port) resolve(port)
    })
  })
}

async function start({ file, args, ask }) {
  const began = performance.now()
  const child = fork(file, args, { execArgv: ['--import', teller], env: { ...process.env, PORT: '0', LOG: 'json' }, silent: true })
  const reply = await fetch(`http://127.0.0.1:${await portOf(child)}${ask}`)
  await reply.arrayBuffer()
  const clock = performance.now() - began
  child.send('spent')
  const spent = await new Promise((resolve) => child.on('message', ({ spent }) => spent !== undefined && resolve(spent)))
  child.removeAllListeners('exit').kill()
  return { clock, spent }
}

export async function run() {
  const seen = { bare: [], pottle: [] }
  for (let round = 0; round < rounds; round++) {
    seen.bare.push(await start(bare))
    seen.pottle.push(await start(pottle))
  }
  const middle = (name, field) => median(seen[name].map((row) => row[field]))
  console.log(`start: medians of ${rounds} interleaved starts, until the first answer`)
  for (const [name, told] of Object.entries({ bare: 'a bare Hono server', pottle: 'Pottle, a conversion' })) {
    const ratios = ['clock', 'spent'].map((field) => (middle(name, field) / middle('bare', field)).toFixed(1))
    const [clock, spent] = [middle(name, 'clock'), middle(name, 'spent')].map((time) => Math.round(time))
    console.log(`  ${told.padEnd(22)} ${clock} ms (${ratios[0]}), ${spent} ms of processor (${ratios[1]})`)
  }
}

/**
 * The ways to deploy that the README tells of, beside a bare Hono server in the same run: one process, every core, behind nginx as a caching
 * proxy, on workerd; and a corpus through the command line in one process and under GNU parallel. What this machine lacks is left out.
 */
import { execFileSync, fork, spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { load } from './bundle.mjs'
import { one, shoot, spentBy } from './load.mjs'
import { median } from './measure.mjs'

const rounds = Number(process.env.ROUNDS ?? 7)
const cores = availableParallelism()
const here = (path) => fileURLToPath(new URL(path, import.meta.url))

/** A server that is a process, with what it has spent together with the processes that it began. */
const serverOf = (url, process, end = () => process.kill()) => ({ url, spent: () => spentBy(process.pid), end })

async function bare(workers) {
  const child = fork(here('./served.mjs'), ['bare'], { env: { ...process.env, WORKERS: String(workers) } })
  const { port } = await new Promise((resolve) => child.once('message', resolve))
  return serverOf(`http://127.0.0.1:${port}`, child)
}

/** As `npm start` serves. */
async function pottle(workers) {
  const child = spawn(process.execPath, [here('../../apps/api/dist/bundle/main.js')], {
    env: { ...process.env, PORT: '0', WORKERS: String(workers) },
  })
  const url = await new Promise((resolve) => {
    let said = ''
    child.stdout.on('data', (chunk) => {
      said += chunk
      const found = /Listening on (\S+)/.exec(said)
      if (found) resolve(found[1])
    })
  })
  return serverOf(url, child)
}

/** The configuration that ships, but for its limit: all of the load comes from one address. */
async function behindNginx(origin) {
  const { hasNginx, startNginx } = await load('test/api/nginx.ts')
  if (!hasNginx()) return undefined
  const proxy = await startNginx(new URL(origin.url).port, (text) => text.replaceAll(/^\s*limit_req.*$/gm, ''))
  return serverOf(proxy.url, proxy.process, proxy.stop)
}

async function onWorkerd() {
  const { startWorkerd } = await load('test/api/workerd.ts')
  const folder = mkdtempSync(join(tmpdir(), 'pottle-edge-'))
  execFileSync(process.execPath, [here('../../apps/api/tools/edge.mjs'), join(folder, 'worker.mjs')])
  const { url, process: child, stop } = await startWorkerd(folder)
  return serverOf(url, child, stop)
}

function tell(name, rows, yard) {
  const middle = (all, field) => median(all.map((row) => row[field]))
  const ratio = (field) => (middle(rows, field) / middle(yard, field)).toFixed(2)
  const [rate, cpu] = [middle(rows, 'rate'), middle(rows, 'cpu')]
  console.log(
    `  ${name.padEnd(44)} ${String(Math.round(rate)).padStart(6)} a second (${ratio('rate')}), ${cpu.toFixed(0)} us of processor (${ratio('cpu')})`,
  )
}

const yardstick = 'bare Hono, one process'
const single = 'one process'

/** Starts them one by one, so that what was started can be ended whatever happens. */
async function* startAll() {
  yield [yardstick, await bare(1)]
  const origin = await pottle(1)
  yield [single, origin]
  if (cores > 1) yield [`bare Hono, ${cores} processes`, await bare(cores)]
  if (cores > 1) yield [`WORKERS=max (${cores})`, await pottle('max')]
  const nginx = await behindNginx(origin)
  if (nginx) yield ['behind nginx', nginx]
  yield ['workerd', await onWorkerd()]
}

async function withServers(use) {
  const servers = {}
  try {
    for await (const [name, server] of startAll()) servers[name] = server
    await use(servers)
  } finally {
    for (const { end } of Object.values(servers).reverse()) await end()
  }
}

async function compareServers(servers) {
  const again = { path: one }
  const asNew = { fresh: '/v1/convert' }
  const shots = Object.entries(servers).flatMap(([name, server]) => {
    if (name.startsWith('bare')) return [[name, () => shoot(server)]]
    // Behind the cache nothing is new twice.
    if (name === 'behind nginx') return [[`${name}, out of its cache`, () => shoot(server, again)]]
    return [
      [`${name}, asked again`, () => shoot(server, again)],
      [`${name}, all new`, () => shoot(server, asNew)],
    ]
  })
  const seen = new Map(shots.map(([name]) => [name, []]))
  for (const [, shot] of shots) await shot()
  for (let round = 0; round < rounds; round++) for (const [name, shot] of shots) seen.get(name).push(await shot())
  console.log(
    `deploy: medians of ${rounds} interleaved rounds of 2 s, 32 connections, on ${cores} cores that the load comes from too; in brackets, beside bare Hono in one process`,
  )
  const yard = seen.get(yardstick)
  for (const [name, rows] of seen) tell(name, rows, yard)
}

const measures = ['pint', 'pound', 'quart', 'peck', 'gill', 'ounce', 'pottle', 'gallon']
const things = ['cream', 'flour', 'sugar', 'butter', 'ale', 'sack', 'almonds']
const lines = 300_000

/** Seconds that a shell takes for a command, by the clock and of processors. */
function seconds(command, cwd) {
  const env = { ...process.env, PATH: `${here('../../node_modules/.bin')}:${process.env.PATH}`, TIMEFORMAT: '%R %U %S' }
  const { status, stderr } = spawnSync('bash', ['-c', `time { ${command}; }`], { cwd, env, encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
  const [clock, user, system] = stderr.trim().split('\n').at(-1).split(' ').map(Number)
  return { clock, spent: user + system }
}

function runCorpus() {
  const folder = mkdtempSync(join(tmpdir(), 'pottle-corpus-'))
  const question = (_, i) =>
    JSON.stringify({ phrase: `${1 + (i % 97)} ${measures[i % 8]}s of ${things[(i >> 3) % 7]}`, year: 1550 + (i % 340) })
  writeFileSync(join(folder, 'phrases.ndjson'), `${Array.from({ length: lines }, question).join('\n')}\n`)
  const commands = {
    'one process, whole answers': 'pottle stream < phrases.ndjson > one.ndjson',
    'one process, three fields': 'pottle stream --fields phrase,value,text < phrases.ndjson > few.ndjson',
  }
  const hasParallel = spawnSync('parallel', ['--version']).status === 0
  if (hasParallel)
    commands[`GNU parallel on ${cores} cores, whole answers`] =
      "parallel --keep-order --pipe --block 64M -N 100000 'pottle stream --first-line $(({#} * 100000 - 99999))' < phrases.ndjson > all.ndjson"
  const taken = Object.fromEntries(Object.keys(commands).map((name) => [name, []]))
  for (let round = 0; round < 3; round++) for (const [name, command] of Object.entries(commands)) taken[name].push(seconds(command, folder))
  if (hasParallel) seconds('cmp one.ndjson all.ndjson', folder)
  rmSync(folder, { recursive: true })
  const [yard] = Object.values(taken)
  const middle = (all, field) => median(all.map((row) => row[field]))
  console.log(`corpus: ${lines.toLocaleString('en-GB')} phrases through pottle stream, medians of 3 interleaved rounds, from start to end`)
  for (const [name, all] of Object.entries(taken)) {
    const ratio = (field) => (middle(yard, field) / middle(all, field)).toFixed(2)
    const rate = Math.round(lines / middle(all, 'clock'))
    console.log(`  ${name.padEnd(44)} ${String(rate).padStart(6)} a second (${ratio('clock')}; by processor time ${ratio('spent')})`)
  }
}

export async function run() {
  if (process.platform !== 'linux') return console.log('deploy: processor time is read from /proc, so this bench needs Linux')
  await withServers(compareServers)
  runCorpus()
}

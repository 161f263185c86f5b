/**
 * Load on servers over loopback, by wrk: a client in JavaScript is busy with the headers of our answers before the server is. What is asked, and
 * what an answer costs.
 */
import { execFile } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'

/** A conversion that is asked again and again. */
export const one = '/v1/convert?phrase=a+pottle+of+cream&year=1690&place=london'

const script = fileURLToPath(new URL('./new.lua', import.meta.url))
const inMilliseconds = { us: 0.001, ms: 1, s: 1000 }
let turn = 0

async function wrk(words) {
  try {
    return (await promisify(execFile)('wrk', words)).stdout
  } catch (error) {
    if (error.code !== 'ENOENT') throw error
    throw new Error('these benches need wrk: install it with your system’s packages (Debian: apt-get install wrk)')
  }
}

/**
 * Loads a server for two seconds over 32 connections.
 *
 * @param server its `url`, and `spent`, which tells the microseconds of processor time that it has had
 * @param asked a `path` that is asked again and again, with `headers`; or `fresh`: a route that is asked a hundred thousand phrases, all different,
 * many more than the server keeps answers, so that each is worked out anew
 * @returns requests a second, the 99th percentile in milliseconds, and the processor time of a request in microseconds
 */
export async function shoot({ url, spent }, { path = '/', headers = {}, fresh } = {}) {
  const before = await spent()
  const own = Object.entries(headers).flatMap(([name, value]) => ['-H', `${name}: ${value}`])
  const plan = ['-t1', '-c32', '-d2', '--latency', ...own]
  // Each round begins somewhere else, so that what is remembered of the last is of no use to it.
  const said = await wrk(fresh ? [...plan, '-s', script, url, '--', fresh, String((turn++ * 33_331) % 100_000)] : [...plan, url + path])
  const [, number, unit] = /99%\s+([\d.]+)(us|ms|s)/.exec(said)
  const total = Number(/(\d+) requests in/.exec(said)[1])
  const faults = Number(/Non-2xx or 3xx responses: (\d+)/.exec(said)?.[1] ?? 0)
  if (faults > 0) throw new Error(`${faults} answers were faults`)
  return {
    rate: Number(/Requests\/sec:\s+([\d.]+)/.exec(said)[1]),
    p99: Number(number) * inMilliseconds[unit],
    cpu: ((await spent()) - before) / total,
  }
}

/** A clock tick of Linux, in microseconds (`getconf CLK_TCK` is 100 everywhere that Node runs). */
const tick = 10_000

/** The processor time of a process and all that it has begun, in microseconds; on Linux alone. */
export function spentBy(pid) {
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8')
  const [user, system] = stat.slice(stat.lastIndexOf(')')).split(' ').slice(12, 14).map(Number)
  const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim().split(' ').filter(Boolean)
  return (user + system) * tick + children.reduce((sum, child) => sum + spentBy(child), 0)
}

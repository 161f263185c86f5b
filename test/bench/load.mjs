/** Load on servers over loopback: what is asked, and what an answer costs them. */
import { readFileSync } from 'node:fs'
import autocannon from 'autocannon'

/** A conversion that is asked again and again. */
export const one = '/v1/convert?phrase=a+pottle+of+cream&year=1690&place=london'

const measures = ['pint', 'pound', 'quart', 'peck', 'gill', 'ounce', 'pottle', 'gallon', 'bushel', 'dram']
const things = ['cream', 'flour', 'sugar', 'butter', 'ale', 'sack', 'almonds', 'currants', 'honey', 'vinegar']

/** Twenty thousand phrases, all different: many more than the server keeps answers, so that each is worked out anew. */
const many = Array.from({ length: 200 }, (_, i) =>
  measures.flatMap((measure, j) =>
    things.map((thing, k) => {
      const year = 1600 + ((i * 37 + j * 11 + k * 5) % 25) * 10
      return { path: `/v1/convert?${new URLSearchParams({ phrase: `${i + 1} ${measure}s of ${thing}`, year: String(year) })}` }
    }),
  ),
).flat()

let turn = 0

/** Every connection begins somewhere else, and goes on where the last round ended, so that no two of them ask the same. */
export function askNew(client) {
  const share = Math.floor(many.length / 32)
  const from = (turn++ % 32) * share
  client.setRequests([...many.slice(from + share / 2), ...many.slice(0, from + share / 2)])
}

/**
 * Loads a server for a while.
 *
 * @param server its `url`, and `spent`, which tells the microseconds of processor time that it has had
 * @returns requests a second, the 99th percentile in milliseconds, and the processor time of a request in microseconds
 */
export async function shoot({ url, spent }, options = {}) {
  const before = await spent()
  const result = await autocannon({ url, connections: 32, duration: 2, ...options })
  const total = result.requests.total
  if (result.non2xx > 0 && result['3xx'] !== total) throw new Error(`${result.non2xx} answers were faults`)
  return { rate: result.requests.average, p99: result.latency.p99, cpu: ((await spent()) - before) / total }
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

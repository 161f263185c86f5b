/** Minutes of mixed load (`SOAK` seconds, 60): memory at even times, which has to stay flat once the caches are full. */
import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import autocannon from 'autocannon'

const seconds = Number(process.env.SOAK ?? 60)
const parts = 12

const things = ['cream', 'flour', 'sugar', 'butter', 'ale', 'sack', 'almonds', 'currants', 'honey', 'vinegar', 'mace', 'salt']
const measures = ['pint', 'pound', 'quart', 'peck', 'gill', 'ounce', 'spoonful', 'handful', 'pottle', 'gallon', 'bushel', 'dram']
const amounts = ['a', 'half a', 'two', 'iij', 'xij', 'three quarters of a', 'two or three']

/** Some ten thousand different questions of several kinds, and a few that are faults. */
const requests = Array.from({ length: 10_000 }, (_, i) => {
  const phrase = `${amounts[i % 7]} ${measures[(i >> 3) % 12]} of ${things[(i >> 5) % 12]}`
  const year = 1550 + ((i * 37) % 340)
  const query = `?${new URLSearchParams({ phrase, year: String(i % 97 === 0 ? 3000 : year) })}`
  const json = { 'content-type': 'application/json' }
  if (i % 10 === 0)
    return {
      method: 'POST',
      path: '/v1/readings',
      headers: json,
      body: JSON.stringify({ text: `Take ${phrase} and vj eggs; bake it in a quick oven.`, year }),
    }
  if (i % 25 === 1)
    return {
      method: 'POST',
      path: '/v1/sheets',
      headers: json,
      body: JSON.stringify({ text: `Take ${phrase} and a quart of milk.`, year }),
    }
  if (i % 10 === 2) return { path: `/v1/loaves?year=${year}` }
  if (i % 10 === 3) return { path: `/v1/oven-heats?phrase=a+slack+oven&year=${year}` }
  if (i % 50 === 4) return { path: `/measure${query}` }
  return { path: `/v1/convert${query}` }
})

const ask = (child) =>
  new Promise((resolve) => {
    child.once('message', resolve)
    child.send('memory')
  })

export async function run() {
  const child = fork(fileURLToPath(new URL('./served.mjs', import.meta.url)), ['pottle'], { execArgv: ['--expose-gc'] })
  const { port } = await new Promise((resolve) => child.once('message', resolve))
  const rows = []
  let total = 0
  let failed = 0
  for (let i = 0; i < parts; i++) {
    const result = await autocannon({ url: `http://127.0.0.1:${port}`, connections: 16, duration: seconds / parts, requests })
    total += result.requests.total
    failed += result['5xx'] + result.errors + result.timeouts
    rows.push(await ask(child))
  }
  child.kill()
  console.log(
    `soak: ${total.toLocaleString('en-GB')} requests of 10,000 kinds in ${seconds} s, ${failed} failed; after each of ${parts} parts, when all that can go is gone:`,
  )
  console.log(`  heap MB ${rows.map(({ heap }) => (heap / 1e6).toFixed(0)).join(' ')}`)
  console.log(`  rss MB  ${rows.map(({ rss }) => (rss / 1e6).toFixed(0)).join(' ')}`)
  const [middle, last] = [rows[Math.floor(parts / 2)], rows.at(-1)]
  console.log(`  the second half added ${((last.heap / middle.heap - 1) * 100).toFixed(1)} % to the heap`)
}

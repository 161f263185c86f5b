/** A hundred thousand hostile requests (`HOSTILE`, `SEED`): statuses, the slowest phrase, and whatever broke a rule. */
import { createApp, routesFor } from '@pottle/api'
import { load } from './bundle.mjs'

const count = Number(process.env.HOSTILE ?? 100_000)
const seed = Number(process.env.SEED ?? 1914)

export async function run() {
  const { askHostile } = await load('test/api/hostile/index.ts')
  const logged = []
  const app = createApp({ logFault: (fault) => logged.push(fault) })
  const start = performance.now()
  const { tally, slowest, slowestPhrase, faults } = await askHostile(app, routesFor(), count, seed)
  const seconds = (performance.now() - start) / 1000
  console.log(
    `hostile: ${count.toLocaleString('en-GB')} requests of seed ${seed} in ${seconds.toFixed(0)} s, by status ${JSON.stringify(tally)}`,
  )
  console.log(`  slowest phrase ${slowestPhrase.took.toFixed(1)} ms: ${slowestPhrase.asked.slice(0, 160)}`)
  console.log(`  slowest of all ${slowest.took.toFixed(1)} ms: ${slowest.asked.slice(0, 160)}`)
  console.log(`  ${faults.length} broke a rule, ${logged.length} faults of ours`)
  for (const fault of faults) console.log(`  ${fault}`)
  for (const fault of logged.slice(0, 5)) console.log(`  ${fault.fault}`)
}

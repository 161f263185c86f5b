import { createApp, routesFor } from '@pottle/api'
import { expect, test } from 'vitest'
import { askHostile } from './hostile/index.js'

/** As many as seconds allow; `npm run bench -- hostile` makes a hundred thousand. */
const count = Number(process.env.HOSTILE ?? 3000)
const seed = Number(process.env.SEED ?? 1690)

/** No phrase may take longer, in milliseconds. */
const longest = 100

test(`${count} hostile requests get answers or problems, and none takes long`, { timeout: 300_000 }, async () => {
  const logged: unknown[] = []
  const app = createApp({ logFault: (fault) => logged.push(fault) })
  const { tally, slowestPhrase, faults } = await askHostile(app, routesFor(), count, seed)
  expect(faults).toEqual([])
  expect(logged).toEqual([])
  expect(slowestPhrase.took, slowestPhrase.asked).toBeLessThan(longest)
  // The generator reaches answers as well as faults.
  expect(tally[200]).toBeGreaterThan(count / 10)
  expect(tally[400]).toBeGreaterThan(count / 20)
  console.log(
    `hostile requests: ${count} of seed ${seed}, by status ${JSON.stringify(tally)}, slowest phrase ${slowestPhrase.took.toFixed(1)} ms`,
  )
})

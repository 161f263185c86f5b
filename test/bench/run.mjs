/** `npm run bench`, or `npm run bench -- bands convert` for some of it. Prints ratios measured in this run; asserts nothing. */
import { readdirSync } from 'node:fs'

const helpers = ['run.mjs', 'measure.mjs', 'bundle.mjs', 'load.mjs', 'served.mjs']
const all = readdirSync(new URL('.', import.meta.url)).filter((file) => file.endsWith('.mjs') && !helpers.includes(file))
const asked = process.argv.slice(2)
const unknown = asked.filter((name) => !all.includes(`${name}.mjs`))
if (unknown.length > 0) {
  console.error(`no bench named ${unknown.join(', ')}; there are ${all.map((file) => file.replace('.mjs', '')).join(', ')}`)
  process.exit(2)
}
for (const file of all) {
  if (asked.length > 0 && !asked.includes(file.replace('.mjs', ''))) continue
  const { run } = await import(`./${file}`)
  await run()
}

// Writes each table of data/ as a TypeScript module that core can import: the compiler then checks every row against its type,
// and a page that uses one table carries only that one.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { camel } from './names.mjs'
import { tables } from './tables.mjs'

const data = new URL('../', import.meta.url)
const rows = new URL('../../packages/core/src/tables/rows/', import.meta.url)

mkdirSync(rows, { recursive: true })

const written = new Set()
const write = (name, text) => {
  const file = new URL(`${name}.ts`, rows)
  written.add(`${name}.ts`)
  // An unchanged module keeps its date, so that the compiler need not look at it again.
  if (!readdirSync(rows).includes(`${name}.ts`) || readFileSync(file, 'utf8') !== text) writeFileSync(file, text)
}

for (const [name, type] of Object.entries(tables)) {
  const json = readFileSync(new URL(`${name}.json`, data), 'utf8').trim()
  write(
    name,
    `import type { ${type} } from '../schema/index.js'\n\n/** The rows of \`data/${name}.json\`. */\nexport const ${camel(name)}: readonly ${type}[] = ${json}\n`,
  )
}
// The short forms alone, for who names sources and does not describe them: a quarter of the table.
const shorts = JSON.parse(readFileSync(new URL('sources.json', data), 'utf8')).map(({ id, custom }) => [id, custom.short])
write(
  'short-sources',
  `/** The short form of every source, as footnotes give it, by its id. */\nexport const shortSources: Readonly<Record<string, string>> = ${JSON.stringify(Object.fromEntries(shorts), null, 2)}\n`,
)
const { version } = JSON.parse(readFileSync(new URL('package.json', data), 'utf8'))
write(
  'version',
  `/** The version of the tables, which answers carry so that a figure can be traced. */\nexport const dataset: string = '${version}'\n`,
)

for (const file of readdirSync(rows)) if (!written.has(file)) rmSync(fileURLToPath(new URL(file, rows)))

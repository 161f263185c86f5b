// Writes what the package of the tables holds beside them, before npm packs it: a typed door for programs, the tables as CSV, and the list of
// what they are unsure of.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import ts from 'typescript'
import { writeCsv } from './csv.mjs'
import { camel } from './names.mjs'
import { tables } from './tables.mjs'
import { unsureAsMarkdown } from './unsure.mjs'

const schema = new URL('../../packages/core/src/tables/schema/', import.meta.url)
const dist = new URL('../dist/', import.meta.url)
const write = (name, text) => writeFileSync(new URL(name, dist), text)

rmSync(dist, { recursive: true, force: true })
mkdirSync(dist)

const declarationsOf = (file) =>
  ts.transpileDeclaration(readFileSync(new URL(file, schema), 'utf8'), { compilerOptions: { target: ts.ScriptTarget.ES2022 } }).outputText
mkdirSync(new URL('schema/', dist))
for (const file of readdirSync(schema)) write(`schema/${file.replace(/\.ts$/, '.d.ts')}`, declarationsOf(file))
write('datapackage.d.ts', 'declare const description: Readonly<Record<string, unknown>>\nexport default description\n')
for (const [name, type] of Object.entries(tables))
  write(`${name}.d.ts`, `import type { ${type} } from './schema/index.js'\n\ndeclare const rows: readonly ${type}[]\nexport default rows\n`)

const names = Object.keys(tables)
const lines = (line) => names.map(line).join('')
write(
  'index.d.ts',
  `export type * from './schema/index.js'\n${lines((name) => `export { default as ${camel(name)} } from './${name}.js'\n`)}`,
)
write(
  'index.js',
  lines((name) => `export { default as ${camel(name)} } from '../${name}.json' with { type: 'json' }\n`),
)

writeCsv()
writeFileSync(new URL('../unsure.md', import.meta.url), unsureAsMarkdown())

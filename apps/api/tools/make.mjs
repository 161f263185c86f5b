// Makes the modules of the pages that come from packages needed only when they are made. An edge runtime has no files to read.
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url))
const changed = (relative) => statSync(path(relative)).mtimeMs
const read = (relative) => JSON.parse(readFileSync(path(relative), 'utf8'))

const lock = '../../../package-lock.json'
const data = ['../../../data/sources.json', '../../../data/package.json']

/** What is made, from what, and how: the library of citations takes some seconds, and is loaded only when it has something to do. */
const modules = {
  'references.ts': {
    from: ['references.mjs', lock, ...data],
    make: async () => (await import('./references.mjs')).referencesModule(read(data[0]), read(data[1]).version),
  },
  'faces.ts': { from: ['faces.mjs', lock], make: async () => (await import('./faces.mjs')).facesModule() },
}

mkdirSync(path('../src/pages/made/'), { recursive: true })
for (const [name, { from, make }] of Object.entries(modules)) {
  const file = `../src/pages/made/${name}`
  const fresh = existsSync(path(file)) && from.every((input) => changed(input) < changed(file))
  if (!fresh) writeFileSync(path(file), await make())
}

/** Tries the rows and the code that DEVELOPERS.md gives a newcomer to paste: rows stand under the name of their table, code under that of its file. */
import { existsSync, readFileSync } from 'node:fs'
import * as core from '@pottle/core'
import { afterEach, expect, test, vi } from 'vitest'
import * as z from 'zod'
import * as common from '../../apps/api/src/contract/common.js'
import * as named from '../../apps/api/src/contract/named.js'
import * as routing from '../../apps/api/src/http/route.js'
import guide from '../../DEVELOPERS.md?raw'
import { findFaults } from '../../data/tools/faults.mjs'
import { tables } from '../../data/tools/tables.mjs'
import { evaluate } from '../docstrings.js'

type Row = Readonly<Record<string, unknown>>
type Module = Readonly<Record<string, unknown>>

const root = new URL('../../', import.meta.url)
const senses = import.meta.glob<Module>('../../packages/core/src/senses/*.ts')
const doors = import.meta.glob<Module>('../../packages/core/src/*/index.ts')

/** What stands between the fences of a block, without the indent of the list it stands in. */
const pasted = new Map(
  [...guide.matchAll(/^( *)```(?:json|ts) (\S+)\n([\s\S]*?)\n *```$/gm)].map(([, indent, path, text]) => [
    path!,
    text!.replaceAll(new RegExp(`^${indent}`, 'gm'), ''),
  ]),
)

const rowsOf = (name: string): readonly Row[] => [JSON.parse(pasted.get(`data/${name}.json`)!)].flat()

/** The rows that are not the guide's: who has just pasted those is not told that they are there twice. */
const besides = (rows: readonly Row[], own: readonly Row[]): readonly Row[] => rows.filter(({ id }) => !own.some((row) => row.id === id))

function allTables(): Record<string, readonly Row[]> {
  const kept = Object.keys(tables).map((name) => [name, JSON.parse(readFileSync(new URL(`data/${name}.json`, root), 'utf8'))])
  return Object.fromEntries(kept)
}

/** A file as it stands in the guide: its imports by the modules that are given for them, its one export as the value. */
async function load(path: string, from: (module: string) => Promise<Module>): Promise<unknown> {
  const text = pasted.get(path)!
  const scope: Record<string, unknown> = {}
  for (const [, names, module] of text.matchAll(/^import \{ (.+?) \} from '(.+)'$/gm)) {
    const found = await from(module!)
    for (const name of names!.split(', ')) {
      expect(Object.keys(found), `${path} takes ${name} from ${module}`).toContain(name)
      scope[name] = found[name]
    }
  }
  const body = text.replace(/^import .+$/gm, '').replace(/^export const \w+(?:: \w+)? = /m, 'return ')
  return evaluate(`(() => {${body}})()`, scope)
}

afterEach(() => vi.resetModules())

test('the rows have no fault', () => {
  const given = ['sources', 'measures', 'to-the-pound']
  const known = allTables()
  const added = Object.fromEntries(given.map((name) => [name, [...besides(known[name] ?? [], rowsOf(name)), ...rowsOf(name)]]))
  expect(findFaults({ ...known, ...added })).toEqual([])
})

test('the measure is answered once its row is there', async () => {
  vi.doMock('../../packages/core/src/tables/rows/measures.js', async (actual) => {
    const { measures } = await actual<{ measures: readonly Row[] }>()
    return { measures: [...besides(measures, rowsOf('measures')), ...rowsOf('measures')] }
  })
  vi.resetModules()
  const { convert } = await import('@pottle/core')
  expect(convert('a saltern of cream', { year: 1690 })).toMatchObject({ text: 'about 1.75 litres, 7¼ US cups; 1.75 kg' })
})

test('the kind of sense gives what its example says', async () => {
  const path = 'packages/core/src/senses/to-the-pound.ts'
  const tablesDoor = { ...(await doors['../../packages/core/src/tables/index.ts']!()), toThePound: rowsOf('to-the-pound') }
  const kind = await load(path, (module) =>
    module === '../tables/index.js'
      ? Promise.resolve(tablesDoor)
      : (senses[`../../packages/core/src/senses/${module.slice(2, -3)}.ts`] ??
          doors[`../../packages/core/src/${module.slice(3, -3)}.ts`])!(),
  )
  const { answers, senses: sensesOf } = kind as { answers(q: unknown): boolean; senses(q: unknown): readonly { value: core.Expression }[] }
  const question = { reading: core.readPhrase('four Naples biscuits'), setting: core.settingOf(1690) }
  const example = Number(/@example .+?\s{2,}\/\/ (.+)/.exec(pasted.get(path)!)![1])
  expect(answers(question)).toBe(true)
  expect(4 * core.bandOf(sensesOf(question)[0]!.value).best).toBeCloseTo(example, 3)
  expect(() => sensesOf({ ...question, setting: core.settingOf(1800) })).toThrow('from 1688 to 1720')
})

test('the route answers what its contract says', async () => {
  const contract: Record<string, Module> = { zod: { z }, './common.js': common, './named.js': named }
  const GasMarkList = (await load('apps/api/src/contract/gas-marks.ts', (module) => Promise.resolve(contract[module]!))) as z.ZodType
  const modules: Record<string, Module> = {
    '@pottle/core': core,
    zod: { z },
    '../contract/index.js': { GasMarkList },
    '../http/route.js': routing,
  }
  const route = await load('apps/api/src/routes/gas-marks.ts', (module) => Promise.resolve(modules[module]!))
  const answer = (route as { handle(): unknown }).handle()
  expect(GasMarkList.safeParse(answer).success).toBe(true)
  expect(answer).toMatchObject({ marks: { length: core.allGasMarks().length } })
})

test('every file and folder that the guide names is there', () => {
  const places = [...guide.matchAll(/`((?:data|packages|apps|test)\/[^`*\s]*?)`/g)].map(([, place]) => place!)
  const made = [/\/rows\/$/, /\/made\/$/, /^packages\/docs\/$/, /^data\/csv\/$/]
  const missing = places.filter((place) => !made.some((one) => one.test(place)) && !pasted.has(place) && !existsSync(new URL(place, root)))
  expect(missing).toEqual([])
})

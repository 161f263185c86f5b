/** The tables as a publication: described after the Frictionless standard, exported as CSV, versioned, and citable. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { validateCFFFile } from 'cffjs'
import { parse } from 'csv-parse/sync'
import { Package, type PackageDescriptor, Profile, validate } from 'datapackage'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { writeCsv } from '../../data/tools/csv.mjs'
import { flatten } from '../../data/tools/flat.mjs'
import { tables } from '../../data/tools/tables.mjs'
import { root } from './tarballs.js'

type Row = Record<string, unknown>

const names = Object.keys(tables)
const text = (path: string): string => readFileSync(join(root, path), 'utf8')
const json = (path: string) => JSON.parse(text(path))
const rowsOf = (name: string): Row[] => json(`data/${name}.json`)

const description = json('data/datapackage.json')
const { version } = json('data/package.json')

/** Frictionless Table Schema 2.0, section "Field types". */
const types = ['string', 'number', 'integer', 'boolean', 'object', 'array', 'list']

/** The published schema at hand is that of version 1, which does not know the type `list`: there a list is text. */
const asVersion1 = (descriptor: PackageDescriptor): PackageDescriptor =>
  JSON.parse(JSON.stringify(descriptor), (_, value) => (value?.type === 'list' ? { ...value, type: 'string' } : value))

/** What the schema of data packages says of the whole, and the stricter one of tables of each table. */
async function faultsOf(descriptor: PackageDescriptor): Promise<string[]> {
  const known = asVersion1(descriptor)
  const ofTables = await Profile.load('tabular-data-resource')
  const { errors } = await validate(known)
  const inTables = known.resources.flatMap((one) => ofTables.validate({ ...one, profile: 'tabular-data-resource' }).errors)
  return [...errors, ...inTables].map(String)
}

describe('the description of the tables', () => {
  test('is valid by the schemas that the authors of the standard publish', async () => {
    expect(await faultsOf(description)).toEqual([])
  })

  test('would not be valid without its resources, or with a field of no known type', async () => {
    const { resources, ...bare } = description
    const strange = [{ ...resources[0], schema: { fields: [{ name: 'id', type: 'word' }] } }]
    expect(await faultsOf({ ...bare, resources: [] })).not.toEqual([])
    expect(await faultsOf({ ...bare, resources: strange })).not.toEqual([])
  })

  test('describes every table, and has no type that version 2 does not', () => {
    expect(description.resources.map(({ name }: { name: string }) => name)).toEqual(names)
    for (const { schema } of description.resources) for (const { type } of schema.fields) expect(types).toContain(type)
  })
})

describe('the tables as CSV', () => {
  let folder = ''
  let described: PackageDescriptor
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'pottle-csv-'))
    writeCsv(pathToFileURL(`${folder}/`))
    described = JSON.parse(readFileSync(join(folder, 'datapackage.json'), 'utf8'))
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  /** A file as its records, by a reader of CSV that is not ours. */
  const records = (name: string): Record<string, string>[] => parse(readFileSync(join(folder, `${name}.csv`)), { columns: true })
  const fieldsOf = (name: string) => described.resources.find((one) => one.name === name)!.schema.fields

  /** A cell as the value that it stands for, by the type of its column. */
  function meaningOf(cell: string, { type, itemType }: { type: string; itemType?: string }): unknown {
    if (type === 'list') return cell.split('|').map((item) => (itemType === 'number' ? Number(item) : item))
    if (type === 'number') return Number(cell)
    return type === 'boolean' ? cell === 'true' : cell
  }

  const pairs = (items: string[]): [string, string | undefined][] =>
    items.map((item) => {
      const at = item.indexOf(': ')
      return at < 0 ? [item, undefined] : [item.slice(0, at), item.slice(at + 2)]
    })

  /** Puts a value where its path says, and undoes what a cell can't hold. */
  function put(row: Row, [key, ...rest]: readonly string[], value: unknown): void {
    if (key === 'years') row.years = [...((row.years as unknown[]) ?? []), value]
    else if (rest.length > 0) {
      row[key!] ??= {}
      put(row[key!] as Row, rest, value)
    } else if (key === 'source' && Array.isArray(value))
      row.source = pairs(value).map(([id, at]) => (at === undefined ? { id } : { id, at }))
    else if (key === 'weights') row.weights = Object.fromEntries(pairs(value as string[]).map(([id, share]) => [id, Number(share)]))
    else row[key!] = listsOf(key!, value)
  }

  const listsOf = (key: string, value: unknown): unknown =>
    key === 'pairs' || key === 'date-parts' ? (value as unknown[]).map((item) => String(item).split(' ').map(Number)) : value

  function rowOf(name: string, record: Record<string, string>): Row {
    const row: Row = {}
    for (const field of fieldsOf(name))
      if (record[field.name] !== '') put(row, field.name.split('.'), meaningOf(record[field.name]!, field))
    return row
  }

  function readBack(name: string): Row[] {
    const inner = described.resources.filter((one) => one.name.startsWith(`${name}.`)).map((one) => one.name)
    const required = description.resources
      .find((one: { name: string }) => one.name === name)
      .schema.fields.filter(
        (field: { type: string; constraints?: { required: boolean } }) => field.type === 'array' && field.constraints?.required,
      )
    const parts = inner.map((sheet) => [sheet.slice(name.length + 1), records(sheet).map((record) => rowOf(sheet, record))] as const)
    return records(name).map((record) => {
      const row = rowOf(name, record)
      for (const [key, list] of parts) {
        const own = list.filter(({ row: of }) => of === row.id).map(({ row: _, nth: __, ...part }) => part)
        if (own.length > 0) row[key] = own
      }
      for (const field of required) row[field.name] ??= []
      return row
    })
  }

  test.each(names)('%s come back as they were', (name) => expect(readBack(name)).toEqual(rowsOf(name)))

  test('are after RFC 4180: lines end in CR LF, and what has a comma, a quote or a line end in it is quoted', () => {
    const strange = 'a "fine", pint\r\nor so'
    const [sheet] = flatten('odd', [{ id: 'a', label: strange }])
    expect(sheet!.cells).toEqual([['a', strange]])
    for (const name of names) {
      const file = readFileSync(join(folder, `${name}.csv`), 'utf8')
      expect(file.endsWith('\r\n'), name).toBe(true)
      expect(file.replaceAll('\r\n', '').includes('\n'), name).toBe(false)
    }
  })

  test('stay narrow enough to read', () => {
    for (const { name, schema } of described.resources) expect(schema.fields.length, name).toBeLessThan(30)
  })

  test('refuse an item with the mark in it that divides items', () => {
    expect(() => flatten('odd', [{ id: 'a', names: ['one|two'] }])).toThrow(/names: "one\|two" has a \|/)
    expect(() =>
      flatten('odd', [
        { id: 'a', size: 1 },
        { id: 'b', size: 'one' },
      ]),
    ).toThrow(/odd, size: here a number and there a string/)
  })

  test('are read, cast and linked by the library of the standard', async () => {
    const bundle = await Package.load(asVersion1(described), { basePath: folder })
    expect(await faultsOf(described)).toEqual([])
    let count = 0
    for (const resource of bundle.resources) count += (await resource.read({ keyed: true, relations: true })).length
    const rows = names.reduce((sum, name) => sum + rowsOf(name).length, 0)
    console.log(`CSV: ${bundle.resources.length} files, ${count} rows`)
    expect(count).toBeGreaterThan(rows)
  }, 60_000)
})

describe('what stands beside the tables', () => {
  test('the README names every table once, and no other', () => {
    const [, listed = ''] = /\| tables \|.*\n.*\n((?:\|.*\n)+)/.exec(text('data/README.md')) ?? []
    const named = listed.split('\n').flatMap((line) => [...(line.split('|')[1] ?? '').matchAll(/`([\w-]+)`/g)].map(([, name]) => name))
    expect(named.sort()).toEqual([...names].sort())
  })

  test('the change log begins with the version of the tables', () => {
    expect(/^## (\S+)$/m.exec(text('data/CHANGELOG.md'))![1]).toBe(version)
  })

  test('the citation file is valid by the schema of CFF 1.2.0, and of these versions', () => {
    const cited = validateCFFFile(join(root, 'CITATION.cff'))
    expect(cited.authors).toEqual([{ name: 'The Pottle contributors' }])
    expect(cited.version).toBe(json('package.json').version)
    expect(cited['preferred-citation']).toMatchObject({ type: 'data', version, license: 'CC0-1.0' })
  })
})

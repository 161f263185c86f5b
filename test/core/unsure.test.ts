/** The list of what the tables are unsure of, against the JSON itself, read here in another way. */
import { readFileSync } from 'node:fs'
import { listUnsure } from '@pottle/core'
import { describe, expect, test } from 'vitest'
import { tables } from '../../data/tools/tables.mjs'
import { ask } from '../api/ask.js'

const list = listUnsure()

/** How many claims of a table rest on no source that was read, counted in its text. */
function claimsIn(name: string): number {
  let count = 0
  JSON.parse(readFileSync(new URL(`../../data/${name}.json`, import.meta.url), 'utf8'), (_, value) => {
    if (value?.source && value.grade && (value.checked === 'memory' || ['practice', 'judgement'].includes(value.grade))) count++
    return value
  })
  return count
}

describe('the list of what is unsure', () => {
  test('has every figure from memory, practice or judgement, and no other', () => {
    const names = Object.keys(tables).filter((name) => name !== 'demo-receipts')
    const listed = names.map((name) => [name, list.filter(({ table }) => table === name).length])
    expect(listed).toEqual(names.map((name) => [name, claimsIn(name)]))
    expect(list.length).toBe(listed.reduce((sum, [, count]) => sum + Number(count), 0))
  })

  test('names each by its table, row and part, so that it can be found', () => {
    const keys = list.map(({ table, row, part, years, says }) => [table, row, part, years, says].join('|'))
    expect(new Set(keys).size).toBe(keys.length)
  })

  test('says what the tables say, when and where, and why', () => {
    expect(list.find(({ row }) => row === 'as-for.manchet')).toMatchObject({ table: 'heat-relations', part: null, grade: 'judgement' })
    expect(list.find(({ row }) => row === 'before-1800')).toMatchObject({ table: 'heat-eras', says: 'widen 75', years: [1000, 1799] })
    for (const { table, row, label, sources } of list) {
      expect(label.length, `${table} ${row}`).toBeGreaterThan(0)
      expect(sources.length, `${table} ${row}`).toBeGreaterThan(0)
    }
  })

  test('is on the pages for readers, figure by figure', async () => {
    const front = String((await ask('/unsure')).body)
    const addresses = [...front.matchAll(/href="(\/unsure\/[a-z-]+)"/g)].map(([, address]) => address!)
    const pages = [front, ...(await Promise.all(addresses.map(async (address) => String((await ask(address)).body))))]
    expect(pages.reduce((sum, page) => sum + page.split('Row <code>').length - 1, 0)).toBe(list.length)
    expect((await ask('/unsure/nothing')).status).toBe(404)
  })
})

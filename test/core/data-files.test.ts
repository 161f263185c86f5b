/** What a historian is told whose table is no longer JSON. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readTables } from '../../data/tools/files.mjs'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'pottle-files-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

/** What is said of one file, as a table called goods. */
function said(text: string): string {
  writeFileSync(join(folder, 'goods.json'), text)
  const { faults } = readTables(pathToFileURL(`${folder}/`), ['goods'])
  return faults.map((fault) => `${fault.table}: ${fault.said}`).join('\n')
}

const sound = `[
  {
    "id": "water",
    "names": ["waters"]
  },
  {
    "id": "cream"
  }
]
`

test('sound rows come as they are', () => {
  expect(said(sound)).toBe('')
  expect(readTables(pathToFileURL(`${folder}/`), ['goods']).tables.goods).toEqual([{ id: 'water', names: ['waters'] }, { id: 'cream' }])
})

const broken: readonly (readonly [string, string, string])[] = [
  [
    'a comma behind the last row',
    sound.replace('}\n]', '},\n]'),
    'line 9, in the row "cream" or behind it: the comma before this has nothing behind it: take it out',
  ],
  [
    'a comma behind the last field',
    sound.replace('["waters"]', '["waters"],'),
    'line 5, in the row "water" or behind it: the comma before this',
  ],
  ['no comma between rows', sound.replace('},', '}'), 'line 6, in the row "water" or behind it: a comma is missing before this'],
  ['no comma between fields', sound.replace('"water",', '"water"'), 'line 4, in the row "water" or behind it: a comma is missing'],
  ['no colon', sound.replace('"names":', '"names"'), 'line 4, in the row "water" or behind it: a colon is missing'],
  ['a text without an end', sound.replace('"waters"', '"waters'), 'line 4, in the row "water" or behind it: the quotation mark at the end'],
  [
    'curly quotation marks',
    sound.replace('"names"', '“names”'),
    'line 4, in the row "water" or behind it: words stand in straight quotation marks',
  ],
  ['a comment', sound.replace('"names"', '// as sold\n"names"'), 'line 4, in the row "water" or behind it: JSON has no comments'],
  [
    'a row without an end',
    sound.replace('  },\n', '  ,\n'),
    'line 6, in the row "water" or behind it: the } at the end of the row before this is missing',
  ],
  ['no end at all', sound.replace('\n]', ''), 'the ] at the end of a list is missing'],
  ['an empty file', '', 'the file is empty'],
  ['one row without its list', '{ "id": "water" }', 'it is not a list of rows'],
]

test.each(broken)('%s', (_, text, words) => expect(said(text)).toContain(words))

test('a file that no table is, and a table that has no file', () => {
  writeFileSync(join(folder, 'candles.json'), '[]')
  const { faults } = readTables(pathToFileURL(`${folder}/`), ['goods', 'heats'])
  expect(faults.map(({ table }) => table)).toEqual(['heats', 'candles', 'goods'])
})

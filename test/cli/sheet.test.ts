/** A receipt from a file, the standard input or our own shelf; plans as a command line has them; every form. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import * as core from '@pottle/core'
import { afterAll, describe, expect, test } from 'vitest'
import { readDish } from '../../apps/cli/src/sheet/dish.js'
import { readFixes, readLimit } from '../../apps/cli/src/sheet/fix.js'
import { ask } from './ask.js'

const [tart] = core.demoReceipts
const folder = mkdtempSync(join(tmpdir(), 'pottle-'))
const file = join(folder, 'receipt.txt')
writeFileSync(file, tart!.text)
afterAll(() => rmSync(folder, { recursive: true }))
const here = (name: string): string => join(folder, name)

const sheet = (options: core.SheetOptions = {}): core.Sheet => core.workSheet(tart!.text, { year: '1690', ...options })

describe('a dish', () => {
  test.each([
    ['small-tart', { id: 'small-tart' }],
    ['6 small-tart', { id: 'small-tart', count: 6 }],
    ['round 23cm x 4cm', { shape: 'round', diameter: '23 cm', depth: '4 cm' }],
    ['2 Round 9 x 1.5 in', { shape: 'round', diameter: '9 in', depth: '1.5 in', count: 2 }],
    ['loaf 20 × 10 × 7 cm', { shape: 'loaf', length: '20 cm', width: '10 cm', depth: '7 cm' }],
    ['square 1 1/2" x 20mm', { shape: 'square', side: '1 1/2 "', depth: '20 mm' }],
    ['mould 500ml', { shape: 'mould', volume: 500 }],
    ['12 mould 100 ml', { shape: 'mould', volume: 100, count: 12 }],
    ['13 by 9 inch tin', { id: '13 by 9 inch tin' }],
  ])('%s', (text, dish) => {
    expect(readDish(text)).toEqual(dish)
    expect(() => sheet({ plan: { dish: readDish(text) } })).not.toThrow()
  })
})

describe('choices', () => {
  test('are what the library calls fixed', () => {
    const texts = [
      'pint=wine',
      'penny loaf=300g',
      'spoonful = 15 ml',
      'egg=52g',
      'line 3=ale',
      '9=40ml',
      'cream=1.01g/ml',
      'oven=350F',
      'Gallon=gallon.ale',
    ]
    const fixed = readFixes(texts)
    expect(fixed).toEqual({
      standards: { pint: 'wine', gallon: 'gallon.ale' },
      sizes: { 'penny loaf': { g: 300 }, spoonful: { ml: 15 } },
      lines: { 3: { standard: 'ale' }, 9: { ml: 40 } },
      densities: { cream: 1.01 },
      egg: 52,
      oven: 176.7,
    })
    expect(() => sheet({ plan: { fixed } })).not.toThrow()
    expect(readFixes(['egg=52g', 'egg=60'])).toEqual({ egg: 60 })
  })

  test('and what there is least of', () => {
    expect(readLimit('cream=300ml')).toEqual({ thing: 'cream', amount: '300', unit: 'ml' })
    expect(readLimit('rose water = 1/2 cup-us')).toEqual({ thing: 'rose water', amount: '1/2', unit: 'cup-us' })
    expect(readLimit('egg=3')).toEqual({ thing: 'egg', amount: '3', unit: 'each' })
  })
})

describe("every form is the library's", () => {
  const forms: readonly (readonly [string, (sheet: core.Sheet) => string])[] = [
    ['markdown', core.sheetToMarkdown],
    ['html', core.sheetToHtml],
    ['csv', core.sheetToCsv],
    ['json', (one) => `${JSON.stringify(one, null, 2)}\n`],
    ['jsonld', (one) => `${JSON.stringify(core.sheetToJsonLd(one), null, 2)}\n`],
  ]
  test.each(forms)('%s', async (format, written) => {
    const { out, exit } = await ask(['sheet', file, '-y', '1690', '-s', '1/2', '--format', format])
    expect(exit).toBe(0)
    expect(out).toBe(written(sheet({ plan: { scale: '1/2' } })))
  })

  test('and chosen by the ending of the file', async () => {
    for (const [name, written] of [
      ['a.md', core.sheetToMarkdown],
      ['a.HTML', core.sheetToHtml],
      ['a.csv', core.sheetToCsv],
    ] as const) {
      const { out, err, exit } = await ask(['sheet', file, '-y', '1690', '-o', here(name)])
      expect({ out, exit }).toEqual({ out: '', exit: 0 })
      expect(err).toBe(`Written: ${here(name)}\n`)
      expect(readFileSync(here(name), 'utf8')).toBe(written(sheet()))
    }
  })

  test('a file of plain text has no ink, whatever the terminal', async () => {
    await ask(['sheet', file, '-o', here('a.txt')], { tty: { out: true } })
    expect(readFileSync(here('a.txt'), 'utf8')).not.toContain('\u001b')
  })
})

test('every option of the plan reaches the library', async () => {
  const line = [
    'sheet',
    file,
    '-y',
    '1690',
    '-p',
    'london',
    '--json',
    '--title',
    'A Tart',
    '--coverage',
    '0.5',
    '-u',
    'us',
    '--oven',
    'fan',
    '--guests',
    '12',
    '--serves',
    '6',
  ]
  const { out } = await ask([...line, '--eggs', 'egg-us-xl', '-d', 'small-tart', '-d', '2 round 9 x 1 in', '--fix', 'pint=ale'])
  const plan: core.Plan = {
    units: 'us',
    oven: 'fan',
    guests: 12,
    serves: 6,
    eggClass: 'egg-us-xl',
    dish: [{ id: 'small-tart' }, { shape: 'round', diameter: '9 in', depth: '1 in', count: 2 }],
    fixed: { standards: { pint: 'ale' } },
  }
  expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(sheet({ place: 'london', title: 'A Tart', coverage: 0.5, plan }))))
})

describe('a receipt comes', () => {
  test('from a file or from the standard input alike', async () => {
    const [read, piped, dashed] = [
      await ask(['sheet', file, '-y', '1690']),
      await ask(['sheet', '-y', '1690'], { stdin: tart!.text }),
      await ask(['sheet', '-', '-y', '1690'], { stdin: tart!.text }),
    ]
    expect(piped.out).toBe(read.out)
    expect(dashed.out).toBe(read.out)
    expect(read.out).toContain('To measure off')
  })

  test('from our own shelf with its own title, year and place, unless others are given', async () => {
    expect((await ask(['sheet', '--demo', tart!.id])).out).toContain(tart!.title)
    expect((await ask(['sheet', '--demo', tart!.id, '-y', '1790', '-t', 'Another'])).out).toMatch(/^Another .*1790\n/)
  })

  test('from a terminal, which is told what to type', async () => {
    const { err, exit } = await ask(['sheet'], { stdin: 'Take a pint of cream', tty: { in: true } })
    expect(exit).toBe(0)
    expect(err).toMatch(/^Type or paste the words of a receipt, then press Ctrl/)
  })
})

test('the text of the sheet tells all that the sheet has', async () => {
  const { out } = await ask(['sheet', file, '-y', '1690', '--fix', 'pint=wine', '--dish', 'small-tart'])
  const flat = out.replace(/\s+/g, ' ')
  const one = sheet({ plan: { fixed: { standards: { pint: 'wine' } }, dish: 'small-tart' } })
  for (const { phrase, working, chosen, number } of one.lines) {
    expect(flat).toContain(`${phrase} [${number}]`)
    expect(flat).toContain(working!.text)
    expect(flat).toContain(chosen!.label)
  }
  for (const { short } of one.sources) expect(flat).toContain(short)
  for (const { text } of [one.dishes, one.eggs!, ...one.oven, ...one.bake, ...one.cautions, ...one.order]) expect(flat).toContain(text!)
  expect(flat).toContain('fixed pint: wine (line 3)')
  expect(flat).toContain(one.rounding!)
})

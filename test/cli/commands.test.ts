/** What each command tells: to people in any width, and to programs in JSON the library's own answer. */
import * as core from '@pottle/core'
import { describe, expect, test } from 'vitest'
import { ask, say } from './ask.js'

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

describe('people are told', () => {
  test('what a phrase comes to, how sure that is, what it may have meant, and who says so', async () => {
    const text = await say('convert a pottle of cream --year 1690')
    expect(text).toContain(core.convert('a pottle of cream', { year: 1690 }).text)
    expect(text).toContain('90 times in 100 it lies between these ends')
    expect(text).toMatch(/78 in 100 .*half a wine gallon: 1890 ml \(1870 to 1920 ml\)/)
    expect(text).toMatch(/20 in 100 .*half an ale gallon: 2310 ml/)
    // 5 Anne c. 27, s. 17: the wine gallon of 231 cubic inches.
    expect(text).toContain('231 in3 = 3785.411784 ml')
    expect(text).toContain('5 Anne c. 27')
  })

  test('every sense, unit and source where all is asked for', async () => {
    const [brief, full] = [await say('convert a pottle of cream -y 1690'), await say('convert a pottle of cream -y 1690 --full')]
    expect(full.length).toBeGreaterThan(brief.length)
    for (const { citation } of core.convert('a pottle of cream', { year: 1690 }).sources)
      expect(full.replace(/\s+/g, ' ')).toContain(citation.replace(/\s+/g, ' '))
    for (const { label } of core.convert('a pottle of cream', { year: 1690 }).senses) expect(full).toContain(`How ${label} is reckoned`)
  })

  test('what a heat means, and the second heat of two', async () => {
    expect(await say('heat a slack oven --year 1690')).toMatch(/140 °C; 285 °F .*gas mark 1; .*fan/)
    expect(await say('heat quick at first, then slow')).toContain('And after that')
    expect((await say('heat')).split('\n').filter((line) => /^ +\d+ .*: \d+ to \d+ °C/.test(line))).toHaveLength(core.allHeats().length)
  })

  test('how high sugar is boiled and how warm a liquid is', async () => {
    // Farmer, Boston Cooking-School Cook Book, 1910 text: feather at 232 °F.
    expect(await say('sugar feathered --year 1761')).toContain('232 °F; Farmer')
    expect(await say('warmth warm as new milk')).toContain('35 °C; 95 °F')
    expect((await say('sugar')).match(/^ +\d+ °C /gm)).toHaveLength(core.sugarHeights().length)
    expect((await say('warmth')).match(/^ +\d+ °C /gm)).toHaveLength(core.liquidHeats().length)
  })

  test('what a loaf weighed, in one year and year by year', async () => {
    expect(await say('loaf a penny white loaf --year 1690 --place london')).toContain('a penny white loaf')
    const table = await say('loaf penny white --year 1690/1699')
    expect(table.match(/^ +169\d .*\d g \(\d+ to \d+ g\)$/gm)).toHaveLength(10)
    // 3 Geo. 3 c. 11, table: the quartern loaf of 4 lb 5 oz 8 dr, 1970.29 g.
    expect(await say('loaf --coin quartern --year 1790')).toContain('Exactly 1970.29')
  })

  test('what a measure was, when, where and of what', async () => {
    const text = await say('measures firkin')
    // 13 & 14 Cha. 2 c. 26: a firkin of butter holds 56 pounds.
    expect(text).toContain('fifty-six pounds of butter: 25.4 kg')
    expect(text).toContain('1500 to 1914; of butter, fat')
    expect(text).toContain('13 & 14 Cha. 2 c. 26')
    expect(await say('measures pottel')).toBe(await say('measures pottle'))
    expect((await say('measures --kind weight')).split(/[,\n]/).length).toBeLessThan((await say('measures')).split(/[,\n]/).length)
  })

  test('what a source is', async () => {
    expect(await say('sources digby-1669')).toContain('Kenelm Digby')
    expect(await say('sources men and measures')).toContain('nicholson-1912')
    expect(await say('sources --format bibtex')).toBe(core.sources.map(core.citeBibtex).join('\n'))
  })
})

describe('programs are told what the library answers', () => {
  const { dataset } = core
  const asked: readonly (readonly [string, () => unknown])[] = [
    ['convert a pottle of cream -y 169X -p london', () => core.convert('a pottle of cream', { year: '169X', place: 'london' })],
    [
      'convert a peck of flour -y 1750 --to g --coverage 0.5',
      () => core.convert('a peck of flour', { year: 1750, to: 'g', coverage: 0.5 }),
    ],
    ['convert a pint -t cream --standard ale', () => core.convert('a pint', { thing: 'cream', standard: 'ale' })],
    ['heat a slack oven -y 1690', () => ({ ...core.findHeat('a slack oven', { year: 1690 }), dataset })],
    ['heat a slack oven -y 1680/1700', () => ({ ...core.findHeat('a slack oven', { year: 1690 }), dataset })],
    ['heat', () => ({ heats: core.allHeats(), dataset })],
    ['sugar feathered -y 1761', () => ({ ...core.sugarHeight('feathered', 1761), dataset })],
    ['sugar', () => ({ heights: core.sugarHeights(), dataset })],
    ['warmth tepid', () => ({ ...core.liquidHeat('tepid'), dataset })],
    ['warmth', () => ({ heats: core.liquidHeats(), dataset })],
    ['measures', () => ({ measures: core.listMeasures(), dataset })],
    ['measures firkin', () => core.describeMeasure('firkin')],
    ['sources', () => core.sources],
    ['sources digby-1669', () => core.findSource('digby-1669')],
  ]
  test.each(asked)('pottle %s --json', async (line, expected) => {
    expect(JSON.parse(await say(`${line} --json`))).toEqual(plain(expected()))
  })

  test("a loaf and its series are the library's", async () => {
    const { series, value } = JSON.parse(await say('loaf penny white -y 1690/1700 --json'))
    expect(series).toEqual(core.loafSeries({ coin: 'penny', kind: 'white', from: 1690, to: 1700 }))
    expect(value.low).toBeLessThan(value.best)
  })
})

describe('the page', () => {
  const lines = [
    'convert a pottle of cream --year 1690 --full',
    'convert ten eggs, leaving out four of the whites',
    'heat',
    'heat after the bread is drawn --full',
    'sugar',
    'sugar feathered',
    'warmth',
    'loaf penny white --year 1690/1700 --full',
    'measures',
    'measures pottle',
    'sources',
    'sheet --demo almond-tart-1690',
    'sheet --demo seed-buns-1790 --units us --dish small-tart --fix pint=wine',
  ]
  test.each([24, 40, 80, 100])('is never wider than %i columns', async (columns) => {
    for (const line of lines) {
      const widest = Math.max(...(await say(line, { columns })).split('\n').map((row) => [...row].length))
      expect(widest, line).toBeLessThanOrEqual(columns)
    }
  })

  test('has no blanks at the ends of lines and no two empty lines together', async () => {
    for (const line of lines) {
      const text = await say(line)
      expect(text, line).not.toMatch(/[ \t]\n/)
      expect(text, line).not.toMatch(/\n\n\n/)
      expect(text, line).toMatch(/[^\n]\n$/)
    }
  })

  test('has ink on a terminal only, not where NO_COLOR is set, and says the same without it', async () => {
    const escapes = /\p{Cc}\[\d+m/gu
    for (const line of lines) {
      const [bare, inked] = [await say(line), await say(line, { tty: { out: true } })]
      expect(bare).not.toMatch(escapes)
      expect(inked).toMatch(escapes)
      expect(inked.replace(escapes, '')).toBe(bare)
      expect(await say(line, { tty: { out: true }, env: { NO_COLOR: '1' } })).toBe(bare)
      expect(await say(line, { tty: { out: true }, env: { TERM: 'dumb' } })).toBe(bare)
    }
  })

  test('never lets the words of a book move the cursor', async () => {
    const { out } = await ask(['sheet', '-y', '1690'], { stdin: 'Take \u001b[2J a pint \u009b1m of cream\u0007 and\u202e stir' })
    expect(out).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}]/u)
    expect(out).toContain('\ufffd')
  })
})

/** Citations to copy: made by a citation library when the site is built, so that the server has the texts and nothing of the library. */
import { readFileSync } from 'node:fs'
import { findSource, sources } from '@pottle/core'
import { describe, expect, it, test } from 'vitest'
import { isWork, listOf, referTo, referToAnswer, styles } from '../../apps/api/src/pages/parts/references.js'
import { ask } from './ask.js'
import { bundleServer } from './bundle.js'

const works = sources.filter(isWork)
/** An Act is dated by its reign, and at times by two years. */
const yearOf = ({ type, issued }: (typeof works)[number]): string =>
  type === 'legislation' ? '' : String(issued?.['date-parts'][0]?.[0] ?? '')
/** The letters of a text: styles differ in capitals, quotation marks and italics. */
const letters = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '')

describe.each(styles)('%s', (style) => {
  it('has every work with its whole title and its year', () => {
    const lacking = works.filter((source) => {
      const text = referTo(source, style)
      return !letters(text).includes(letters(source.title)) || !text.includes(yearOf(source))
    })
    expect(lacking.map(({ id }) => id)).toEqual([])
    expect(works.length).toBeGreaterThan(300)
  })

  it('has no dash for an author met before, no number and no mark of an engine', () => {
    expect(
      works.map((source) => referTo(source, style)).filter((text) => /———|---|^\d+\. |undefined|\[object|Preprint/.test(text)),
    ).toEqual([])
  })

  it('cites an Act by its chapter', () => {
    expect(referTo(findSource('geo-4-5-c-74')!, style)).toBe('Weights and Measures Act 1824, 5 Geo. 4 c. 74 (1824).')
  })

  it('cites an answer by its title and its address', () => {
    const text = referToAnswer('“a pottle of cream”, London, 1690', 'https://pottle.example/measure?phrase=a+pottle', style)
    expect(text).toMatch(/a pottle of cream[”’], London, 1690/)
    expect(text).toContain('https://pottle.example/measure?phrase=a+pottle')
    expect(text).not.toMatch(/[{}]|““/)
  })
})

/** As the manuals of the styles set the reference of a book: author, year, title, place and publisher in their order. */
test.each([
  ['apa', 'Nicholson, E. (1912). Men and Measures: A History of Weights and Measures, Ancient and Modern. Smith, Elder.'],
  ['chicago', 'Nicholson, Edward. 1912. Men and Measures: A History of Weights and Measures, Ancient and Modern. London: Smith, Elder.'],
  ['harvard', 'Nicholson, E. (1912) Men and Measures: A History of Weights and Measures, Ancient and Modern. London: Smith, Elder.'],
  ['mla', 'Nicholson, Edward. Men and Measures: A History of Weights and Measures, Ancient and Modern. Smith, Elder, 1912.'],
  ['vancouver', 'Nicholson E. Men and Measures: A History of Weights and Measures, Ancient and Modern. London: Smith, Elder; 1912.'],
] as const)('a book in the style %s', (style, text) => {
  expect(referTo(findSource('nicholson-1912')!, style)).toBe(text)
})

test('a list goes by the alphabet, or by numbers', () => {
  expect(listOf('Own.', ['“Bread.”', 'Ale.'], 'mla')).toBe('Own.\nAle.\n“Bread.”')
  expect(listOf('Own.', ['Bread.', 'Ale.'], 'vancouver')).toBe('1. Own.\n2. Bread.\n3. Ale.')
})

test('an answer can be copied in every style', async () => {
  const { body } = await ask('/measure?phrase=a+pottle+of+cream&year=1690&place=london')
  expect(body).toContain('Nicholson, E. (1912). Men and Measures')
  expect(body).toContain('Nicholson, Edward. Men and Measures')
  expect(body).toContain('1. “a pottle of cream”, London, 1690: about 1.9 litres')
  expect(body).not.toContain('Judgement of the editors of these tables. (n.d.)')
})

test('the server carries nothing of the library', async () => {
  const server = readFileSync(await bundleServer(), 'utf8')
  expect(server).toContain('Nicholson E. Men and Measures')
  expect(server).not.toMatch(/citeproc|citation-js|purl\.org\/net\/xbiblio/)
}, 60_000)

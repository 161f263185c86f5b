/** How answers become words and pictures. The figures themselves are held to their sources in test/truth. */
import { type Answer, convert } from '@pottle/core'
import { answerQuestion } from '@pottle/embed/library'
import {
  card,
  type Entry,
  entryOfMeasure,
  footnote,
  gauge,
  type Kind,
  print,
  questionAt,
  questionOf,
  sheet,
  snippet,
} from '@pottle/embed/view'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

const plain = (text: string): string => text.replaceAll('\u00a0', ' ')
const entryFor = (kind: Kind, asked: Record<string, string>): Entry => answerQuestion({ kind, asked })
const pottle = entryFor('measure', { phrase: 'a pottle of cream', year: '1690', place: 'london' })

describe('an entry', () => {
  test('says the answer in the unit that a kitchen reads first, with its band and meanings in the same', () => {
    expect(plain(pottle.short)).toBe('about 1.9 litres')
    // Half of 231 cubic inches (5 Anne c. 27, s. 17) and half of 282 (11 Will. 3 c. 15): 1.893 and 2.311 litres.
    expect(pottle.senses.slice(0, 2).map(({ mark, text }) => `${mark} ${plain(text)}`)).toEqual(['a 1.89 litres', 'b 2.31 litres'])
    expect(plain(pottle.exact!)).toBe('1892.705892 ml')
    expect(pottle.setting).toBe('London, 1690')
    expect(plain(pottle.band!.text)).toMatch(/^nine times in ten between 1\.8\d and 2\.3\d? litres$/)
  })

  test('is read in the unit that was asked for', () => {
    const pints = entryFor('measure', { phrase: 'a pottle of cream', year: '1690', to: 'pint-imp' })
    expect(plain(pints.short)).toMatch(/^about 3¼ imperial pints/)
    expect(pints.band!.unit).toBe('imperial pints')
    // 231 cubic inches over 2 is 3.33 imperial pints of 568.26125 ml (Weights and Measures Act 1985).
    expect(plain(pints.senses[0]!.text)).toBe('3.33 imperial pints')
  })

  test('of an exact answer has no band and is not called about', () => {
    const hour = entryFor('measure', { phrase: 'half an hour', year: '1700' })
    expect(plain(hour.short)).toBe('30 min')
    expect(hour.band).toBeUndefined()
    expect(gauge(hour)).toBeUndefined()
    expect(plain(footnote(hour).text)).toContain('30 min, exactly.')
  })

  test('of a heat gives the settings of modern ovens, its ends to five degrees', () => {
    const heat = entryFor('heat', { phrase: 'a slack oven', year: '1796' })
    expect(plain(heat.short)).toMatch(/^about \d+[05] °C$/)
    expect(heat.also.some((text) => text.startsWith('gas'))).toBe(true)
    expect(plain(heat.band!.text)).toMatch(/^nine times in ten between \d+[05] and \d+[05] °C$/)
  })

  test('of a heat phrase that is asked as a measure is read in degrees too', () => {
    const heat = entryFor('measure', { phrase: 'a slack oven', year: '1796' })
    expect(plain(heat.short)).toMatch(/^about \d+ °C$/)
    expect(heat.band!.unit).toBe('°C')
  })

  test('of a loaf names it and its year', () => {
    const loaf = entryFor('loaf', { coin: 'penny', kind: 'white', year: '1680', place: 'london' })
    expect(loaf.words).toBe('a penny white loaf')
    expect(plain(loaf.short)).toMatch(/^about \d+ g$/)
    expect(loaf.steps.length).toBeGreaterThan(3)
  })

  test('takes the middle of a date that leaves several years open, and says so', () => {
    expect(entryFor('heat', { phrase: 'a slack oven', year: '1790/1800' }).notes[0]).toContain('1795')
    expect(entryFor('loaf', { coin: 'penny', kind: 'white', year: '168X' }).setting).toBe('England, 168X')
    expect(entryFor('measure', { phrase: 'a pint of ale', year: '1690~' }).setting).toBe('England, about 1690')
  })

  test('says of a figure that nobody looked up that it comes from memory', () => {
    const answer: Answer = JSON.parse(JSON.stringify(convert('a pottle of cream', { year: 1690 })))
    const [first, ...others] = answer.senses
    const recalled = { ...first!, steps: first!.steps.map((step) => ({ ...step, checked: 'memory' as const })) }
    const entry = entryOfMeasure({ ...answer, senses: [recalled, ...others] })
    expect(entry.steps.every(({ grade }) => grade.endsWith(', from memory'))).toBe(true)
    expect(footnote(entry).steps.some(({ source }) => source.endsWith('statute, from memory'))).toBe(true)
  })

  test('is not to be had of a loaf without a year', () => {
    expect(() => entryFor('loaf', { coin: 'penny' })).toThrow('year: give the year of the loaf')
  })
})

describe('the picture of a band', () => {
  const letters = (entry: Entry): string[] => [...print(gauge(entry)!).matchAll(/class="letter">([^<]+)</g)].map(([, text]) => text!)

  test('marks every meaning by its letter and says the same in words', () => {
    expect(letters(pottle).join(' ').split(' ').sort()).toEqual(pottle.senses.map(({ mark }) => mark))
    expect(print(gauge(pottle)!)).toMatch(
      /role="img" aria-label="A ruled scale: nine times in ten between [^"]+; meanings at a 1\.89[^"]+"/,
    )
  })

  test('lets meanings that stand on one spot share a mark', () => {
    const ounce = entryFor('measure', { phrase: 'an ounce of nutmegs' })
    expect(letters(ounce).some((mark) => mark.includes(' '))).toBe(true)
  })

  test('stays inside its frame and has no figure that is none, whatever the band', () => {
    // Answers have six significant digits.
    const positive = fc.double({ min: 1e-6, max: 1e9, noNaN: true }).map((value) => Number(value.toPrecision(6)))
    fc.assert(
      fc.property(positive, positive, positive, positive, (one, two, three, sense) => {
        const [low, best, high] = [one, two, three].sort((a, b) => a - b) as [number, number, number]
        fc.pre(high > low)
        const band = { low, best, high, unit: 'g', text: '' }
        const senses = [best, sense].map((value, i) => ({ mark: 'ab'[i]!, label: '', share: '', best: value, text: '' }))
        const drawn = print(gauge({ ...pottle, band, senses })!)
        const places = [...drawn.matchAll(/ (?:x|x1|x2)="([^"%]+)%"/g)].map(([, place]) => Number(place))
        expect(drawn).not.toMatch(/NaN|Infinity/)
        expect(places.every((place) => place >= 0 && place <= 100)).toBe(true)
      }),
      { numRuns: 200 },
    )
  })
})

describe('markup', () => {
  test('has no words of a stranger as tags or attributes', () => {
    const words = '"><script>alert(1)</script>'
    const hostile: Entry = { ...pottle, words, notes: [words], senses: [{ ...pottle.senses[0]!, label: words }] }
    const written = print(card(hostile, hostile.words, 'https://pottle.example/measure?phrase="'))
    expect(written).not.toContain('<script')
    expect(snippet({ kind: 'measure', asked: { phrase: words } }, hostile)).not.toContain('<script')
  })

  test('of the style needs no escaping, so that a page may carry it as it is', () => {
    expect(sheet).not.toMatch(/[<>&]/)
  })
})

describe('an address', () => {
  test.each([
    ['https://pottle.example/measure?phrase=a+pottle&year=1690', 'measure', 'https://pottle.example/'],
    ['https://pottle.example/embed/heat.svg?phrase=a+slack+oven', 'heat', 'https://pottle.example/'],
    ['https://museum.example/pottle/embed/loaf?coin=penny&year=1680', 'loaf', 'https://museum.example/pottle/'],
    ['https://museum.example/pottle/loaves?coin=penny&year=1680', 'loaf', 'https://museum.example/pottle/'],
  ])('%s asks of a %s', (address, kind, base) => {
    expect(questionAt(new URL(address))).toMatchObject({ base, question: { kind } })
  })

  test.each(['https://pottle.example/', 'https://pottle.example/sources', 'https://pottle.example/measures'])(
    '%s asks nothing',
    (address) => {
      expect(questionAt(new URL(address))).toBeUndefined()
    },
  )

  test('keeps no parameter that the question has no use for', () => {
    expect(questionOf('heat', (name) => ({ phrase: ' a  slack\noven ', coin: 'penny', year: '' })[name])).toEqual({
      kind: 'heat',
      asked: { phrase: 'a slack oven' },
    })
  })
})

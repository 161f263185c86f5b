import { readPhrase, readReceipt } from '@core/reading'
import { PottleError } from '@pottle/core'
import fc from 'fast-check'
import { expect, test } from 'vitest'

const pieces = [
  'a',
  'an',
  'the',
  'of',
  'and',
  'or',
  'to',
  'half',
  'quarter',
  'three',
  'xij',
  '2',
  '1/2',
  '½',
  '3-1/2',
  'dozen',
  'every',
  'each',
  'about',
  'pound',
  'lb.',
  '℥',
  'pint',
  'spoonful',
  'glass',
  'blade',
  'piece',
  'penny',
  'loaf',
  'egg',
  'eggs',
  'yolks',
  'whites',
  'leaving',
  'out',
  'but',
  'all',
  'as',
  'much',
  'weight',
  'size',
  'walnut',
  'sixpence',
  'lie',
  'on',
  'oven',
  'quick',
  'hot',
  'for',
  'manchet',
  'bread',
  'drawn',
  'after',
  'hour',
  'day',
  'inch',
  'thick',
  'cream',
  'butter',
  'flower',
  'sugar',
  'mace',
  'juice',
  'leg',
  'pork',
  'ditto',
  'like',
  'same',
  ',',
  ';',
  '.',
  '(',
  ')',
  '-',
  '—',
  '\n\n',
  'ſuger',
  'þe',
  'ȝolkes',
  'œuf',
  'glimmer',
  'goose',
  'hundred',
  'wine',
  'measure',
  'wanting',
  'double',
  'quantity',
  'many',
  'same',
  'boil',
  'candy',
  'height',
  'milk-warm',
  'slower',
  'than',
  'paper',
  'q^{ter}',
  'yᵉ',
  'minus',
  '1,000',
]

const wordy = fc.array(fc.constantFrom(...pieces), { maxLength: 40 }).map((words) => words.join(' '))
const anything = fc.oneof(wordy, fc.string({ unit: 'grapheme', maxLength: 200 }), fc.string({ unit: 'binary', maxLength: 200 }))

test('every span lies in the text, and its phrase is what stands there', () => {
  fc.assert(
    fc.property(anything, (text) => {
      const { measures, heats, warmths, times, lengths, consistencies, unmeasured } = readReceipt(text)
      for (const one of [...measures, ...heats, ...warmths, ...times, ...lengths, ...consistencies, ...unmeasured]) {
        expect(one.start).toBeGreaterThanOrEqual(0)
        expect(one.end).toBeGreaterThan(one.start)
        expect(one.end).toBeLessThanOrEqual(text.length)
        expect(one.phrase).toBe(text.slice(one.start, one.end))
      }
      for (const [i, one] of measures.entries()) if (i > 0) expect(one.start).toBeGreaterThanOrEqual(measures[i - 1]!.start)
    }),
    { numRuns: 400 },
  )
})

test('numbers are finite, none is negative, and no range runs backwards', () => {
  fc.assert(
    fc.property(anything, (text) => {
      for (const { amount, eggs } of readReceipt(text).measures) {
        for (const value of [amount?.low ?? 0, amount?.high ?? 0, ...Object.values(eggs ?? {})]) {
          expect(Number.isFinite(value)).toBe(true)
          expect(value).toBeGreaterThanOrEqual(0)
        }
        if (amount) expect(amount.high).toBeGreaterThanOrEqual(amount.low)
      }
    }),
    { numRuns: 400 },
  )
})

test('a phrase is read or refused with the one typed error', () => {
  fc.assert(
    fc.property(anything, (phrase) => {
      try {
        const { understood, unread } = readPhrase(phrase)
        for (const { start, end } of [...understood, ...unread]) expect(phrase.slice(start, end)).not.toBe('')
      } catch (error) {
        expect(error).toBeInstanceOf(PottleError)
      }
    }),
    { numRuns: 400 },
  )
})

test('the same words are read the same way again', () => {
  fc.assert(
    fc.property(wordy, (text) => {
      expect(readReceipt(text)).toEqual(readReceipt(text))
    }),
  )
})

const ones = [
  '',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
]
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']

function inWords(value: number): string {
  if (value < 20) return ones[value]!
  if (value < 100) return [tens[Math.floor(value / 10)]!, ones[value % 10]!].filter(Boolean).join('-')
  const rest = value % 100
  return `${ones[Math.floor(value / 100)]} hundred${rest > 0 ? ` and ${inWords(rest)}` : ''}`
}

function inRoman(value: number): string {
  const letters: [number, string][] = [
    [100, 'c'],
    [90, 'xc'],
    [50, 'l'],
    [40, 'xl'],
    [10, 'x'],
    [9, 'ix'],
    [5, 'v'],
    [4, 'iiii'],
    [1, 'i'],
  ]
  let left = value
  let numeral = ''
  for (const [worth, letter] of letters) {
    while (left >= worth) {
      numeral += letter
      left -= worth
    }
  }
  return numeral.replace(/i$/, 'j')
}

test('a number comes back from its words, its digits and its numeral', () => {
  for (let value = 1; value < 400; value++) {
    expect(readPhrase(`${inWords(value)} pounds of butter`).amount, inWords(value)).toEqual({ low: value, high: value })
    expect(readPhrase(`${value} pounds of butter`).amount).toEqual({ low: value, high: value })
    expect(readPhrase(`${inRoman(value)} lb. of butter`).amount, inRoman(value)).toEqual({ low: value, high: value })
  }
})

test('five and twenty is twenty-five', () => {
  for (let ten = 2; ten < 10; ten++)
    for (let one = 1; one < 10; one++)
      expect(readPhrase(`${ones[one]} and ${tens[ten]} pears`).amount).toEqual({ low: ten * 10 + one, high: ten * 10 + one })
})

/** What the leanest of a few runs costs the processor, in milliseconds: a busy machine takes longer, but not more. */
function leanest(work: () => void): number {
  let best = Number.POSITIVE_INFINITY
  for (let i = 0; i < 3; i++) {
    const before = process.cpuUsage()
    work()
    const { user, system } = process.cpuUsage(before)
    best = Math.min(best, (user + system) / 1000)
  }
  return best
}

test.each([
  ['eggs without end', 'ten eggs, leaving out half the whites, '],
  ['articles', 'a '],
  ['numbers', 'one or two and '],
  ['things', 'butter and '],
  ['commas', 'sage, '],
  ['compounds', 'and two ounces '],
  ['brackets', '( '],
  ['of each', 'of each '],
  ['as much', 'as much as '],
  ['new words', 'qzj'],
  ['one word', 'e'],
  ['digits', '1'],
  ['hyphens', '-'],
  ['fractions', '1/2-'],
  ['hundreds', 'hundred and one '],
  ['parts of parts', 'syrup of the juice of '],
  ['joints of joints', 'leg of the '],
  ['measures', 'pint '],
  ['likenings', 'of each a like quantity of their weight in '],
  ['sides', 'at least not quite not above '],
  ['heights of sugar', 'boil sugar to a candy height '],
  ['warmths', 'more than milk warm than '],
  ['heats', 'slower than for '],
  ['tests of an oven', 'oven that will turn white paper '],
  ['standards', 'of the old wine measure '],
  ['raised letters', 'q^{ter}'],
  ['open braces', 'q^{'],
  ['colons', 'q:'],
  ['signs of the drachm', 'ʒʒa'],
  ['thousands', '1,000,'],
  ['wanting', 'a pound wanting two ounces '],
])('work grows no faster than the text: %s', (_, piece) => {
  const short = piece.repeat(Math.ceil(10_000 / piece.length))
  const long = short.repeat(4)
  readReceipt(short)
  // Quadratic work would cost sixteen times as much, and seconds.
  expect(leanest(() => readReceipt(long))).toBeLessThan(Math.max(300, 9 * leanest(() => readReceipt(short))))
})

test('a million characters of receipts are read', () => {
  const receipt =
    'Take a pottle of cream, ten egges, leauing out foure whites, and halfe a pound of ſuger; bake it in a gentle ouen an houre. '
  const count = Math.ceil(1_000_000 / receipt.length)
  expect(readReceipt(receipt.repeat(count)).measures).toHaveLength(3 * count)
})

/** Each parser held to what its words mean, whatever numbers, things and hands they are put in. */
import { readPhrase, readReceipt } from '@core/reading'
import { eggs as birds, heats, liquidHeats, sugarHeights } from '@core/tables'
import { convert, findHeat, workSheet } from '@pottle/core'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

const amountOf = (phrase: string) => readPhrase(phrase).amount!
const runs = { numRuns: 200 }

/** Parts as books write them: in figures, in one sign, in words. */
const parts = fc.constantFrom(
  { value: 1 / 2, figures: '1/2', sign: '½', words: 'a half' },
  { value: 1 / 4, figures: '1/4', sign: '¼', words: 'a quarter' },
  { value: 3 / 4, figures: '3/4', sign: '¾', words: 'three quarters' },
  { value: 1 / 3, figures: '1/3', sign: '⅓', words: 'a third' },
  { value: 1 / 8, figures: '1/8', sign: '⅛', words: 'an eighth' },
)
const wholes = fc.integer({ min: 1, max: 60 })
const things = fc.constantFrom('butter', 'fine sugar', 'good thick cream', 'currants', 'flour')
const measures = fc.constantFrom('pound', 'ounce', 'pint', 'quart', 'spoonful', 'handful')

describe('numbers', () => {
  test('a whole and a part add up, whichever way they are written', () => {
    fc.assert(
      fc.property(wholes, parts, things, (whole, part, thing) => {
        const value = whole + part.value
        for (const phrase of [
          `${whole} ${part.figures} lb. of ${thing}`,
          `${whole}-${part.figures} lb of ${thing}`,
          `${whole}${part.sign} lb. of ${thing}`,
          `${whole} & ${part.figures} pounds of ${thing}`,
          `${whole} lb. ${part.sign} of ${thing}`,
          `${whole} pounds and ${part.words} of ${thing}`,
          `${whole} pounds & ${part.figures} of ${thing}`,
        ])
          expect(amountOf(phrase).low, phrase).toBeCloseTo(value, 12)
      }),
      runs,
    )
  })

  test('decimals are decimals, by point or by dot', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 999 }), (whole, rest) => {
        for (const mark of ['.', '·'])
          expect(amountOf(`${whole}${mark}${rest} lb. of sugar`).low).toBeCloseTo(Number(`${whole}.${rest}`), 12)
      }),
      runs,
    )
  })

  test('thousands are parted by commas, and what is beyond all bounds stays finite', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 999_999 }), (value) => {
        expect(amountOf(`${value.toLocaleString('en')} pints of milk`)).toEqual({ low: value, high: value })
      }),
      runs,
    )
    fc.assert(
      fc.property(fc.stringMatching(/^[1-9][0-9]{16,60}$/), (digits) => {
        expect(amountOf(`${digits} pints of milk`).high).toBeGreaterThan(1e14)
        expect(() => convert(`${digits} pints of milk`, { year: 1700 })).toThrow(/more than any kitchen held/)
      }),
      runs,
    )
  })

  test('a range is told from its low end to its high one', () => {
    fc.assert(
      fc.property(wholes, wholes, measures, things, (one, other, measure, thing) => {
        fc.pre(one !== other)
        const [low, high] = [Math.min(one, other), Math.max(one, other)]
        const of = `${measure}s of ${thing}`
        for (const phrase of [
          `${low} or ${high} ${of}`,
          `${low} to ${high} ${of}`,
          `from ${low} to ${high} ${of}`,
          `between ${low} and ${high} ${of}`,
          `${low}-${high} ${of}`,
          `${low} ${measure}s or ${high} of ${thing}`,
        ])
          expect(amountOf(phrase), phrase).toEqual({ low, high })
      }),
      runs,
    )
  })

  test('nothing and less than nothing are no amounts', () => {
    fc.assert(
      fc.property(wholes, measures, things, (value, measure, thing) => {
        for (const phrase of [`-${value} ${measure}s of ${thing}`, `minus ${value} ${measure}s of ${thing}`, `0 ${measure}s of ${thing}`])
          expect(() => convert(phrase, { year: 1700 }), phrase).toThrow(/number above zero/)
      }),
      runs,
    )
  })
})

describe('compounds', () => {
  // Sixteen ounces to the pound, two pints to the quart, four quarts and two pottles to the gallon, four gills to the pint.
  const pairs = fc.constantFrom(
    ['pound', 'ounce', 16],
    ['quart', 'pint', 2],
    ['gallon', 'quart', 4],
    ['gallon', 'pottle', 2],
    ['pottle', 'pint', 4],
    ['pint', 'gill', 4],
    ['stone', 'pound', 14],
  ) as fc.Arbitrary<[string, string, number]>

  test('add the smaller measure in the larger', () => {
    fc.assert(
      fc.property(pairs, wholes, fc.integer({ min: 1, max: 15 }), ([large, small, ratio], a, b) => {
        fc.pre(large !== 'stone')
        for (const joint of [' and ', ' ', ' & ']) {
          const phrase = `${a} ${large}s${joint}${b} ${small}s of milk`
          const { amount, measure, thing } = readPhrase(phrase)
          expect({ measure, thing }, phrase).toEqual({ measure: large, thing: 'milk' })
          expect(amount!.low, phrase).toBeCloseTo(a + b / ratio, 12)
        }
      }),
      runs,
    )
  })

  test('take off what is wanting', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 15 }), wholes, (ounces, pounds) => {
        for (const words of ['wanting', 'lacking', 'less', 'all but'])
          expect(amountOf(`${pounds} pounds ${words} ${ounces} ounces of sugar`).low).toBeCloseTo(pounds - ounces / 16, 12)
      }),
      runs,
    )
  })
})

describe('eggs', () => {
  const names = fc.constantFrom(
    ...birds.flatMap(({ id, names }) => names.filter((name) => !/^(?:fresh|new)/.test(name)).map((name) => ({ id, name }))),
  )

  test('as many whites stay out as are left out, and no more than there are', () => {
    fc.assert(
      fc.property(names, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), ({ id, name }, count, out) => {
        for (const clause of [`leaving out ${out} of the whites`, `${out} of the whites left out`, `without ${out} whites`]) {
          const phrase = `${count} ${name}s, ${clause}`
          const { eggs, thing, contradiction } = readPhrase(phrase)
          expect(thing, phrase).toBe(id === 'hen' ? 'egg' : `${id.replaceAll('-', ' ')} egg`)
          if (out > count) expect(contradiction, phrase).toContain('left out')
          else expect(eggs, phrase).toEqual({ whole: count - out, yolks: out, whites: 0 })
        }
      }),
      runs,
    )
  })

  test('weigh in step with their number, whatever was asked before', () => {
    fc.assert(
      fc.property(names, fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), ({ name }, one, other) => {
        const grams = (count: number) => convert(`${count} ${name}s`, { year: 1750 }).value.best
        expect(grams(one) / grams(other)).toBeCloseTo(one / other, 3)
      }),
      runs,
    )
  })
})

describe('hands', () => {
  const phrases = fc.constantFrom(
    'a pottle of cream',
    'six spoonfuls of rose water',
    'three quarters of a pound of sweet butter',
    'the yolks of seven eggs',
    'ten eggs, leaving out four of the whites',
    'two ounces of cloves and mace',
    'as much mace as will lie on a sixpence',
    'a very slack oven',
    'the weight of six eggs in fine sugar',
    'half a hundred of walnuts',
  )
  /** What printers and scribes did to letters without meaning anything by it. */
  const habits: Readonly<Record<string, (text: string) => string>> = {
    'long s': (text) => text.replace(/s(?=[a-z])/g, 'ſ'),
    capitals: (text) => text.toUpperCase(),
    'a capital to each noun': (text) => text.replace(/\b[a-z]/g, (letter) => letter.toUpperCase()),
    'two vs for a w': (text) => text.replaceAll('w', 'vv'),
    'u within and v before': (text) => text.replace(/\Bv/g, 'u').replace(/\bu/g, 'v'),
    'lines that end anywhere': (text) => text.replaceAll(' ', '\n'),
    'spaces to spare': (text) => ` ${text.replaceAll(' ', '  ')} `,
    'curled apostrophes': (text) => text.replaceAll("'", '’'),
  }

  test.each(Object.entries(habits))('%s', (_, habit) => {
    fc.assert(
      fc.property(phrases, (phrase) => {
        const { kind, amount, measure, thing, eggs } = readPhrase(phrase)
        expect(readPhrase(habit(phrase)), habit(phrase)).toMatchObject({ kind, amount, measure, thing, eggs })
      }),
    )
  })
})

describe('standards and shifts', () => {
  const standards = fc.constantFrom('wine', 'ale', 'beer', 'corn', 'Winchester', 'Imperial', 'Scots', 'English', 'Irish')

  test('a standard is read wherever it stands', () => {
    fc.assert(
      fc.property(standards, wholes, things, (standard, count, thing) => {
        for (const phrase of [
          `${count} ${standard} pints of ${thing}`,
          `${count} pints of ${thing}, ${standard} measure`,
          `${count} pints of ${standard} measure of ${thing}`,
          `${count} pints, ${standard} measure, of ${thing}`.replace(', of', ' of'),
          `${count} pints of ${thing} by ${standard} measure`,
          `${count} pints (${standard} measure) of ${thing}`,
          `${count} pints of ${thing} (${standard} measure)`,
        ])
          expect(readPhrase(phrase), phrase).toMatchObject({
            amount: { low: count, high: count },
            measure: 'pint',
            thing: readPhrase(`a pint of ${thing}`).thing,
            standard: standard.toLowerCase(),
          })
      }),
      runs,
    )
  })

  test('a word that shifts the amount leaves the amount alone', () => {
    const shifts = fc.constantFrom(
      ['about', 'about'],
      ['better than', 'good'],
      ['rather more than', 'good'],
      ['not less than', 'good'],
      ['at least', 'good'],
      ['nearly', 'scant'],
      ['not quite', 'scant'],
      ['not above', 'scant'],
      ['scarce', 'scant'],
    ) as fc.Arbitrary<[string, string]>
    fc.assert(
      fc.property(shifts, wholes, things, ([words, qualifier], count, thing) => {
        expect(readPhrase(`${words} ${count} pounds of ${thing}`), words).toMatchObject({
          amount: { low: count, high: count },
          measure: 'pound',
          qualifier,
        })
      }),
      runs,
    )
  })
})

describe('likenings', () => {
  const multiples = fc.constantFrom(['', 1], ['half ', 0.5], ['twice ', 2], ['three times ', 3], ['a third part ', 1 / 3]) as fc.Arbitrary<
    [string, number]
  >

  test('come out on a sheet as so many times what they point at', () => {
    fc.assert(
      fc.property(multiples, wholes, ([words, times], count) => {
        const { lines } = workSheet(`Take ${count} ounces of butter, and ${words}as much sugar.`, { year: 1750 })
        expect(lines[1]!.amount!.low).toBeCloseTo(count * times, 9)
        expect(lines[1]!.measure).toBe('ounce')
      }),
      { numRuns: 60 },
    )
  })
})

describe('heats', () => {
  test('every height of sugar is found behind boiling sugar, with its place', () => {
    for (const { words } of sugarHeights.flatMap(({ names }) => names)) {
      const text = `Clarify a pound of sugar and boil it to a ${words} height; then put in your flowers.`
      const [one, ...rest] = readReceipt(text).warmths
      expect(rest, text).toEqual([])
      expect(one, text).toMatchObject({ of: 'sugar' })
      expect(text.slice(one!.start, one!.end)).toBe(one!.phrase)
      expect(convert(`boil it to a ${words} height`, { year: 1750 }).value.quantity, words).toBe('temperature')
    }
  })

  test('every warmth of a liquid is a temperature', () => {
    for (const { words } of liquidHeats.flatMap(({ names }) => names)) {
      const { kind, heatOf } = readPhrase(words)
      // Some name how long a pot boils as well as how hot.
      if (kind !== 'time' && heatOf !== undefined) expect(convert(words, { year: 1750 }).value.quantity, words).toBe('temperature')
      // *Warm* alone may be an oven.
      if (/.warm|warm.|boiling|scald|blood/.test(words)) expect(heatOf, words).toBe('liquid')
    }
  })

  test('every name of a heat means in a conversion what it means on the scale of ovens', () => {
    for (const { words } of heats.flatMap(({ names }) => names)) {
      const phrase = /heat|fire|oven/.test(words) ? words : `a ${words} oven`
      const reading = readPhrase(phrase)
      expect(reading.kind, phrase).toBe('heat')
      expect(convert(phrase, { year: 1750 }).value.best, phrase).toBeCloseTo(findHeat(phrase, { year: 1750 }).value.best, 0)
    }
  })
})

describe('a receipt', () => {
  const measured = fc.tuple(wholes, measures, things).map(([count, measure, thing]) => `${count} ${measure}s of ${thing}`)
  const others = fc.constantFrom(
    'four eggs',
    'ten eggs, leaving out four of the whites',
    'a penny white loaf',
    'three blades of mace',
    'butter the size of a walnut',
    'as much mace as will lie on a sixpence',
    'six large apples',
    'a hundred of walnuts',
    'half an ounce each of cloves and mace',
    'a pint of milk, wine measure',
    'a rounded spoonful of brown sugar',
  )
  const receipts = fc.array(fc.oneof(measured, others), { minLength: 1, maxLength: 8 })

  test('says of each of its phrases what the phrase says alone', () => {
    fc.assert(
      fc.property(receipts, (phrases) => {
        const found = readReceipt(`Take ${phrases.join('; then add ')}.`).measures
        expect(found.map(({ phrase }) => phrase)).toEqual(phrases)
        for (const [i, phrase] of phrases.entries()) {
          const { amount, measure, thing, qualifier, eggs } = readPhrase(phrase)
          expect(found[i], phrase).toMatchObject({ amount, measure, thing, qualifier, eggs })
        }
      }),
      runs,
    )
  })

  test('comes to the same figures line by line as its phrases one by one', () => {
    fc.assert(
      fc.property(receipts, (phrases) => {
        const { lines } = workSheet(`Take ${phrases.join('; then add ')}.`, { year: 1790 })
        for (const { phrase, thing, value } of lines) {
          if (/ each of /.test(phrase)) continue
          const alone = convert(phrase, { year: 1790 }).value
          expect(value, `${phrase}, ${thing}`).toMatchObject({ quantity: alone.quantity })
          expect(value!.best / alone.best, phrase).toBeCloseTo(1, 3)
        }
      }),
      { numRuns: 60 },
    )
  })

  test('is kept to the last character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }), (text) => {
        fc.pre(text.trim() !== '')
        expect(workSheet(text, { year: 1790 }).text).toBe(text)
      }),
      { numRuns: 60 },
    )
  })
})

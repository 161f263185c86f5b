/**
 * Text conversions a second through the library, beside general-purpose libraries that parse text and convert one unit.
 *
 * Ours reads period words, weighs the senses, and returns bands, steps and sources; theirs multiply by one factor. The phrases are some
 * thousands, all different in words, amount, thing, year and place.
 */
import { convert } from '@pottle/core'
import Qty from 'js-quantities'
import { evaluate, unit } from 'mathjs'
import { compare, perSecond } from './measure.mjs'

const measures = [
  'pound',
  'pounds',
  'ounces',
  'pynte',
  'pints',
  'quartes',
  'pottle',
  'gallons',
  'gill',
  'peck',
  'bushel',
  'lb.',
  'oz.',
  'drachms',
]
const things = ['cream', 'mylke', 'flour', 'suger', 'butter', 'ale', 'sack', 'almonds', 'currants', 'honey', 'vinegar', 'mace']
const amounts = ['a', 'half a', 'two', 'iij', '3 1/2', 'a dozen', 'twelve', '¾', 'two or three', '5', 'three quarters of a', 'xij']
const places = ['england', 'london', 'scotland', 'america']

/** Every combination is different; the year and place run through them. */
const phrases = amounts.flatMap((amount, i) =>
  measures.flatMap((measure, j) =>
    things.map((thing, k) => ({
      phrase: `${amount} ${measure} of ${thing}`,
      options: { year: 1600 + ((i * 37 + j * 11 + k * 5) % 28) * 10, place: places[(i + j + k) % places.length] },
    })),
  ),
)

const modern = phrases.map((_, i) => `${(i % 97) / 4 + 1} ${['lb', 'oz', 'gallon', 'pint'][i % 4]}`)

function answerable() {
  return phrases.filter(({ phrase, options }) => {
    try {
      convert(phrase, options)
      return true
    } catch {
      return false
    }
  })
}

export async function run() {
  const asked = answerable()
  console.log(`convert: ${asked.length} of ${phrases.length} phrases have an answer, all different`)
  let sink = 0
  const rates = compare({
    'Pottle: words to band, senses, steps and sources': () => {
      for (const { phrase, options } of asked) {
        const { value, senses } = convert(phrase, options)
        sink += value.best + senses.length
      }
      return asked.length
    },
    'mathjs: unit(text).toNumber()': () => {
      for (const [i, text] of modern.entries()) sink += unit(text).toNumber(i % 4 < 2 ? 'g' : 'cm^3')
      return modern.length
    },
    'js-quantities: Qty(text).to()': () => {
      for (const [i, text] of modern.entries()) sink += Qty(text).to(i % 4 < 2 ? 'g' : 'ml').scalar
      return modern.length
    },
    'mathjs: evaluate(text)': () => {
      for (const [i, text] of modern.slice(0, 500).entries()) sink += evaluate(`${text} to ${i % 4 < 2 ? 'g' : 'cm^3'}`).toNumber()
      return 500
    },
  })
  const [[ours, mine], ...others] = Object.entries(rates)
  console.log(`  ${perSecond(mine)}  ${ours}`)
  for (const [name, rate] of others) console.log(`  ${perSecond(rate)}  ${name}; ours is ${(mine / rate).toFixed(2)} of it`)
  if (!Number.isFinite(sink)) throw new Error('a conversion gave no number')
}

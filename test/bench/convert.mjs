/**
 * Text conversions a second through the library, beside general-purpose libraries that parse text and convert one unit.
 *
 * Ours reads period words, weighs the senses, and returns bands, steps and sources; theirs multiply by one factor. Ours also remembers the
 * phrases that it read lately, and what it worked out for a measure, thing, year and place. So it is asked in three ways: some thousands of
 * phrases again and again; amounts never asked before, of measures and things known to it; and questions of which it has met nothing. The
 * others are given amounts that they have not met before.
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
const [firstYear, years] = [1600, 300]

/** Every combination is different; the year and place run through them. */
const phrases = amounts.flatMap((amount, i) =>
  measures.flatMap((measure, j) =>
    things.map((thing, k) => ({
      phrase: `${amount} ${measure} of ${thing}`,
      options: { year: firstYear + ((i * 37 + j * 11 + k * 5) % 28) * 10, place: places[(i + j + k) % places.length] },
    })),
  ),
)

let turn = 0

/** One of the phrases with an amount of its own. */
function newAmount() {
  const { options } = phrases[++turn % phrases.length]
  return { phrase: `${(turn % 999_983) + 1} ${measures[turn % measures.length]} of ${things[(turn >> 2) % things.length]}`, options }
}

/** A measure, thing, year and place that were not asked for together before: a stride without common factors meets all of them once. */
function newQuestion() {
  let rest = (++turn * 7919) % (measures.length * things.length * places.length * years)
  const next = (count) => {
    const digit = rest % count
    rest = (rest - digit) / count
    return digit
  }
  const options = { year: firstYear + next(years), place: places[next(places.length)] }
  return { phrase: `${(turn % 999_983) + 1} ${measures[next(measures.length)]} of ${things[next(things.length)]}`, options }
}

/** An amount that the others have not met before. */
const modern = () => `${++turn / 4} ${['lb', 'oz', 'gallon', 'pint'][turn % 4]}`

const isAnswered = ({ phrase, options }) => {
  try {
    convert(phrase, options)
    return true
  } catch {
    return false
  }
}

export async function run() {
  const asked = phrases.filter(isAnswered)
  console.log(`convert: ${asked.length} of ${phrases.length} phrases have an answer, all different`)
  let sink = 0
  const ask = ({ phrase, options }) => {
    const { value, senses } = convert(phrase, options)
    sink += value.best + senses.length
  }
  const times = (count, work) => () => {
    for (let i = 0; i < count; i++) work()
    return count
  }
  const rates = compare({
    'Pottle, phrases asked before': () => {
      for (const one of asked) ask(one)
      return asked.length
    },
    'Pottle, new amounts': times(1000, () => ask(newAmount())),
    'Pottle, new questions': times(200, () => ask(newQuestion())),
    'js-quantities: Qty(text).to()': times(1000, () => {
      sink += Qty(modern()).to(turn % 4 < 2 ? 'g' : 'ml').scalar
    }),
    'mathjs: unit(text).toNumber()': times(1000, () => {
      sink += unit(modern()).toNumber(turn % 4 < 2 ? 'g' : 'cm^3')
    }),
    'mathjs: evaluate(text)': times(200, () => {
      sink += evaluate(`${modern()} to ${turn % 4 < 2 ? 'g' : 'cm^3'}`).toNumber()
    }),
  })
  const yard = rates['js-quantities: Qty(text).to()']
  for (const [name, rate] of Object.entries(rates))
    console.log(`  ${perSecond(rate)}  ${name}: ${(rate / yard).toFixed(2)} of js-quantities`)
  if (!Number.isFinite(sink)) throw new Error('a conversion gave no number')
}

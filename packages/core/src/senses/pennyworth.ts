/** *A pennyworth of saffron*: what a penny bought, where a price of the time is known; otherwise a plain word that it can't be known. */

import { product, spread, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer, type PottleError } from '../error.js'
import type { Reading } from '../reading/index.js'
import { type CoinRow, coins, type PennyworthRow, pennyworths } from '../tables/index.js'
import { byKey, keyOf } from './name.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, stepFor, thingOf, type Weighed, weighSpells, yearsSaid } from './spell.js'

const index = byKey(coins)

/** The coin whose worth is meant: a groat of *groatsworth*. */
function coinOf({ measure }: Reading): CoinRow | undefined {
  const [, name] = /^(.{3,20}?)s?worth$/.exec(keyOf(measure ?? '')) ?? []
  return name === undefined ? undefined : index().get(name)
}

function unpriced(coin: CoinRow, { reading }: Question, thing: readonly string[]): PottleError {
  if (!reading.thing) return noAnswer('thing', `a ${coin.label}'s worth of what? Name the thing, for its price decides how much it is`)
  const priced = pennyworths.filter(({ things }) => things.some((name) => thing.includes(name)))
  const why = `how much ${reading.thing} a ${coin.label} bought hung on the price of the day`
  const instead = `it can't be known from them, so name a weight or a measure instead`
  if (priced.length === 0) return noAnswer('thing', `${why}, and these tables have no price of it: ${instead}`)
  const known = yearsSaid(priced)
  return noAnswer('year', `${why}, and these tables have its price in England from ${known} alone: outside of that ${instead}`)
}

function senseOf({ row, weight }: Weighed<PennyworthRow>, coin: CoinRow, pence: number): Sense {
  const quantity = row.quantity ?? 'mass'
  const worth: Step = {
    text: `a ${coin.label} in pence`,
    factor: String(pence),
    grade: 'practice',
    checked: 'none',
    sources: [{ id: 'common-practice' }],
  }
  return {
    id: `pennyworth.${row.id}`,
    label: row.label,
    likelihood: weight,
    quantity,
    value: product(pence, unknown(`penny:${row.id}`, spread(row))),
    steps: [stepFor(row, row, quantity), ...(pence === 1 ? [] : [worth])],
  }
}

/**
 * What a coin bought of a thing: g, ml or a count, by prices of the time.
 *
 * @throws PottleError `no-answer` where no price is known, saying why
 * @example convert('a pennyworth of saffron', { year: 1532 }).value.best   // 2.362
 */
export const pennyworth: SenseKind = {
  name: 'pennyworth',
  answers: ({ reading }) => coinOf(reading) !== undefined,
  senses: (question) => {
    const coin = coinOf(question.reading)!
    const thing = thingOf(question)
    const rows = coin.pence === undefined ? [] : weighSpells(pennyworths, question.setting, thing)
    if (rows.length === 0) throw unpriced(coin, question, thing)
    return insisted(
      rows.map((row) => senseOf(row, coin, coin.pence!)),
      question,
    )
  },
}

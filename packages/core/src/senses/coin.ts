/**
 * Coins as measures: as much as will lie on one, and its thickness, breadth and weight.
 *
 * A heap of powder is a cone on the disc, V = (π/3) r³ tan α: r the radius of the coin, α the angle of repose of the powder. The low end is a
 * layer one millimetre deep: a careful hand does not build the cone. Mean thickness is mass / (density × π r²); the rim stands above it.
 */

import { product, spread, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer, type PottleError } from '../error.js'
import type { Reading } from '../reading/index.js'
import { type CoinIssueRow, type CoinRow, coins, findGood, holds, type Quantity, type Spread } from '../tables/index.js'
import { constant, heapOn, thicknessOf } from './coin-size.js'
import { byKey, keyOf } from './name.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, sayFactor, stepFor, tidy, type Weighed, weighSpells, yearsSaid } from './spell.js'

const index = byKey(coins)

/** What is taken of the coin. */
type Use = 'heap' | 'thickness' | 'breadth' | 'weight'

const uses: readonly (readonly [Use, RegExp])[] = [
  [
    'heap',
    /^(?:as much|so much|what|that) as (?:will|would|can|may|doth|does) (?:lie|lye|lay|stand|heap|go|be taken up) (?:up)?on (?:a |an |the )?/,
  ],
  ['thickness', /^(?:the )?(?:thickness|thick) of (?:a |an |the )?/],
  ['breadth', /^(?:the )?(?:breadth|width|bigness|size|compass) of (?:a |an |the )?/],
  ['weight', /^(?:the )?weight of (?:a |an |the )?/],
]

interface Asked {
  readonly coin: CoinRow
  readonly use: Use
}

function askedOf({ kind, measure }: Reading): Asked | undefined {
  if (!measure) return undefined
  const words = measure.toLowerCase()
  for (const [use, pattern] of uses) {
    const name = words.replace(pattern, '')
    const coin = name === words ? undefined : index().get(keyOf(name))
    if (coin) return { coin, use }
  }
  const coin = kind === 'length' ? index().get(keyOf(words)) : undefined
  return coin && { coin, use: 'thickness' }
}

/** What a use comes to: its band, its quantity and the steps to it. */
interface Reckoning {
  readonly quantity: Quantity
  readonly band: Spread
  readonly steps: readonly Step[]
  /** The powder that the heap is of. */
  readonly of?: string
}

function reckon(issue: CoinIssueRow, use: Use, thing: string | null): Reckoning {
  const size: Step = { ...stepFor(issue, issue.diameter, 'length'), checked: issue.sized ?? issue.checked }
  if (use === 'weight') return { quantity: 'mass', band: issue.mass, steps: [stepFor(issue, issue.mass, 'mass')] }
  if (use === 'breadth') return { quantity: 'length', band: issue.diameter, steps: [size] }
  if (use === 'thickness') {
    const band = thicknessOf(issue)
    const factor = `${sayFactor(issue.mass, ' g')} of ${issue.metal} on ${issue.diameter.best} mm: ${sayFactor(tidy(band), ' mm')}`
    return { quantity: 'length', band, steps: [{ ...size, factor }, stepFor(constant('rim'), constant('rim'), 'factor')] }
  }
  const good = thing ? findGood(thing) : undefined
  const angle = good?.repose ? { ...good.repose, id: good.id, label: `angle of repose of ${good.label}` } : constant('repose')
  const band = heapOn(issue, angle)
  const cone = `${sayFactor(angle, ' degrees')}: a cone of ${tidy(band).best} ml, from a layer of ${tidy(band).low} to a cone of ${tidy(band).high}`
  return { quantity: 'volume', band, steps: [size, { ...stepFor(angle, angle, 'factor'), factor: cone }], of: angle.id }
}

function senseOf({ row: issue, weight }: Weighed<CoinIssueRow>, use: Use, thing: string | null): Sense {
  const { quantity, band, steps, of } = reckon(issue, use, thing)
  const name = [use, issue.id, ...(of ? [of] : [])].join(':')
  return {
    id: issue.id,
    label: `${use === 'heap' ? 'as much as lies on' : `${use} of`} ${issue.label}`,
    likelihood: weight,
    quantity,
    value: product(1, unknown(name, spread(band))),
    steps,
    choice: `coin:${issue.id.split('.')[0]}`,
    standard: issue.id,
  }
}

/** The coin was not struck yet, or no longer current, or belongs to another country: the error names what was in people's hands. */
function notCurrent({ label, issues }: CoinRow, { setting }: Question): PottleError {
  const { year } = setting.moments[Math.floor(setting.moments.length / 2)]!
  const current = coins.filter((coin) => coin.issues.some((issue) => holds(issue, year, setting.places))).map((coin) => coin.label)
  const places = [...new Set(issues.map(({ place }) => place))]
  const known = places.map((place) => `${yearsSaid(issues.filter((issue) => issue.place === place))}${place ? ` in ${place}` : ''}`)
  return noAnswer('year', `no ${label} was current in ${year}; it is known from ${known.join(', ')}. Current then: ${current.join(', ')}`)
}

/**
 * As much as will lie on a coin (ml), its thickness and breadth (mm) and its weight (g).
 *
 * @throws PottleError `no-answer` when no such coin was current in the setting, naming what was
 * @example convert('as much cayenne as will lie on a sixpence', { year: 1830, to: 'ml' }).value.best   // 0.694392
 */
export const coin: SenseKind = {
  name: 'coin',
  answers: ({ reading }) => askedOf(reading) !== undefined,
  senses: (question) => {
    const asked = askedOf(question.reading)!
    const issues = weighSpells(asked.coin.issues, question.setting)
    if (issues.length === 0) throw notCurrent(asked.coin, question)
    return insisted(
      issues.map((issue) => senseOf(issue, asked.use, question.reading.thing)),
      question,
    )
  },
}

/**
 * *The bigness of a walnut*, *a lump as big as a nutmeg*: a thing compared with another, as a volume.
 *
 * V = (π/6) L W² / 1000: an ellipsoid as long as the thing and as broad, L and W in mm, V in ml. A long walnut is a broad one too, so its
 * least and greatest volumes come of both least and both greatest.
 */

import { type Expression, power, product, spread, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer } from '../error.js'
import type { Reading } from '../reading/index.js'
import { type ComparisonForm, type ComparisonRow, comparisons, type Spread } from '../tables/index.js'
import { eggInShell, eggOfBird, partsOf } from './egg-weight.js'
import { byKey, keyOf } from './name.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, notThen, sayFactor, stepFor, thingOf, tidy, type Weighed, weighSpells } from './spell.js'

const index = byKey(comparisons)

/** Words that lead from the measure to the thing it is compared with. */
const lead = /^(?:(?:the )?(?:bigness|size|greatness|quantity|bulk|shape) of|as (?:big|large|great|much) as) (?:a |an |the )?/

/** The thing that a measure compares with: `walnut` of *bigness of a walnut*; null for other measures. */
function comparedWith({ kind, measure }: Reading): string | null {
  if (!measure || (kind !== 'comparison' && kind !== 'measured')) return null
  const object = measure.toLowerCase().replace(lead, '')
  return object === measure.toLowerCase() && kind !== 'comparison' ? null : object
}

function rowFor({ reading }: Question): ComparisonRow | undefined {
  const object = comparedWith(reading)
  return object === null ? undefined : index().get(keyOf(object))
}

const bigness = 'bigness of '

/** A reading that compares with something of which the tables have no size: *as big as a helmet*. */
const isOfNoRow = ({ reading: { measure } }: Question): boolean => measure?.startsWith(bigness) ?? false

const withoutLead = ({ reading: { measure } }: Question): string => measure!.slice(bigness.length)

/**
 * The volume of an ellipsoid of revolution in ml, from its length and breadth in mm.
 *
 * @example ellipsoid(38, 32.7).toFixed(1)   // '21.3'
 */
export function ellipsoid(length: number, width: number): number {
  return ((Math.PI / 6) * length * width ** 2) / 1000
}

function volumeOf(length: Spread, width: Spread): Spread {
  return { low: ellipsoid(length.low, width.low), best: ellipsoid(length.best, width.best), high: ellipsoid(length.high, width.high) }
}

const base = (form: ComparisonForm, likelihood: number) => ({ id: `as.${form.id}`, label: form.label, likelihood })

function solid(form: ComparisonForm, weight: number): Sense {
  const volume = volumeOf(form.length!, form.width!)
  const rounded = tidy(volume)
  const formula = `(π/6) × ${sayFactor(form.length!, ' mm')} × ${sayFactor(form.width!, ' mm')}² = ${sayFactor(rounded, ' ml')}`
  const step: Step = { ...stepFor(form, rounded, 'volume'), factor: formula }
  return { ...base(form, weight), quantity: 'volume', value: product(1, unknown(`bigness:${form.id}`, spread(volume))), steps: [step] }
}

function byWeight(form: ComparisonForm, weight: number): Sense {
  const value = product(1, unknown(`bigness:${form.id}`, spread(form.mass!)))
  return { ...base(form, weight), quantity: 'mass', value, steps: [stepFor(form, form.mass!, 'mass')] }
}

/** As large as an egg of the time, which is its weight in the shell by its density. */
function likeEgg(form: ComparisonForm, weight: number, { setting }: Question): readonly Sense[] {
  const bird = eggOfBird(form.bird!)
  const { density } = partsOf(bird)
  const perGram = power(unknown(`egg-density:${partsOf(bird).id}`, spread(density)), -1)
  return weighSpells(bird.spells, setting).map(({ row, weight: share }) => {
    const value: Expression = product(1, eggInShell(bird, row), perGram)
    const steps = [stepFor(row, row, 'mass'), { ...stepFor(form, density, 'factor'), factor: `divided by ${sayFactor(density, ' g/ml')}` }]
    return {
      ...base(form, weight * share),
      id: `as.${form.id}.${row.id}`,
      label: `${form.label}: ${row.label}`,
      quantity: 'volume',
      value,
      steps,
    }
  })
}

function sensesOf({ row: form, weight }: Weighed<ComparisonForm>, question: Question): readonly Sense[] {
  if (form.bird) return likeEgg(form, weight, question)
  return [form.mass ? byWeight(form, weight) : solid(form, weight)]
}

/**
 * Things as big as another thing: volume in ml; mass in g where a handbook says what such a piece of that thing weighs.
 *
 * @example convert('butter the size of a walnut', { year: 1850, to: 'ml' }).value.best   // 21.27…
 */
export const comparison: SenseKind = {
  name: 'comparison',
  answers: (question) => rowFor(question) !== undefined || isOfNoRow(question),
  senses: (question) => {
    const row = rowFor(question)
    if (row === undefined)
      throw noAnswer('phrase', `the tables do not say how big ${withoutLead(question)} is; give a weight or a measure instead`)
    const forms = weighSpells(row.forms, question.setting, thingOf(question))
    if (forms.length === 0) throw notThen(`the bigness of ${row.label}`, row.forms, question.setting)
    const senses = forms.flatMap((form) => sensesOf(form, question))
    return insisted(
      [...senses].sort((a, b) => b.likelihood - a.likelihood),
      question,
    )
  },
}

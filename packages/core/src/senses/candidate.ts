/**
 * Which standards a measure may have gone by, and what weighs for each.
 *
 * For each moment of the setting, every sense row that holds is weighed by how the standards were used for that thing then and there
 * (`usage`); weights are averaged over the moments.
 */
import { noAnswer } from '../error.js'
import { findStandard, holds, type MeasureRow, type SenseRow, type StandardRow, standardsOf, type UsageRow } from '../tables/index.js'
import { isCalled, lastPart } from './id.js'
import type { Question } from './sense.js'
import { thingOf } from './spell.js'
import { type Use, usageFor } from './usage.js'
import { isWordFor } from './worded.js'

/** A sense row tied to one standard, with what weighs for it. */
export interface Candidate {
  readonly id: string
  readonly row: SenseRow
  readonly standard: StandardRow
  readonly use?: UsageRow
  readonly weight: number
  /** The largest share that a single moment gave it. */
  readonly most?: number
}

/** A meaning less likely than this is not worth a cook's attention. Judgement. */
const negligible = 0.005

/** The row itself where it names a standard; where it names a family, once for each standard of it. */
export function standardsUnder(measure: MeasureRow, row: SenseRow): readonly { id: string; standard: StandardRow }[] {
  const one = findStandard(row.of)
  if (one) return [{ id: row.id, standard: one }]
  const possible = standardsOf(row.of).filter(({ id }) => !row.except?.includes(id))
  return possible.map((standard) => ({ id: `${measure.id.replaceAll(' ', '-')}.${lastPart(standard.id)}`, standard }))
}

function suits(row: SenseRow, thing: readonly string[]): boolean {
  return !row.things || thing.length === 0 || row.things.some((name) => thing.includes(name))
}

/** A sense confined to some things that says no more than the general one does. */
function repeats({ row }: Candidate, all: readonly Candidate[]): boolean {
  return row.things !== undefined && all.some(({ row: other }) => !other.things && other.of === row.of && other.ratio === row.ratio)
}

/** Every sense of a measure at one moment, unweighted rows included with weight 0. */
function candidatesAt(measure: MeasureRow, use: Use): Candidate[] {
  const found: Candidate[] = []
  for (const row of measure.senses) {
    if (!holds(row, use.year, use.places) || !suits(row, use.thing)) continue
    for (const { id, standard } of standardsUnder(measure, row)) {
      if (!holds(standard, use.year, use.places)) continue
      const ruling = usageFor(standard.family, use)
      const share = ruling ? (ruling.weights[standard.id] ?? 0) : 1
      found.push({ id, row, standard, weight: share * (row.likelihood ?? 1), ...(ruling ? { use: ruling } : {}) })
    }
  }
  // A sense confined to the thing that was named (a firkin of butter) speaks before those of things in general.
  const narrow = use.thing.length > 0 ? found.filter(({ row }) => row.things) : []
  return narrow.length > 0 ? narrow : found.filter((one) => !repeats(one, found))
}

/** Where usage rules out all that is left, the rows' own likelihoods decide. */
function weightsOf(candidates: readonly Candidate[]): readonly Candidate[] {
  if (candidates.some(({ weight }) => weight > 0)) return candidates
  return candidates.map((one) => ({ ...one, weight: one.row.likelihood ?? 1 }))
}

/** Only the candidates that the words themselves name (*a wine pint*), where they name any that held then and there. */
function asWorded(candidates: readonly Candidate[], word: string | undefined): readonly Candidate[] {
  const meant = word ? candidates.filter(({ standard }) => isWordFor(word, standard)) : []
  return meant.length > 0 ? meant : candidates
}

/** The candidates of a measure in a setting, with weights that add up to 1. */
export function weighCandidates(question: Question, measure: MeasureRow): Candidate[] {
  const { setting, reading } = question
  const thing = thingOf(question)
  const total = new Map<string, Candidate>()
  for (const { year, weight } of setting.moments) {
    const at = weightsOf(asWorded(candidatesAt(measure, { measure: measure.id, thing, year, places: setting.places }), reading.standard))
    const sum = at.reduce((all, one) => all + one.weight, 0)
    if (sum === 0) continue
    for (const one of at) {
      const before = total.get(one.id)
      const share = (weight * one.weight) / sum
      // The reason told is that of the years which weigh most.
      const telling = before && (before.most ?? 0) >= share ? before : { ...one, most: share }
      total.set(one.id, { ...telling, weight: (before?.weight ?? 0) + share })
    }
  }
  const all = [...total.values()].reduce((sum, one) => sum + one.weight, 0)
  return [...total.values()].map((one) => ({ ...one, weight: one.weight / all })).filter(({ weight }) => weight >= negligible)
}

/**
 * What a caller's wish points at, whatever the date: by sense, by standard, or by the last part of either's name.
 *
 * @throws PottleError `no-answer` with the standards that the measure can go by
 */
export function candidateCalled(measure: MeasureRow, wish: string): Candidate {
  const every = measure.senses.flatMap((row) => standardsUnder(measure, row).map(({ id, standard }) => ({ id, row, standard, weight: 1 })))
  const meant = every.find(({ id, standard }) => isCalled(id, wish) || isCalled(standard.id, wish))
  if (meant) return meant
  const known = [...new Set(every.map(({ standard }) => standard.id))].join(', ')
  throw noAnswer('standard', `the ${measure.label} has no sense by "${wish.slice(0, 40)}"; it can go by ${known}`)
}

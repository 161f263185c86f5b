/**
 * Senses of measures that are a part or a multiple of a standard: a pottle is half a gallon, but of which gallon?
 *
 * For each moment of the setting, every sense row that holds is weighed by how the standards were used for that thing then and there
 * (`usage`); weights are averaged over the moments.
 */

import { type Expression, product, spread, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer } from '../error.js'
import type { MeasureKind, MeasureRow, SenseRow, StandardRow, ToleranceRow, UsageRow } from '../tables/index.js'
import { baseUnits, exactRatio, exactValue, findMeasure, findStandard, holds, standardsOf, tolerances } from '../tables/index.js'
import { isCalled, lastPart } from './id.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { thingOf } from './spell.js'
import { type Use, usageFor } from './usage.js'

/** A sense row tied to one standard, with what weighs for it. */
interface Candidate {
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
  return narrow.length > 0 ? narrow : found
}

/** Where usage rules out all that is left, the rows' own likelihoods decide. */
function weightsOf(candidates: readonly Candidate[]): readonly Candidate[] {
  if (candidates.some(({ weight }) => weight > 0)) return candidates
  return candidates.map((one) => ({ ...one, weight: one.row.likelihood ?? 1 }))
}

function weighed(question: Question, measure: MeasureRow): Candidate[] {
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

/** Words in front of a measure that name its standard, by the part of a standard's id that they stand for. Common practice, no source. */
const namedStandards: Readonly<Record<string, RegExp>> = {
  wine: /^gallon\.wine/,
  ale: /^gallon\.ale/,
  beer: /^gallon\.ale/,
  corn: /^gallon\.corn/,
  winchester: /^gallon\.corn/,
  imperial: /^gallon\.imperial/,
  english: /^(?!scots)/,
  scotch: /^scots/,
  scots: /^scots|^pound\.(scots|tron)/,
  irish: /irish$/,
  troy: /^pound\.troy/,
  avoirdupois: /^pound\.avoirdupois/,
  tower: /^pound\.tower/,
  apothecary: /^pound\.apothecaries/,
}

/** Only the candidates that the words themselves name (*a wine pint*), where they name any that held then and there. */
function asWorded(candidates: readonly Candidate[], word: string | undefined): readonly Candidate[] {
  const named = word ? namedStandards[word] : undefined
  const meant = named ? candidates.filter(({ standard }) => named.test(standard.id)) : []
  return meant.length > 0 ? meant : candidates
}

/** The senses that a caller's wish points at, whatever the date: by sense, by standard, or by the last part of either's name. */
function insisted(measure: MeasureRow, wish: string): Candidate[] {
  const every = measure.senses.flatMap((row) => standardsUnder(measure, row).map(({ id, standard }) => ({ id, row, standard, weight: 1 })))
  const meant = every.filter(({ id, standard }) => isCalled(id, wish) || isCalled(standard.id, wish))
  if (meant.length === 0) {
    const known = [...new Set(every.map(({ standard }) => standard.id))].join(', ')
    throw noAnswer('standard', `the ${measure.label} has no sense by "${wish.slice(0, 40)}"; it can go by ${known}`)
  }
  const [first] = meant
  return [first!]
}

const toleranceIndex = new Map<MeasureKind, ToleranceRow[]>()
for (const row of tolerances) toleranceIndex.set(row.kind, [...(toleranceIndex.get(row.kind) ?? []), row])

function toleranceOf(measure: MeasureRow, { setting }: Question): ToleranceRow | undefined {
  const year = setting.moments[Math.floor(setting.moments.length / 2)]!.year
  return toleranceIndex.get(measure.kind)?.find((row) => holds(row, year, setting.places))
}

function definition(standard: StandardRow): Step {
  const { quantity, value } = exactValue(standard.value)
  const inBase = `${value.toSignificantDigits(12).toString()} ${baseUnits[quantity]}`
  const factor = standard.value === inBase ? inBase : `${standard.value} = ${inBase}`
  return { text: standard.label, factor, grade: standard.grade, checked: standard.checked, sources: standard.source }
}

function stepsOf(measure: MeasureRow, { row, standard, use }: Candidate, tolerance: ToleranceRow | undefined): Step[] {
  const steps: Step[] = [
    { text: `one ${measure.label} is ${row.label}`, factor: row.ratio, grade: row.grade, checked: row.checked, sources: row.source },
    definition(standard),
  ]
  if (use)
    steps.push({
      text: use.reason,
      factor: `weight ${use.weights[standard.id] ?? 0}`,
      grade: use.grade,
      checked: use.checked,
      sources: use.source,
    })
  if (tolerance) {
    const { low, high } = tolerance.factor
    steps.push({
      text: tolerance.note ?? 'how far measures in use strayed',
      factor: `${low} to ${high}`,
      grade: tolerance.grade,
      checked: tolerance.checked,
      sources: tolerance.source,
    })
  }
  return steps
}

/** One of the measure in base units: ratio x standard, the standard's own doubt where it was not one figure, and the trade's tolerance. */
function expressionOf({ row, standard }: Candidate, tolerance: ToleranceRow | undefined): Expression {
  const ratio = exactRatio(row.ratio)
  const base = exactValue(standard.value).value
  const unknowns = tolerance ? [unknown(`tolerance:${tolerance.id}:${standard.id}`, spread(tolerance.factor))] : []
  if (!standard.ends) return product(ratio.times(base).toNumber(), ...unknowns)
  const [low, high] = standard.ends.map((end) => exactValue(end).value.toNumber()) as [number, number]
  const definitionDoubt = unknown(`standard:${standard.id}`, spread({ low, best: base.toNumber(), high }))
  return product(ratio.toNumber(), definitionDoubt, ...unknowns)
}

function senseOf(question: Question, measure: MeasureRow, candidate: Candidate): Sense {
  const { id, row, standard } = candidate
  const tolerance = toleranceOf(measure, question)
  const { quantity, value } = exactValue(standard.value)
  return {
    id,
    label: labelOf(row, standard),
    likelihood: candidate.weight,
    quantity,
    value: expressionOf(candidate, tolerance),
    ...(standard.ends ? {} : { exact: exactRatio(row.ratio).times(value).toSignificantDigits(15).toString() }),
    steps: stepsOf(measure, candidate, tolerance),
    choice: standard.family,
    standard: standard.id,
  }
}

/** What a standard is called in a phrase: *wine gallon*, without its cubic inches. */
const shortName = ({ label }: StandardRow): string => label.split(/ of |, /)[0]!

/** *Half a gallon* by the ale gallon is *half an ale gallon*; where the family's name is not in the label, the standard follows it. */
export function labelOf(row: SenseRow, standard: StandardRow): string {
  if (row.of !== standard.family) return row.label
  if (row.ratio === '1') return standard.label
  const name = shortName(standard)
  const word = new RegExp(`\\b(a )?${standard.family}\\b`)
  if (!word.test(row.label)) return `${row.label} (${name})`
  return row.label.replace(word, (_, article) => `${article ? (/^[aeiou]/i.test(name) ? 'an ' : 'a ') : ''}${name}`)
}

/** Whether a measure has a sense, then and there, by the standard that a word names. */
function goesBy(measure: MeasureRow, word: string, { moments, places }: Question['setting']): boolean {
  const meant = namedStandards[word]
  if (!meant) return false
  return moments.some(({ year }) =>
    measure.senses.some(
      (row) =>
        holds(row, year, places) &&
        standardsUnder(measure, row).some(({ standard }) => meant.test(standard.id) && holds(standard, year, places)),
    ),
  )
}

/** *A heaped bushel* is a measure of its own, and so is a Scotch pint out of Scotland. */
function measureMeant({ measure, reading, setting }: Question): MeasureRow {
  const { qualifier, standard } = reading
  const heaped = qualifier === 'heaped' ? findMeasure(`heaped ${measure!.id}`) : undefined
  if (heaped) return heaped
  const named = standard ? findMeasure(`${standard} ${measure!.id}`) : undefined
  return named && !goesBy(measure!, standard!, setting) ? named : measure!
}

/** Senses of one label take their standard's own beside it: there was more than one ale gallon. */
function toldApart(senses: readonly Sense[]): readonly Sense[] {
  const alike = ({ label }: Sense): boolean => senses.filter((other) => other.label === label).length > 1
  return senses.map((sense) => (alike(sense) ? { ...sense, label: `${sense.label} (${findStandard(sense.standard!)!.label})` } : sense))
}

/** A kind whose measures all rest on standards. */
export function kindByStandard(kind: MeasureKind): SenseKind {
  return {
    name: kind,
    answers: ({ measure }) => measure?.kind === kind,
    senses: (question) => {
      const measure = measureMeant(question)
      const candidates = question.standard ? insisted(measure, question.standard) : weighed(question, measure)
      if (candidates.length === 0) throw noAnswer('year', `no ${measure.label} of that kind is known in that year and place`)
      const qualified = measure !== question.measure && question.reading.qualifier === 'heaped'
      const senses = candidates.sort((a, b) => b.weight - a.weight).map((candidate) => senseOf(question, measure, candidate))
      return toldApart(senses).map((sense) => ({ ...sense, ...(qualified ? { qualified } : {}) }))
    },
  }
}

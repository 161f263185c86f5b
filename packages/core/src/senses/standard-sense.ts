/** One sense of a measure by one standard: its value, its label and its steps. */
import { type Expression, product, spread, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import {
  baseUnits,
  exactRatio,
  exactValue,
  findStandard,
  holds,
  type MeasureKind,
  type MeasureRow,
  type SenseRow,
  type StandardRow,
  type ToleranceRow,
  tolerances,
  type UsageRow,
} from '../tables/index.js'
import type { Candidate } from './candidate.js'
import type { Question, Sense } from './sense.js'

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

function toleranceStep({ factor: { low, high }, note, grade, checked, source }: ToleranceRow): Step {
  return { text: note ?? 'how far measures in use strayed', factor: `${low} to ${high}`, grade, checked, sources: source }
}

/** One of the measure in base units: ratio x standard, the standard's own doubt where it was not one figure, and the trade's tolerance. */
function expressionOf(row: SenseRow, standard: StandardRow, tolerance: ToleranceRow | undefined): Expression {
  const ratio = exactRatio(row.ratio)
  const base = exactValue(standard.value).value
  const unknowns = tolerance ? [unknown(`tolerance:${tolerance.id}:${standard.id}`, spread(tolerance.factor))] : []
  if (!standard.ends) return product(ratio.times(base).toNumber(), ...unknowns)
  const [low, high] = standard.ends.map((end) => exactValue(end).value.toNumber()) as [number, number]
  const definitionDoubt = unknown(`standard:${standard.id}`, spread({ low, best: base.toNumber(), high }))
  return product(ratio.toNumber(), definitionDoubt, ...unknowns)
}

/** What a row by a standard comes to, whoever asks. */
interface Grounds extends Pick<Sense, 'label' | 'quantity' | 'value' | 'exact'> {
  readonly steps: readonly [row: Step, standard: Step]
  readonly tolerance: readonly Step[]
}

function work(measure: MeasureRow, row: SenseRow, standard: StandardRow, tolerance: ToleranceRow | undefined): Grounds {
  const { quantity, value } = exactValue(standard.value)
  const { label, ratio, grade, checked, source: sources } = row
  return {
    label: labelOf(row, standard),
    quantity,
    value: expressionOf(row, standard, tolerance),
    ...(standard.ends ? {} : { exact: exactRatio(ratio).times(value).toSignificantDigits(15).toString() }),
    steps: [{ text: `one ${measure.label} is ${label}`, factor: ratio, grade, checked, sources }, definition(standard)],
    tolerance: tolerance ? [toleranceStep(tolerance)] : [],
  }
}

const known = new WeakMap<SenseRow, Map<string, Grounds>>()

/** The same for every question, so that it is worked out once; the tables hold some hundreds of such pairs. */
function groundsOf(measure: MeasureRow, { row, standard }: Candidate, tolerance: ToleranceRow | undefined): Grounds {
  const ofRow = known.get(row) ?? new Map<string, Grounds>()
  known.set(row, ofRow)
  const key = `${standard.id} ${tolerance?.id}`
  const grounds = ofRow.get(key) ?? work(measure, row, standard, tolerance)
  ofRow.set(key, grounds)
  return grounds
}

function useStep({ weights, reason, grade, checked, source }: UsageRow, standard: StandardRow): Step {
  return { text: reason, factor: `weight ${weights[standard.id] ?? 0}`, grade, checked, sources: source }
}

/** The sense that a candidate comes to. */
export function senseBy(question: Question, measure: MeasureRow, candidate: Candidate): Sense {
  const { id, standard, use, weight } = candidate
  const { steps, tolerance, ...grounds } = groundsOf(measure, candidate, toleranceOf(measure, question))
  return {
    id,
    likelihood: weight,
    ...grounds,
    steps: [...steps, ...(use ? [useStep(use, standard)] : []), ...tolerance],
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

/** Senses of one label take their standard's own beside it: there was more than one ale gallon. */
export function toldApart(senses: readonly Sense[]): readonly Sense[] {
  const alike = ({ label }: Sense): boolean => senses.filter((other) => other.label === label).length > 1
  return senses.map((sense) => (alike(sense) ? { ...sense, label: `${sense.label} (${findStandard(sense.standard!)!.label})` } : sense))
}

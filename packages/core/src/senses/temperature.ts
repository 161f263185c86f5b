import { type Expression, product, unknown } from '../bands/index.js'
import { findHeat, type HeatReading, ovenSettings, shapeOf } from '../heat/index.js'
import type { Setting } from '../setting.js'
import type { Question, Sense, SenseKind } from './sense.js'

/** One heat that the words meant in one of the years, and how likely that is. */
interface Option {
  readonly id: string
  readonly label: string
  readonly likelihood: number
  readonly value: Expression
  readonly reading: HeatReading
}

function optionsOf(reading: HeatReading, weight: number): readonly Option[] {
  const { heat, relation, likelihood, value, others } = reading
  const id = relation?.id ?? heat.id
  const first = { id, label: relation?.label ?? `${heat.label} oven`, likelihood, value }
  return [first, ...others.map((other) => ({ ...other, label: `${other.label} oven` }))].map((one) => ({
    id: `heat.${one.id}`,
    label: one.label,
    likelihood: one.likelihood * weight,
    value: product(1, unknown(`heat.${one.id}`, shapeOf(one.value))),
    reading,
  }))
}

/** What the words meant in each of the years, one reading for every meaning that differs. */
function readingsIn(phrase: string, { year, moments }: Setting): readonly Option[] {
  if (year === null) return optionsOf(findHeat(phrase), 1)
  return moments.flatMap((moment) => optionsOf(findHeat(phrase, { year: moment.year }), moment.weight))
}

/** A heat's band differs between years; the year that weighs most speaks for it, and its likelihood is that of all of them. */
function gather(options: readonly Option[]): readonly Option[] {
  const byId = new Map<string, Option & { readonly own: number }>()
  for (const option of options) {
    const known = byId.get(option.id)
    const likelihood = (known?.likelihood ?? 0) + option.likelihood
    byId.set(
      option.id,
      known && known.own >= option.likelihood ? { ...known, likelihood } : { ...option, likelihood, own: option.likelihood },
    )
  }
  return [...byId.values()].sort((a, b) => b.likelihood - a.likelihood || (a.id < b.id ? -1 : 1))
}

/**
 * Oven heats, in degC: *a slack oven*, *as hot as for manchet*, *after the bread is drawn*.
 *
 * @example temperature.name   // 'temperature'
 */
export const temperature: SenseKind = {
  name: 'temperature',
  answers: ({ reading }: Question) => reading.kind === 'heat' && reading.heat !== undefined,
  senses: ({ reading, setting }: Question): readonly Sense[] =>
    gather(readingsIn(reading.heat!, setting)).map(({ id, label, likelihood, value, reading: { steps, unread, notes } }) => ({
      id,
      label,
      likelihood,
      quantity: 'temperature' as const,
      value,
      steps,
      unread,
      remarks: notes,
      whole: true,
    })),
  modern: (_, band) => Object.values(ovenSettings(band)),
}

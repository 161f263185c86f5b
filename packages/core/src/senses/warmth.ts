import { product, unknown } from '../bands/index.js'
import { type LiquidHeat, liquidHeat, type SugarHeight, shapeOf, sugarHeight, thermometerSettings } from '../heat/index.js'
import type { Setting } from '../setting.js'
import type { Question, Sense, SenseKind } from './sense.js'

type Warmth = SugarHeight | LiquidHeat

/** What the words meant in each of the years: *caramel* was a clear sugar before it was a brown one. */
function meantIn({ reading }: Question, { year, moments }: Setting): readonly { readonly warmth: Warmth; readonly weight: number }[] {
  const find = reading.heatOf === 'sugar' ? sugarHeight : liquidHeat
  if (year === null) return [{ warmth: find(reading.heat!), weight: 1 }]
  const weights = new Map<string, { warmth: Warmth; weight: number }>()
  for (const moment of moments) {
    const warmth = find(reading.heat!, moment.year)
    weights.set(warmth.id, { warmth, weight: (weights.get(warmth.id)?.weight ?? 0) + moment.weight })
  }
  return [...weights.values()].sort((a, b) => b.weight - a.weight)
}

function senseOf(warmth: Warmth, weight: number, of: string): Sense {
  const { id, label, value, sources, grade, checked } = warmth
  const notes = 'notes' in warmth ? warmth.notes : warmth.note === null ? [] : [warmth.note]
  return {
    id: `${of}.${id}`,
    label,
    likelihood: weight,
    quantity: 'temperature',
    value: product(1, unknown(`${of}.${id}`, shapeOf(value))),
    steps: [{ text: [label, ...notes].join('. '), factor: `${value.best} degC (${value.low} to ${value.high})`, grade, checked, sources }],
    whole: true,
  }
}

/**
 * The heights of boiled sugar and the warmth of liquids, in degC: *a candy height*, *milk-warm*, *scalding hot*.
 *
 * @example convert('boil it to a candy height', { year: 1672 }).value.quantity   // 'temperature'
 */
export const warmth: SenseKind = {
  name: 'temperature',
  answers: ({ reading }) => reading.kind === 'heat' && reading.heatOf !== undefined,
  senses: (question) => meantIn(question, question.setting).map((one) => senseOf(one.warmth, one.weight, question.reading.heatOf!)),
  modern: (_, band) => thermometerSettings(band),
}

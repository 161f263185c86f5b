import type { AnswerSense } from './answer.js'
import { type Band, scaleBand } from './bands/index.js'
import { inModernUnits, type ModernValue } from './modern/index.js'
import type { CheckedOptions } from './options.js'
import type { Reading } from './reading/index.js'
import { numberOf, type Other, type Resolved, type ResolvedSense } from './resolved.js'
import { baseUnits } from './tables/index.js'

/** All the digits of a sense, where neither it nor the phrase's number leaves a doubt. */
function exactDigits({ sense, exact }: ResolvedSense, scales: boolean, base: number, ratio: number): string | null {
  if (sense.exact === undefined || exact === undefined || (scales && ratio > 1)) return null
  return scales && base !== 1 ? exact.times(base) : sense.exact
}

/** The senses for the phrase's whole amount. */
export function answerSenses({ senses, scales, assessment }: Resolved, reading: Reading): readonly AnswerSense[] {
  const { base, ratio } = numberOf(reading.amount)
  const unit = baseUnits[assessment.quantity]
  return senses.map((resolved) => {
    const { sense, likelihood, band, steps } = resolved
    const { id, label } = sense
    const { low, best, high } = scales ? scaleBand(band, base) : band
    return { id, label, likelihood, unit, low, best, high, exact: exactDigits(resolved, scales, base, ratio), steps }
  })
}

/** Units of the value's own quantity, of the other one where a density gives it, and of the kind's own; only the one asked for where one was. */
export function modernValues({ assessment }: Resolved, checked: CheckedOptions, band: Band, other: Other | null): readonly ModernValue[] {
  const { kind, question, quantity } = assessment
  const all = [
    ...inModernUnits(quantity, band),
    ...(other ? inModernUnits(other.quantity, other.band) : []),
    ...(kind.modern?.(question, band) ?? []),
  ]
  return checked.unit ? all.filter(({ unit }) => unit === checked.unit) : all
}

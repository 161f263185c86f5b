import type { Answer, AnswerSense } from '@pottle/core'

const percent = (likelihood: number): string => `${Math.round(likelihood * 100)}`.padStart(3)

/** Four figures are more than any band here supports. */
const figure = (value: number): string => String(Number(value.toPrecision(4)))

function showSense({ likelihood, label, low, best, high, unit }: AnswerSense): string {
  return `  ${percent(likelihood)} in 100  ${label}: ${figure(best)} ${unit} (${figure(low)} to ${figure(high)})`
}

/** An answer for a terminal: the line of kitchen language, the band, the senses, the steps of the likeliest and the sources. */
export function showAnswer({ phrase, setting, text, value, senses, sources }: Answer): string {
  const { low, best, high, unit, coverage } = value
  return [
    `${phrase}, ${setting.place} ${setting.year ?? '(no year)'}: ${text}`,
    `${figure(best)} ${unit}, ${Math.round(coverage * 100)} in 100 that it lies between ${figure(low)} and ${figure(high)}`,
    'Senses',
    ...senses.map(showSense),
    `Steps of the likeliest`,
    ...senses[0]!.steps.map((step) => `  ${step.text}: ${step.factor} [${step.grade}; ${step.sources.join('; ')}]`),
    'Sources',
    ...sources.map(({ citation }) => `  ${citation}`),
  ].join('\n')
}

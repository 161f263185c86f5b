import type { AnswerStep, AnswerUnit } from './answers.js'
import type { EntryBand, EntrySense, EntryStep } from './entry.js'
import { bind, digitsFor, type Figures, figure, timesIn } from './figures.js'

/** *North England, about 1690*: where and when the words were used, for a reader. */
export function settingText(place: string | undefined, year: number | string | null): string {
  const named = place?.replace(/(^|-)(\w)/g, (_, dash: string, letter: string) => (dash ? ' ' : '') + letter.toUpperCase())
  const dated =
    year === null
      ? 'no year given'
      : String(year)
          .replace(/^(.+)[~?%]$/, 'about $1')
          .replace('/', ' to ')
  return [named, dated].filter(Boolean).join(', ')
}

/** The unit that a kitchen text names behind its figure: `litres` of *1.9 litres*. */
export function unitOf(text: string): string {
  return text.replace(/^(?:less than )?[\d.,¼-¾⅐-⅞\s]+/, '').replace(/, (?:scant|generous)$| \([^)]*\)$/, '')
}

/** Ends of a temperature are given to five degrees, as ovens are set. */
const toFive = (value: number): string => figure(Math.round(value / 5) * 5, 4)

const isDegrees = (unit: string): boolean => unit.startsWith('°')

/** Writes figures of one band, all to the same digits, at least so many. */
export function writer(figures: Figures, unit: string, least = 2): (value: number) => string {
  if (isDegrees(unit)) return toFive
  const digits = Math.max(least, digitsFor(figures))
  return (value) => figure(value, digits)
}

/** *12 oz*, but *12*, where the things counted have no unit. */
export const withUnit = (value: string, unit: string): string => bind(`${value} ${unit}`.trim())

/** A band in the unit of its answer; absent where both ends are the same. */
export function bandIn({ low, best, high }: Figures, unit: string, coverage: number): EntryBand | undefined {
  if (!(high > low)) return undefined
  const write = writer({ low, best, high }, unit)
  return { low, best, high, unit, text: `${timesIn(coverage)} between ${write(low)} and ${withUnit(write(high), unit)}` }
}

const letters = 'abcdefghijklmnopqrstuvwxyz'
/** Rarer meanings than the sixth are left to the whole working: a picture can't hold them. */
const mostSenses = 6

/** Meanings lettered in the order of their likelihood; none where there is only one, which is then no choice. */
export function lettered(
  senses: readonly { readonly label: string; readonly likelihood: number; readonly best: number }[],
  figures: Figures,
  unit: string,
): EntrySense[] {
  if (senses.length < 2) return []
  // Meanings are to be told apart, and found again beside the answer: two digits would round a pound to 450 g.
  const write = writer(figures, unit, 3)
  return senses.slice(0, mostSenses).map(({ label, likelihood, best }, i) => ({
    mark: letters[i]!,
    label,
    share: likelihood < 0.01 ? 'less than 1 in 100' : `${Math.round(likelihood * 100)} in 100`,
    best,
    text: withUnit(write(best), unit),
  }))
}

/** Steps with the grade in words: what nobody looked up says so. */
export function stepsOf(steps: readonly AnswerStep[]): EntryStep[] {
  return steps.map(({ text, factor, grade, checked, sources }) => ({
    text: `${text.charAt(0).toUpperCase()}${text.slice(1)}`.replace(/\.$/, ''),
    factor: factor.replace(/\bin3\b/g, 'in³'),
    grade: checked === 'memory' ? `${grade}, from memory` : grade,
    sources,
  }))
}

/** Units that a line of kitchen language names, in its order. */
export function namedIn(text: string, modern: readonly AnswerUnit[]): AnswerUnit[] {
  const longestFirst = [...modern].sort((a, b) => b.text.length - a.text.length)
  const named: AnswerUnit[] = []
  let rest = text.replace(/^about /, '')
  for (;;) {
    const next = longestFirst.find((unit) => rest.startsWith(unit.text))
    if (!next) return named
    named.push(next)
    rest = rest.slice(next.text.length).replace(/^[,;] /, '')
  }
}

/** A kitchen text without the ends that stand behind a temperature: they are said with the band. */
export const plainly = (text: string): string => bind(text.replace(/ \([^)]*\)$/, ''))

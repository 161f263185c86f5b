import type { AnswerUnit, HeatAnswer, LoafAnswer, MeasureAnswer } from './answers.js'
import type { Entry } from './entry.js'
import type { Figures } from './figures.js'
import { bandIn, lettered, namedIn, plainly, settingText, stepsOf, unitOf, withUnit, writer } from './parts.js'

const aboutIf = (doubtful: boolean, text: string): string => (doubtful ? `about\u00a0${text}` : text)
const doubtful = ({ low, high }: Figures): boolean => high > low

/** The unit that a measure is read in first, and its fellows. A caller's own unit stands alone. */
function unitsOf({ text, modern }: MeasureAnswer): readonly AnswerUnit[] {
  const named = namedIn(text, modern)
  return named.length > 0 ? named : modern.slice(0, 1)
}

/**
 * The entry of what `GET /v1/convert` answers.
 *
 * @example entryOfMeasure(convert('a pottle of cream', { year: 1690 })).short   // 'about 1.9 litres'
 */
export function entryOfMeasure(answer: MeasureAnswer): Entry {
  const { phrase, setting, value, senses, notes, cautions, dataset } = answer
  const [first, ...others] = unitsOf(answer)
  const likeliest = senses[0]!
  const unit = first ? unitOf(first.text) : ''
  const figures = first ?? value
  // Units other than degrees are multiples of the base unit; degrees come in the base unit itself.
  const scale = figures.best === value.best ? 1 : figures.best / value.best
  const inUnit = senses.map(({ label, likelihood, best }) => ({ label, likelihood, best: best * scale }))
  return {
    kind: 'measure',
    words: phrase,
    setting: settingText(setting.place, setting.year),
    short: first ? aboutIf(doubtful(value), plainly(first.text)) : likeliest.label,
    also: others.map(({ text }) => plainly(text)),
    band: first && bandIn(figures, unit, value.coverage),
    senses: lettered(inUnit, figures, unit),
    exact: likeliest.exact === null ? undefined : withUnit(likeliest.exact, likeliest.unit),
    steps: stepsOf(likeliest.steps),
    notes: [...notes, ...cautions.map(({ text }) => text)],
    dataset,
  }
}

/**
 * The entry of what `GET /v1/oven-heats` answers to a phrase.
 *
 * @example entryOfHeat({ ...findHeat('a slack oven', { year: 1796 }), steps: [], dataset }).short   // 'about 140 °C'
 */
export function entryOfHeat(answer: HeatAnswer): Entry {
  const { phrase, setting, heat, value, modern, likelihood, others, steps, notes, dataset } = answer
  const unit = '°C'
  const senses = [
    { label: `a ${heat.label} oven`, likelihood, best: value.best },
    ...others.map((other) => ({ label: `a ${other.label} oven`, likelihood: other.likelihood, best: other.value.best })),
  ]
  return {
    kind: 'heat',
    words: phrase,
    setting: settingText(undefined, setting.year),
    short: aboutIf(doubtful(value), withUnit(writer(value, unit)(value.best), unit)),
    also: modern.filter((one) => one.unit !== 'degC').map(({ text }) => plainly(text)),
    band: bandIn(value, unit, value.coverage),
    senses: lettered(senses, value, unit),
    exact: undefined,
    steps: stepsOf(steps),
    notes,
    dataset,
  }
}

/** Units of mass that a loaf is read in: the first of each pair that is not less than one. */
function loafUnits(modern: readonly AnswerUnit[]): readonly AnswerUnit[] {
  const find = (unit: string): AnswerUnit | undefined => modern.find((one) => one.unit === unit)
  const large = (find('kg')?.best ?? 0) >= 1
  return (large ? ['kg', 'lb'] : ['g', 'oz']).map(find).filter((unit) => unit !== undefined)
}

/**
 * The entry of what `GET /v1/loaves` answers.
 *
 * @example entryOfLoaf({ ...convert('a penny white loaf', { year: 1680 }).toJSON(), loaf: { label: 'penny white loaf' }, exact: null, steps: [] }).short   // 'about 225 g'
 */
export function entryOfLoaf(answer: LoafAnswer): Entry {
  const { setting, loaf, value, exact, modern, steps, dataset } = answer
  const [first, ...others] = loafUnits(modern)
  const unit = unitOf(first!.text)
  return {
    kind: 'loaf',
    words: `a ${loaf.label}`.replace(/^a (?=[aeiou])/, 'an '),
    setting: settingText(setting.place, setting.year),
    short: aboutIf(doubtful(value), plainly(first!.text)),
    also: others.map(({ text }) => plainly(text)),
    band: bandIn(first!, unit, value.coverage),
    senses: [],
    exact: exact === null ? undefined : withUnit(exact, value.unit),
    steps: stepsOf(steps),
    notes: [],
    dataset,
  }
}

import {
  type Filling,
  fillings,
  firstLoafYear,
  fixedNamed,
  type LoafName,
  type LoafSpan,
  type LoafWords,
  type LoafYear,
  lastLoafYear,
  loavesOver,
  readLoafName,
  requireLoafYear,
} from '../bread/index.js'
import { noAnswer, PottleError } from '../error.js'
import type { Question, Sense, SenseKind } from './sense.js'

/** A meaning less likely than this is not worth a cook's attention. Judgement. */
const negligible = 0.005

const named = (words: string | null): LoafName => readLoafName(words ?? '')

/** A bare *loaf*, *manchet* or *roll*, or no measure at all: then the thing must say that it is bread, or it is a loaf of sugar. */
function isBareLoaf(measure: LoafName, thing: LoafName, words: string | null): boolean {
  if (measure.other.length > 0 || measure.fixed || !(measure.bread || words === null || words === 'none')) return false
  return thing.other.length === 0 && (thing.bread || (measure.bread && thing.crumb))
}

function answers({ reading, measure }: Question): boolean {
  if (measure) return measure.kind === 'loaf'
  if (reading.kind !== 'priced' && reading.kind !== 'counted' && reading.kind !== 'measured') return false
  const words = reading.measure === 'none' ? null : reading.measure
  const name = named(words)
  if (name.bread && name.other.length === 0 && (name.coin || name.fixed)) return true
  return isBareLoaf(name, named(reading.thing), words)
}

function wordsOf({ reading, measure }: Question): LoafWords {
  const said = [
    reading.measure ?? measure?.id ?? null,
    reading.thing,
    reading.qualifier,
    reading.standard ?? null,
    ...(reading.describing ?? []),
  ]
  const names = said.map((words) => named(words === 'none' ? null : words))
  const first = <T>(of: (name: LoafName) => T | undefined): T | undefined => names.map(of).find((found) => found !== undefined)
  const kind = first((name) => name.kind)
  return {
    coin: first(({ coin, fixed, bread }) => coin?.id ?? (bread ? fixed : undefined)),
    kind: kind?.id,
    single: kind?.pence !== undefined,
    crumb: reading.part === 'crumb' || names.some(({ crumb }) => crumb),
  }
}

/** The loaves of one filling; none where no year of the setting has it. */
function loavesOf(filling: Filling, { crumb }: LoafWords, { setting }: Question, years: readonly LoafYear[]): readonly LoafSpan[] {
  const meant = years.filter(({ year }) => filling.share(year) > 0)
  const { coin, kind } = filling
  const asked = { ...(coin ? { coin } : {}), ...(kind ? { kind } : {}), place: setting.places, crumb }
  return loavesOver(asked, meant, setting.year ?? 'undated')
}

/** A loaf of fixed weight goes by its row, any other by its kind, and by the regime too where the date leaves several open. */
function identityOf({ loaf, group, groupLabel }: LoafSpan, { coin }: Filling, alone: boolean): Pick<Sense, 'id' | 'label' | 'standard'> {
  if (fixedNamed(coin ?? '')) return { id: group, label: loaf.label, standard: group }
  const id = coin ? `${coin}-loaf.${loaf.kind}` : `${loaf.kind}-loaf`
  if (alone) return { id, label: loaf.label, standard: loaf.kind }
  return { id: `${id}.${group}`, label: `${loaf.label}, ${groupLabel}`, standard: loaf.kind }
}

/** What a cook chooses: which of the weights of a fixed size, which kind of bread, or which size. */
function choiceOf({ coin }: LoafWords): string {
  if (coin === undefined) return 'loaf-size'
  return fixedNamed(coin) ? `${coin}-loaf` : 'loaf-kind'
}

function senseOf(span: LoafSpan, filling: Filling, alone: boolean, choice: string): Sense {
  const { loaf, years } = span
  return {
    ...identityOf(span, filling, alone),
    likelihood: years.reduce((sum, { year, weight }) => sum + weight * filling.share(year), 0),
    quantity: 'mass',
    value: loaf.value,
    ...(loaf.exact ? { exact: loaf.exact } : {}),
    steps: [...filling.reasons(years[0]!.year), ...loaf.steps],
    choice,
  }
}

/** The years of the setting that the tables of bread reach. */
function yearsOf({ setting }: Question): readonly LoafYear[] {
  const within = setting.moments.filter(({ year }) => firstLoafYear <= year && year <= lastLoafYear)
  if (within.length === 0) requireLoafYear(setting.from)
  return within
}

function weighed(words: LoafWords, question: Question): Sense[] {
  const years = yearsOf(question)
  const found: Sense[] = []
  let refusal: PottleError | undefined
  for (const filling of fillings(words, years)) {
    try {
      const spans = loavesOf(filling, words, question, years)
      found.push(...spans.map((span) => senseOf(span, filling, spans.length === 1, choiceOf(words))))
    } catch (error) {
      if (!(error instanceof PottleError)) throw error
      refusal ??= error
    }
  }
  const kept = found.filter(({ likelihood }) => likelihood >= negligible).sort((a, b) => b.likelihood - a.likelihood)
  if (kept.length === 0) throw refusal ?? noAnswer('year', 'no loaf of that kind is known in that year and place')
  const total = kept.reduce((sum, { likelihood }) => sum + likelihood, 0)
  return kept.map((sense) => ({ ...sense, likelihood: sense.likelihood / total }))
}

/** The senses that a caller insists on: one kind of bread, or one sense by its id. */
function insisted(wish: string, words: LoafWords, question: Question): Sense[] {
  const kind = readLoafName(wish).kind?.id
  const senses = weighed(kind ? { ...words, kind } : words, question)
  const named = senses.filter(({ id, standard }) => id === wish || standard === kind || id.endsWith(`.${wish}`))
  // A loaf of fixed weight is the same loaf in any kind of bread.
  const meant = kind && named.length === 0 ? senses : named
  if (meant.length === 0) {
    const known = [...new Set(senses.map(({ id }) => id))].slice(0, 8).join(', ')
    throw noAnswer('standard', `this loaf has no sense by "${wish.slice(0, 40)}"; it can be ${known}, or any kind of bread`)
  }
  const total = meant.reduce((sum, { likelihood }) => sum + likelihood, 0)
  return meant.map((sense) => ({ ...sense, likelihood: sense.likelihood / total }))
}

/**
 * Priced loaves and loaves of fixed size, by the Assize of Bread: *a penny white loaf*, *the crumb of a twopenny loaf*, *two manchets*.
 *
 * Where the words do not say which bread (white, wheaten, household) or which size it was, each is a sense with its likelihood by date.
 */
export const loaf: SenseKind = {
  name: 'loaf',
  answers,
  senses: (question) => {
    const words = wordsOf(question)
    return question.standard ? insisted(question.standard, words, question) : weighed(words, question)
  },
}

import type { Answer, AnswerSense, AnswerSource } from './answer.js'
import { type Band, scaleBand } from './bands/index.js'
import { citeFull } from './cite/index.js'
import { badOption } from './error.js'
import { kitchenLine } from './kitchen-line.js'
import { inModernUnits, type ModernValue } from './modern/index.js'
import { notesOn } from './notes.js'
import { type Checked, type ConvertOptions, checkOptions, mostPhrase } from './options.js'
import { type Reading, readPhrase, type Span } from './reading/index.js'
import { numberOf, type Resolved, type ResolvedSense, resolve } from './resolve.js'
import { baseUnits, type Citation, dataset, exactRatio, findSource, type Quantity } from './tables/index.js'

/** All the digits of a sense, where neither it nor the phrase's number leaves a doubt. */
function exactDigits({ sense }: ResolvedSense, scales: boolean, base: number, ratio: number): string | null {
  if (sense.exact === undefined || (scales && ratio > 1)) return null
  if (!scales || base === 1) return sense.exact
  return exactRatio(sense.exact).times(base).toSignificantDigits(15).toString()
}

function answerSenses({ senses, scales, assessment }: Resolved, reading: Reading): readonly AnswerSense[] {
  const { base, ratio } = numberOf(reading.amount)
  const unit = baseUnits[assessment.quantity]
  return senses.map((resolved) => {
    const { id, label, likelihood } = resolved.sense
    const { low, best, high } = scales ? scaleBand(resolved.band, base) : resolved.band
    const exact = exactDigits(resolved, scales, base, ratio)
    return { id, label, likelihood: Number(likelihood.toFixed(4)), unit, low, best, high, exact, steps: resolved.steps }
  })
}

const references = new Map<string, AnswerSource>()

/** A source's full reference, made once: the tables do not change. */
function referenceTo({ id }: Citation): AnswerSource {
  const known = references.get(id)
  if (known) return known
  const reference = { id, citation: citeFull(findSource(id)!) }
  references.set(id, reference)
  return reference
}

type Other = { readonly quantity: Quantity; readonly band: Band }

/** Units of the value's own quantity, of the other one where a density gives it, and of the kind's own; only the one asked for where one was. */
function modernValues({ assessment }: Resolved, checked: Checked, band: Band, other: Other | undefined): readonly ModernValue[] {
  const { kind, question, quantity } = assessment
  const all = [
    ...inModernUnits(quantity, band),
    ...(other ? inModernUnits(other.quantity, other.band) : []),
    ...(kind.modern?.(question, band) ?? []),
  ]
  return checked.unit ? all.filter(({ unit }) => unit === checked.unit) : all
}

const wordsOf = (phrase: string, spans: readonly Span[]): string[] => spans.map(({ start, end }) => phrase.slice(start, end))

/** Makes a part of the answer when it is first asked for: a caller who wants the band alone does not wait for the citations. */
function once<Part>(make: () => Part): () => Part {
  let made: Part | undefined
  return () => {
    made ??= make()
    return made
  }
}

function answer(phrase: string, reading: Reading, checked: Checked): Answer {
  const resolved = resolve(reading, checked)
  const { base } = numberOf(reading.amount)
  const scaled = (band: Band): Band => (resolved.scales ? scaleBand(band, base) : band)
  const band = scaled(resolved.band)
  const { quantity } = resolved.assessment
  const { kind, amount, measure, thing, qualifier, eggs } = reading
  const { setting } = checked
  const { low, best, high, coverage } = band
  const unread = wordsOf(phrase, reading.unread)
  const other = once(() => resolved.other && { quantity: resolved.other.quantity, band: scaled(resolved.other.band) })
  const modern = once(() => modernValues(resolved, checked, band, other()))
  const senses = once(() => answerSenses(resolved, reading))
  return {
    phrase,
    setting: { year: setting.from === setting.to ? setting.from : setting.year, place: setting.places[0]! },
    reading: { kind, amount, measure, thing, qualifier, eggs, unread },
    value: { quantity, unit: baseUnits[quantity], low, best, high, coverage },
    get modern() {
      return modern()
    },
    get senses() {
      return senses()
    },
    get text() {
      return kitchenLine(quantity, band, modern(), other())
    },
    get notes() {
      return notesOn(resolved, setting, unread)
    },
    cautions: resolved.cautions,
    get sources() {
      return resolved.citations.map(referenceTo)
    },
    dataset,
  }
}

/**
 * Turns a period phrase into a modern measure: with a band, the possible senses, every step and its source.
 *
 * @param phrase the words as the book has them, at most 1,000 characters: `a pottle of cream`
 * @throws PottleError `bad-option` names each option that is wrong; `unreadable` says which words were understood; `no-answer` says why there is none
 * @example convert('a pottle of cream', { year: 1690, place: 'london' }).text   // 'about 1.9 litres, 8 US cups; 1.9 kg'
 */
export function convert(phrase: string, options: ConvertOptions = {}): Answer {
  const checked = checkOptions(options)
  if (typeof phrase !== 'string' || phrase.trim() === '')
    throw badOption('phrase', 'give the words of a measure, such as "a pottle of cream"')
  if (phrase.length > mostPhrase)
    throw badOption(
      'phrase',
      `the phrase has ${phrase.length} characters; at most ${mostPhrase} are read. Send a whole receipt as a receipt`,
    )
  const reading = readPhrase(phrase)
  return answer(phrase, checked.thing ? { ...reading, thing: checked.thing } : reading, checked)
}

import { PottleError, readLoafName } from '@pottle/core'
import { type Kind, parameters, type Question, questionOf } from '@pottle/embed/view'

type Attributes = Readonly<Record<string, string | null | undefined>>

/** What holds for every phrase of a site or a document that does not say otherwise. */
export interface Defaults {
  /** A year, or a date in EDTF level 1: that of the book which the document copies. */
  readonly year?: number | string
  /** A place's slug. */
  readonly place?: string
}

/** Attributes that belong to the page and not to the question. */
const ofThePage = new Set(['id', 'class'])

function requireKnown(kind: Kind, attributes: Attributes): void {
  const unknown = Object.keys(attributes).filter((name) => !parameters[kind].includes(name) && !ofThePage.has(name))
  if (unknown.length === 0) return
  const detail = `:${kind} knows ${parameters[kind].join(', ')}`
  throw new PottleError(
    'bad-option',
    unknown.map((parameter) => ({ parameter, detail })),
  )
}

/** The coin and kind that the words name, where the attributes do not. */
function namedLoaf(words: string): Attributes {
  const { coin, fixed, kind, other } = readLoafName(words)
  if (other.length > 0) {
    const detail = `"${other.join(' ')}" names no loaf; say coin and kind, as in {coin=penny kind=white year=1680}`
    throw new PottleError('unreadable', [{ parameter: 'phrase', detail }])
  }
  return { coin: coin?.id ?? fixed, kind: kind?.id }
}

/**
 * The question that a directive asks: its words are the phrase, its attributes the setting.
 *
 * @throws PottleError for an attribute that the question has no use for, and for words that name no loaf
 */
export function questionIn(kind: Kind, words: string, attributes: Attributes, { year, place }: Defaults): Question {
  requireKnown(kind, attributes)
  const fallback: Attributes = { phrase: words, year: year?.toString(), place, ...(kind === 'loaf' ? namedLoaf(words) : {}) }
  return questionOf(kind, (name) => attributes[name] ?? fallback[name])
}

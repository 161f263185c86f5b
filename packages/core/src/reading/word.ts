import type { MeasureWordRow, ThingWordRow } from '../tables/index.js'

/** What a word can do in a statement; one word may do several things, so they are bits. */
export const Role = {
  Cardinal: 1 << 0,
  Collective: 1 << 1,
  Half: 1 << 2,
  Part: 1 << 3,
  Article: 1 << 4,
  Each: 1 << 5,
  Determiner: 1 << 6,
  /** A word that shifts an amount: about, better, scant, good, large, small, heaped. */
  Qualifier: 1 << 7,
  /** A word that may stand between an amount and its thing without changing either. */
  Describing: 1 << 8,
  Adverb: 1 << 9,
  Weight: 1 << 10,
  Quantity: 1 << 11,
  Alike: 1 << 12,
  Twice: 1 << 13,
  Size: 1 << 14,
  Yolk: 1 << 15,
  White: 1 << 16,
  /** Leaving, casting away, but: what follows is taken from the eggs, or kept of them. */
  Without: 1 << 17,
  /** Juice, rind, crumb: a part that is asked for by the number of its wholes. */
  PartOf: 1 << 18,
  Oven: 1 << 19,
  Heat: 1 << 20,
  Degree: 1 << 21,
  Standard: 1 << 22,
  Dimension: 1 << 23,
  Vague: 1 << 24,
  /** Verbs, prepositions, pronouns: the name of a thing ends before them. */
  Plain: 1 << 25,
  Egg: 1 << 26,
  /** Comma, colon, full stop: no word at all. */
  Mark: 1 << 27,
  /** Begins the name of a measure, a coin, an object or a thing. */
  Named: 1 << 28,
  /** A verb of taking away that needs its *out*, *by* or *away*. */
  Removing: 1 << 29,
  /** What follows is what is kept. */
  Keeping: 1 << 30,
} as const

/** What the names that begin with a word lead to. */
export interface Branch {
  next: Map<Word, Branch> | null
  measure: MeasureWordRow | null
  length: MeasureWordRow | null
  object: MeasureWordRow | null
  coin: MeasureWordRow | null
  thing: ThingWordRow | null
}

/** A word in its modern form; all its spellings share one, so that words are compared by identity. */
export interface Word extends Branch {
  readonly text: string
  roles: number
  /** The number it stands for; 0 where it stands for none. */
  value: number
  /** The qualifier that it is a word for: *near* and *some* are `about`. */
  qualifier: string | null
}

export function newWord(text: string, roles = 0): Word {
  return { text, roles, value: 0, qualifier: null, next: null, measure: null, length: null, object: null, coin: null, thing: null }
}

export const mark: Readonly<Record<'comma' | 'colon' | 'stop' | 'open' | 'close' | 'dash' | 'hyphen' | 'end', Word>> = {
  comma: newWord(',', Role.Mark),
  colon: newWord(';', Role.Mark),
  stop: newWord('.', Role.Mark),
  open: newWord('(', Role.Mark),
  close: newWord(')', Role.Mark),
  dash: newWord('—', Role.Mark),
  hyphen: newWord('-', Role.Mark),
  end: newWord('', Role.Mark),
}

/** The word of every number written in digits; the number itself is kept beside the token. */
export const digits: Word = newWord('1', Role.Cardinal)

/** A numeral that no table holds, such as `xviij`. */
export function numeral(text: string, value: number): Word {
  const word = newWord(text, Role.Cardinal)
  word.value = value
  return word
}

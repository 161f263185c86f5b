import type { MeasureWordRow, ThingWordRow } from '../tables/index.js'

/** What a word can do in a statement; one word may do several things, so they are bits. */
export const Role = {
  Cardinal: 0x1,
  Collective: 0x2,
  Half: 0x4,
  Part: 0x8,
  Article: 0x10,
  Each: 0x20,
  Determiner: 0x40,
  /** A word that shifts an amount: about, better, scant, good, large, small, heaped. */
  Qualifier: 0x80,
  /** A word that may stand between an amount and its thing without changing either. */
  Describing: 0x100,
  Adverb: 0x200,
  Weight: 0x400,
  Quantity: 0x800,
  Alike: 0x1000,
  Twice: 0x2000,
  Size: 0x4000,
  Yolk: 0x8000,
  White: 0x10000,
  /** Leaving, casting away, but: what follows is taken from the eggs, or kept of them. */
  Without: 0x20000,
  /** Juice, rind, crumb: a part that is asked for by the number of its wholes. */
  PartOf: 0x40000,
  Oven: 0x80000,
  Heat: 0x100000,
  Degree: 0x200000,
  Standard: 0x400000,
  Dimension: 0x800000,
  Vague: 0x1000000,
  /** Verbs, prepositions, pronouns: the name of a thing ends before them. */
  Plain: 0x2000000,
  Egg: 0x4000000,
  /** Comma, colon, full stop: no word at all. */
  Mark: 0x8000000,
  /** Begins the name of a measure, a coin, an object or a thing. */
  Named: 0x10000000,
  /** A verb of taking away that needs its *out*, *by* or *away*. */
  Removing: 0x20000000,
  /** What follows is what is kept. */
  Keeping: 0x40000000,
} as const

/** What kinds of name begin with a word, so that no reader is tried in vain; `Statement` marks small words that may begin one, `Onward` words that stand inside longer names. */
export const Leads = { Measure: 0x1, Length: 0x2, Object: 0x4, Coin: 0x8, Thing: 0x10, Statement: 0x20, Onward: 0x40 } as const

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
  leads: number
  /** The number it stands for; 0 where it stands for none. */
  value: number
  /** The qualifier that it is a word for: *near* and *some* are `about`. */
  qualifier: string | null
}

export function newWord(text: string, roles = 0): Word {
  return {
    text,
    roles,
    leads: 0,
    value: 0,
    qualifier: null,
    next: null,
    measure: null,
    length: null,
    object: null,
    coin: null,
    thing: null,
  }
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

/** A numeral that no table holds, such as `xviij`. */
export function numeral(text: string, value: number): Word {
  const word = newWord(text, Role.Cardinal)
  word.value = value
  return word
}

/** An ordinal in figures, which stands for a part: *the iiijth part*, *the 4th part*. */
export function ordinal(value: number): Word {
  const word = newWord('#th', Role.Part)
  word.value = 1 / value
  return word
}

/** A number written in digits. */
export const inDigits = (value: number): Word => numeral(digits, value)

/** The text of every word that stands for digits. */
export const digits = '#'

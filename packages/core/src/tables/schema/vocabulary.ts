/** The vocabulary of reading. It claims nothing about a quantity, so its rows carry no source. */

export type MeasureWordClass =
  | 'weight'
  | 'capacity'
  | 'spoon'
  | 'cup'
  | 'hand'
  | 'piece'
  | 'vague'
  | 'money'
  | 'time'
  | 'length'
  | 'object'
  | 'coin'

/** The words of a measure, for reading only: what it amounts to stands in the tables of senses. */
export interface MeasureWordRow {
  readonly id: string
  /** The modern name in the singular, as a reading gives it. */
  readonly label: string
  readonly class: MeasureWordClass
  /** Spellings and abbreviations that no rule of spelling reaches, in lower case. */
  readonly names: readonly string[]
  /** What must follow before the word is a measure at all: a glass *of* something, a ladle *full*, a finger *thick*; `number`: a number or *of*; `phrase`: too loose for running prose. */
  readonly needs?: 'of' | 'full' | 'dimension' | 'number' | 'phrase'
  readonly minutes?: number
  /** Pence that a coin, or a worth of goods, stands for. */
  readonly worth?: number
  /** The next larger measure, and how many of this one it holds: what *a pound and two ounces* adds up by. */
  readonly within?: string
  readonly parts?: number
}

/** A word for a number or a part. */
export interface NumberWordRow {
  readonly id: string
  readonly role: 'cardinal' | 'collective' | 'half' | 'part'
  /** An integer, a decimal or a fraction, as text. */
  readonly value: string
  readonly names: readonly string[]
}

/** Words that play one part in a statement. A word may play several. */
export interface ParticleRow {
  readonly id: string
  readonly words: readonly string[]
}

/** Spellings of a common word that no rule reaches. */
export interface SpellingRow {
  readonly id: string
  readonly names: readonly string[]
}

/** The words for a thing of the kitchen. */
export interface ThingWordRow {
  readonly id: string
  /** The modern name in the singular, as a reading gives it. */
  readonly label: string
  readonly names: readonly string[]
  /** `each`: asked for by number (*four lemons*); `joint`: a cut that needs its beast (*a leg of pork*); `dish`: made by the receipt, not asked for. */
  readonly count?: 'each' | 'joint' | 'dish'
  /** Words of this kind close a compound: *cowslip wine*, *lemon peel*. */
  readonly head?: boolean
  /** A beast that joints are cut from. */
  readonly meat?: boolean
}

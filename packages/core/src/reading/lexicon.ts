import { heats, numbers, particles, spellings } from '../tables/index.js'
import { allNames, type NameRow } from './names.js'
import { qualifierOf, rolesOf } from './roles.js'
import { romanNumber } from './roman.js'
import { consonantFrame, fold, singulars, spellingKey, unstroked } from './spelling.js'
import { type Branch, Leads, newWord, numeral, ordinal, Role, type Word } from './word.js'

/** Words met so far, under the spelling they were met in. Bounded, because a hostile text can hold any number of spellings. */
const cacheSize = 1 << 15
const longestWord = 40

function fraction(text: string): number {
  const [over, under] = text.split('/')
  return Number(over) / Number(under ?? 1)
}

/** Every word of the tables, by its spellings, by the keys of its spellings, and by the names that begin with it. */
export class Lexicon {
  readonly #forms = new Map<string, Word>()
  readonly #keys = new Map<string, Word | null>()
  readonly #frames = new Map<string, Word | null>()
  readonly #met = new Map<string, Word>()
  /** Abbreviations after which a point ends no sentence. */
  readonly #abbreviations = new Set<string>([
    'no',
    'p',
    'pp',
    'viz',
    'i',
    'e',
    'st',
    'dr',
    'mr',
    'mrs',
    'vol',
    'chap',
    'fig',
    'teasp',
    'tablesp',
    'dessertsp',
  ])

  constructor() {
    this.#addNumbers()
    for (const row of particles) for (const text of row.words) this.#addRole(text, row.id)
    this.#addNames()
    this.#addLibra()
    for (const { words } of heats.flatMap(({ names }) => names)) if (!words.includes(' ')) this.#word(words).roles |= Role.Heat
    for (const row of spellings) for (const name of row.names) this.#alias(name, this.#word(row.id))
  }

  /** The word that a spelling stands for. Spellings that no table and no rule knows make a word of their own. */
  find(raw: string): Word {
    const met = this.#met.get(raw)
    if (met !== undefined) return met
    const word = raw.length > longestWord ? newWord(raw) : this.#recognize(raw)
    if (this.#met.size >= cacheSize) this.#met.clear()
    // A slice keeps the whole text it was cut from alive; a joined copy does not.
    this.#met.set(raw.length > 12 ? raw.split('').join('') : raw, word)
    return word
  }

  /** The word of a modern form; the form must be in the tables. */
  get(text: string): Word {
    const word = this.#forms.get(text)
    if (word === undefined) throw new Error(`no such word in the tables: ${text}`)
    return word
  }

  /** The words of a name of the tables, which are known from then on in all their spellings. */
  wordsOf(name: string): Word[] {
    return nameParts(name.replaceAll('-', ' ')).map((form) => this.#own(form))
  }

  /** Whether a spelling is an abbreviation, after which a point ends no sentence. */
  isShort(raw: string): boolean {
    const short = raw.toLowerCase()
    return this.#abbreviations.has(short) || (short.endsWith('s') && this.#abbreviations.has(short.slice(0, -1)))
  }

  #recognize(raw: string): Word {
    const folded = fold(raw)
    const exact = this.#spelled(folded)
    if (exact !== undefined) return exact
    const value = raw === 'I' || raw === 'C' || raw === 'V' || raw === 'L' ? 0 : romanNumber(folded)
    if (value > 0) return numeral(folded, value)
    for (const whole of unstroked(raw)) {
      const word = this.#spelled(whole)
      if (word !== undefined) return word
    }
    const nth = folded.endsWith('th') ? romanNumber(folded.slice(0, -2)) : 0
    if (nth > 2) return ordinal(nth)
    return this.#likeness(folded) ?? newWord(folded, guessedRoles(folded))
  }

  #spelled(folded: string): Word | undefined {
    const exact = this.#forms.get(folded)
    if (exact !== undefined) return exact
    for (const singular of singulars(folded)) {
      const word = this.#forms.get(singular)
      if (word !== undefined) return word
    }
    return undefined
  }

  #likeness(folded: string): Word | undefined {
    if (folded.length < 3) return undefined
    if (this.#keys.size === 0) this.#index()
    const candidates = [folded, ...singulars(folded)].map(spellingKey)
    for (const key of candidates) {
      const word = this.#keys.get(key)
      if (word) return word
    }
    if (guessedRoles(folded) !== 0) return undefined
    for (const key of candidates) {
      const word = this.#frames.get(consonantFrame(key) ?? '')
      if (word) return word
    }
    return undefined
  }

  #word(text: string): Word {
    const known = this.#forms.get(text)
    if (known !== undefined) return known
    const word = newWord(text)
    this.#forms.set(text, word)
    return word
  }

  /** The word of a form in the tables; plurals share the word of their singular. */
  #own(form: string): Word {
    return this.#spelled(form) ?? this.#word(form)
  }

  #alias(form: string, word: Word): void {
    if (!this.#forms.has(form)) this.#forms.set(form, word)
  }

  #addNumbers(): void {
    for (const row of numbers) {
      const word = this.#word(row.id)
      word.roles |= { cardinal: Role.Cardinal, collective: Role.Collective, half: Role.Half, part: Role.Part }[row.role]
      word.value = fraction(row.value)
      for (const name of row.names) this.#alias(name, word)
    }
  }

  /** An l. is the numeral for fifty, and behind a number a pound: *l. egges*, *iiij l. of sugre*. */
  #addLibra(): void {
    const libra = this.#word('l')
    libra.roles |= Role.Cardinal | Role.Named
    libra.leads |= Leads.Measure
    libra.value = 50
    libra.measure = this.get('pound').measure
  }

  #addRole(text: string, group: string): void {
    const word = this.#word(text)
    word.roles |= rolesOf(group)
    if (group === 'beginner') word.leads |= Leads.Statement
    word.qualifier = qualifierOf(group) ?? word.qualifier
  }

  #addNames(): void {
    const rows = allNames()
    const labels = new Set(rows.map(({ label }) => label))
    const formsOf = new Map<string, readonly string[]>()
    // The names that a word stands inside of. It keeps its own identity there: `flower` is flour, but an orange flower is not orange flour.
    const wholes = new Map<string, string[]>()
    for (const { label, names } of rows) {
      formsOf.set(label, nameParts(label))
      for (const name of names) formsOf.set(name, nameParts(name))
    }
    for (const { label, names } of rows)
      for (const name of [label, ...names]) if (name.includes(' ')) for (const form of formsOf.get(name)!) within(wholes, form).push(label)
    for (const label of labels) for (const form of formsOf.get(label)!) this.#own(form)
    for (const { label, names } of rows) {
      const own = formsOf.get(label)!
      if (own.length > 1) continue
      const sole = this.#own(own[0]!)
      for (const name of names) if (formsOf.get(name)!.length === 1 && !isApart(name, label, wholes.get(name))) this.#alias(name, sole)
    }
    for (const row of rows) {
      const own = formsOf.get(row.label)!
      this.#addName(row, own)
      const sole = own.length === 1 ? this.#own(own[0]!) : null
      for (const name of row.names) {
        const forms = formsOf.get(name)!
        if (sole === null || forms.length > 1 || this.#forms.get(name) !== sole) this.#addName(row, forms)
        if (name.length < 5 && 'class' in row && !labels.has(name)) this.#abbreviations.add(name)
      }
    }
  }

  #addName(row: NameRow, forms: readonly string[]): void {
    const first = this.#own(forms[0]!)
    first.roles |= Role.Named
    let branch: Branch = first
    for (let at = 1; at < forms.length; at++) {
      const word = this.#own(forms[at]!)
      word.leads |= Leads.Onward
      branch.next ??= new Map()
      let next: Branch | undefined = branch.next.get(word)
      if (next === undefined) {
        next = newWord(word.text)
        branch.next.set(word, next)
      }
      branch = next
    }
    const kind = kindOf(row)
    branch[kind] ??= row as never
    first.leads |= leadOf[kind]
    if (row.id === 'egg' && forms.length === 1) first.roles |= Role.Egg
  }

  /** Files every word under the keys of its spellings; done when the first spelling comes that no table holds. */
  #index(): void {
    const framed: [string, Word][] = []
    for (const [form, word] of this.#forms) {
      const key = spellingKey(form)
      claim(this.#keys, key, word)
      const frame = consonantFrame(key)
      if (frame === null) continue
      if ((word.roles & Role.Named) !== 0) claim(this.#frames, frame, word)
      framed.push([frame, word])
    }
    // A frame shared with a common word of the language is no evidence.
    for (const [frame, word] of framed) if (this.#frames.has(frame) && this.#frames.get(frame) !== word) this.#frames.set(frame, null)
  }
}

const leadOf = { measure: Leads.Measure, length: Leads.Length, object: Leads.Object, coin: Leads.Coin, thing: Leads.Thing } as const

function kindOf(row: NameRow): keyof typeof leadOf {
  if (!('class' in row)) return 'thing'
  return row.class === 'length' || row.class === 'object' || row.class === 'coin' ? row.class : 'measure'
}

/** The list that a key has in an index, which is a new one at first. */
function within(index: Map<string, string[]>, key: string): string[] {
  const known = index.get(key)
  if (known) return known
  const list: string[] = []
  index.set(key, list)
  return list
}

/** Whether a word is no mere spelling of another inside longer names: the wyne of *whyte wyne* is wine, the flower of *cauliflower* no flour. */
function isApart(name: string, label: string, wholes: readonly string[] | undefined): boolean {
  if (wholes === undefined) return false
  return spellingKey(name) !== spellingKey(label) || !wholes.every((whole) => whole.includes(label))
}

/** Two words with one key make the key worthless. */
function claim(index: Map<string, Word | null>, key: string, word: Word): void {
  const held = index.get(key)
  index.set(key, held === undefined || held === word ? word : null)
}

/** The words of a name as they are compared. */
function nameParts(name: string): string[] {
  const parts: string[] = []
  for (const part of name.split(' ')) {
    const form = fold(part)
    if (form !== '' && form !== 's') parts.push(form)
  }
  return parts
}

/** What the ending of an unknown word tells: *-ed* describes a thing, *-ing* and *-ly* end its name. */
function guessedRoles(folded: string): number {
  if (folded.length < 5) return 0
  if (folded.endsWith('ed') || (folded.endsWith('est') && folded.length > 6)) return Role.Describing
  if (folded.endsWith('ing') || folded.endsWith('eth')) return Role.Plain
  return folded.endsWith('ly') ? Role.Adverb : 0
}

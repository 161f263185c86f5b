import type { Lexicon } from './lexicon.js'
import { Line } from './line.js'
import { romanNumber } from './roman.js'
import { inDigits, mark, ordinal, type Word } from './word.js'

const vulgar: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅐': 1 / 7,
  '⅑': 1 / 9,
  '⅒': 1 / 10,
}

const marks: Readonly<Record<string, Word>> = {
  ',': mark.comma,
  ';': mark.colon,
  ':': mark.colon,
  '.': mark.stop,
  '!': mark.stop,
  '?': mark.stop,
  '(': mark.open,
  '[': mark.open,
  ')': mark.close,
  ']': mark.close,
  '—': mark.dash,
  '–': mark.dash,
  '"': mark.open,
}

const Kind = { Space: 0, Letter: 1, Digit: 2, Mark: 3, Fraction: 4, Symbol: 5, Apostrophe: 6, Hyphen: 7 } as const

/** The kind of every character that a kitchen text is likely to hold; those beyond are letters. */
const kinds = new Uint8Array(0x2300)
const everyCharacter = String.fromCharCode(...kinds.keys())
for (const { 0: letters, index } of everyCharacter.matchAll(/[\p{L}\p{M}]+/gu)) kinds.fill(Kind.Letter, index, index + letters.length)
for (const [kind, characters] of [
  [Kind.Digit, '0123456789'],
  [Kind.Fraction, Object.keys(vulgar)],
  [Kind.Mark, Object.keys(marks)],
  [Kind.Symbol, '℥ʒ℈℔&'],
  [Kind.Apostrophe, "'’"],
  [Kind.Hyphen, '-‐‑−'],
] as const)
  for (const character of characters) kinds[character.charCodeAt(0)] = kind

function kindAt(text: string, at: number): number {
  if (at >= text.length || at < 0) return Kind.Space
  const code = text.charCodeAt(at)
  return code < kinds.length ? kinds[code]! : Kind.Letter
}

/** Cuts a text into words, numbers and marks, in one pass. */
export function scan(text: string, lexicon: Lexicon): Line {
  const line = new Line(text, lexicon)
  let at = 0
  while (at < text.length) {
    const kind = kindAt(text, at)
    if (kind === Kind.Letter) at = scanWord(text, at, line, lexicon)
    else if (kind === Kind.Space && endsParagraph(text, at)) {
      line.push(mark.stop, at, at)
      at++
    } else if (kind === Kind.Space || kind === Kind.Apostrophe) at++
    else if (kind === Kind.Digit || kind === Kind.Fraction) at = scanNumber(text, at, line)
    else if (kind === Kind.Symbol && isYogh(text, at)) at = scanWord(text, at, line, lexicon)
    else if (kind === Kind.Symbol) {
      line.push(lexicon.find(text[at] === '&' ? 'and' : text[at]!), at, at + 1)
      at++
    } else at = scanMark(text, at, line)
  }
  return line
}

/** A blank line parts as a full stop does. */
function endsParagraph(text: string, at: number): boolean {
  if (text.charCodeAt(at) !== 0x0a) return false
  const next = text.charCodeAt(at + 1)
  return next === 0x0a || (next === 0x0d && text.charCodeAt(at + 2) === 0x0a)
}

/** Whether the sign of the drachm stands for yogh: before letters that are no numeral (*ʒolkes*, but *ʒij*). */
function isYogh(text: string, at: number): boolean {
  if (text[at] !== 'ʒ' || kindAt(text, at + 1) !== Kind.Letter) return false
  const word = text.slice(at + 1, pastLetters(text, at + 1)).toLowerCase()
  return word !== 'ss' && romanNumber(word) === 0
}

const caret = 0x5e

/** Where the letters end that go on from a letter, with apostrophes inside them and letters raised over the line: *boyl'd*, *q^t*, *q^{ter}*. */
function pastLetters(text: string, next: number): number {
  let end = next
  for (;;) {
    const kind = kindAt(text, end)
    if (kind === Kind.Letter) end++
    else if (kind === Kind.Apostrophe && kindAt(text, end + 1) === Kind.Letter) end += 2
    else if (kind === Kind.Space && text.charCodeAt(end) === caret && raisedEnd(text, end) > 0) end = raisedEnd(text, end)
    else return end
  }
}

/** The end of the raised letters behind `^`, in braces or one by itself; 0 where there are none. */
function raisedEnd(text: string, at: number): number {
  if (text[at + 1] !== '{') return kindAt(text, at + 1) === Kind.Letter ? at + 2 : 0
  let end = at + 2
  while (kindAt(text, end) === Kind.Letter && end < at + 8) end++
  return text[end] === '}' && end > at + 2 ? end + 1 : 0
}

/** Scribes set a colon where printers set a point: *q:rs*, *w:th*. */
function colonEnd(text: string, start: number, end: number): number {
  if (end !== start + 1 || text[end] !== ':') return end
  const next = pastLetters(text, end + 1)
  return next > end + 1 && next <= end + 4 ? next : end
}

/** The letters of the longest abbreviation, *dessertsp.* */
const longestShort = 9

function scanWord(text: string, start: number, line: Line, lexicon: Lexicon): number {
  const letters = pastLetters(text, start + 1)
  const end = colonEnd(text, start, letters)
  const raw = text.slice(start, end)
  const word = lexicon.find(raw)
  line.push(word, start, end)
  const behind = text[end]
  if ((behind !== '.' && behind !== ':') || end - start > longestShort || !isShort(raw, word, lexicon)) return end
  // "one gal: of water"
  const goesOn = kindAt(text, end + 1) === Kind.Space && isLower(text, end + 2)
  return behind === '.' || (word.measure !== null && goesOn) ? end + 1 : end
}

/** Numerals, single letters and abbreviations, behind which a point ends no sentence. */
const isShort = (raw: string, word: Word, lexicon: Lexicon): boolean => word.value > 0 || raw.length === 1 || lexicon.isShort(raw)

/** Digits, with the fraction that may follow them: `3`, `1/2`, `2 1/2`, `3-1/2`, `2½`, `1,000`, `1.5`. */
function scanNumber(text: string, start: number, line: Line): number {
  let at = start
  let value = 0
  if (kindAt(text, at) === Kind.Digit) {
    at = pastDigits(text, start)
    value = numberIn(text.slice(start, at))
    const nth = pastOrdinal(text, at)
    if (nth > at && value > 2) {
      line.push(ordinal(value), start, nth)
      return nth
    }
    const thousands = at
    for (; text[at] === ',' && pastDigits(text, at + 1) === at + 4; at += 4)
      value = Math.min(beyond, value * 1000 + Number(text.slice(at + 1, at + 4)))
    if (at > thousands) {
      // "1,200": no fraction stands behind it.
    } else if ((text[at] === '.' || text[at] === '·') && kindAt(text, at + 1) === Kind.Digit) {
      const point = at
      at = pastDigits(text, at + 1)
      value += Number(`0.${text.slice(point + 1, Math.min(at, point + 16))}`)
    } else if (text[at] === '/' && kindAt(text, at + 1) === Kind.Digit) {
      const end = pastDigits(text, at + 1)
      const under = numberIn(text.slice(at + 1, end))
      line.push(inDigits(under > 0 ? value / under : 0), start, end)
      return pastPoint(text, end)
    }
  }
  const part = scanFraction(text, kindAt(text, at) === Kind.Fraction ? at : at + 1)
  if (part !== null && at > start) {
    line.push(inDigits(value + part.value), start, part.end)
    return pastPoint(text, part.end)
  }
  if (kindAt(text, start) === Kind.Fraction) {
    line.push(inDigits(vulgar[text[start]!]!), start, start + 1)
    return pastPoint(text, start + 1)
  }
  line.push(inDigits(value), start, at)
  return pastPoint(text, at)
}

/** The end of the *th* of *4th*. */
function pastOrdinal(text: string, at: number): number {
  const letters = text.slice(at, at + 2).toLowerCase()
  return (letters === 'th' || letters === 'rd') && kindAt(text, at + 2) !== Kind.Letter ? at + 2 : at
}

/** Old printers set a point after a numeral: *take 2. ounces*. */
function pastPoint(text: string, at: number): number {
  return text[at] === '.' && kindAt(text, at + 1) === Kind.Space && isLower(text, at + 2) ? at + 1 : at
}

/** The fraction behind a whole number: `1/2` or `½`. */
function scanFraction(text: string, at: number): { value: number; end: number } | null {
  if (kindAt(text, at) === Kind.Fraction) return { value: vulgar[text[at]!]!, end: at + 1 }
  if (kindAt(text, at) !== Kind.Digit || (text[at - 1] !== '-' && text[at - 1] !== ' ')) return null
  const slash = pastDigits(text, at)
  // American printers set "2 1-2 cups" for two and a half.
  const set = text[slash] === '/' || (text[slash] === '-' && text[at - 1] === ' ')
  if (!set || slash - at > 3 || kindAt(text, slash + 1) !== Kind.Digit) return null
  const end = pastDigits(text, slash + 1)
  const value = numberIn(text.slice(at, slash)) / numberIn(text.slice(slash + 1, end))
  return value > 0 && value < 1 ? { value, end } : null
}

function pastDigits(text: string, start: number): number {
  let at = start
  while (kindAt(text, at) === Kind.Digit) at++
  return at
}

/** More than any number that means something in a kitchen, and still exact. */
const beyond = 1e15

/** The number that digits stand for; of longer ones it is known that they are too many. */
const numberIn = (digits: string): number => (digits.length > 15 ? beyond : Number(digits))

function isLower(text: string, at: number): boolean {
  const letter = text[at]
  return letter !== undefined && letter >= 'a' && letter <= 'z'
}

function scanMark(text: string, start: number, line: Line): number {
  if (kindAt(text, start) !== Kind.Hyphen) {
    line.push(marks[text[start]!]!, start, start + 1)
    return start + 1
  }
  let end = start + 1
  while (kindAt(text, end) === Kind.Hyphen) end++
  if (end - start > 1) line.push(mark.dash, start, end)
  // A hyphen inside a word only parts it; between numbers it means "to".
  else if (kindAt(text, start - 1) === Kind.Digit && kindAt(text, end) === Kind.Digit) line.push(mark.hyphen, start, end)
  return end
}

import type { ThingWordRow } from '../tables/index.js'
import type { Amount } from './amount.js'
import type { Line } from './line.js'
import { eggNames } from './names.js'
import { romanNumber } from './roman.js'
import { type Context, type Statement, statement } from './statement.js'
import { pastDescribing, severalOf, sharedThings, type Thing, thingAt } from './thing.js'
import { pastQualifiers } from './unit.js'
import { addedPart, rangeTail, type Value } from './value.js'
import { the } from './vocabulary.js'
import { digits, mark, Role } from './word.js'

/** Behind *like a*, *as a*, *the size of a* a thing is an example, and behind *makes* and *into* it is what the receipt yields. */
export function isExample(line: Line, start: number, article: boolean): boolean {
  const before = line.at(start - 1)
  if (!article) return before === the.into || before.text === 'make'
  if (before === the.as || before === the.like || before === the.than || before === the.for || before.text === 'bear') return true
  return before === the.of && line.is(start - 2, Role.Size | Role.Dimension | Role.Quantity)
}

function qualifierOf(line: Line, amount: Amount): string | null {
  const between = pastQualifiers(line, amount.end)
  return between.qualifier ?? amount.qualifier
}

const piecesBehind = new Set(['leaf', 'sprig', 'stalk', 'stick', 'branch', 'top', 'clove', 'bulb', 'pod'])

/** Pieces that are named behind their thing: *a sage leaf*, *two rosemary sprigs*. */
function pieceBehind(line: Line, thing: Thing): string | null {
  const piece = line.at(thing.end).measure
  // A yeast cake is a cake of yeast.
  const named = piece !== null && (piecesBehind.has(piece.label) || (piece.label === 'cake' && thing.row?.id === 'yeast'))
  return named && line.at(thing.end + 1) !== the.of ? piece.label : null
}

/** *an onion or two*: the far end of a range that stands behind its thing. */
export function orMore(line: Line, end: number): Value | null {
  const more = line.at(end) === the.or ? rangeTail(line, end) : null
  return more === null || line.at(more.end).measure !== null || thingAt(line, more.end, false) !== null ? null : more
}

/** A half or more behind the thing: *a pound of flour and a half*, *a nutmeg and half*. */
export function trailingPart(line: Line, at: number): { value: number; end: number } | null {
  const added = line.at(at) === the.and ? addedPart(line, at) : null
  if (added === null || line.at(added.end).measure !== null || line.at(added.end) === the.of || line.at(added.end) === the.as) return null
  return line.is(added.end, Role.Article | Role.Determiner) || thingAt(line, added.end, false) !== null ? null : added
}

/** *a hundred of sugar*: of what is not told one by one, a hundred is a weight. */
function byHundred({ start, low, high, qualifier, tale }: Amount, { name, end }: Thing): Statement {
  const face = tale === 'thousand' ? 1000 : 100
  return statement('measured', start, end, { amount: { low: low / face, high: high / face }, measure: tale, thing: name, qualifier })
}

/** *two lemons' juice* is that of two lemons: the fruit. */
function juiceOf(line: Line, { start, end }: Thing): ThingWordRow | null {
  const at = pastDescribing(line, start)
  const fruit = line.at(end - 1).text === 'juice' && end === at + 2 ? line.at(at).thing : null
  return fruit?.count === 'each' ? fruit : null
}

/** A plain count of things: *four lemons*, *half a nutmeg*, *an onion or two*, *a leg of veal*. */
export function countedAt(context: Context, amount: Amount): Statement | null {
  const { line } = context
  const { start } = amount
  if (amount.each || isExample(line, start, amount.article)) return null
  // "a little onion" is some of one; "two little onions" are small.
  if (amount.article && (line.at(amount.end) === the.little || line.at(amount.end + 1) === the.little)) return null
  const each = line.is(amount.end, Role.Each)
  const named = thingAt(line, each ? amount.end + (line.at(amount.end + 1) === the.of ? 2 : 1) : pastChoice(line, amount), false)
  if (named === null) return onesCounted(context, amount)
  const thing = each ? sharedThings(line, named, true) : named
  const fruit = juiceOf(line, thing)
  if (fruit !== null) {
    const juice = { amount: { low: amount.low, high: amount.high }, measure: 'none', thing: fruit.label, part: 'juice' }
    return statement('counted', start, thing.end, juice)
  }
  if (thing.row === null || thing.row.count === 'dish') return null
  let { end } = thing
  const { name } = thing
  const piece = pieceBehind(line, thing)
  if (thing.row.count === 'joint') {
    // A cut is counted with its beast: *a leg of pork*; *a leg* alone is not.
    if (!name.includes(' of ')) return null
  } else if (piece !== null) end++
  else if (thing.row.count === undefined && !isPlural(line, amount, thing) && !isBought(context, amount, thing))
    return amount.tale === null ? null : byHundred(amount, thing)
  const more = orMore(line, end)
  const added = more === null ? trailingPart(line, end) : null
  end = more?.end ?? added?.end ?? end
  const half = added?.value ?? 0
  return statement('counted', start, end, {
    amount: { low: amount.low + half, high: (more?.value ?? amount.high) + half },
    measure: piece ?? 'none',
    thing: name,
    qualifier: qualifierOf(line, amount),
    things: severalOf(thing),
    each,
    tale: amount.tale,
  })
}

/** Skips the *of* of *four of the largest lemons*; *two of the lemons* are some that were told before. */
function pastChoice(line: Line, { article, end }: Amount): number {
  const chosen = !article && line.at(end) === the.of && line.is(end + 1, Role.Determiner) && line.is(end + 2, Role.Describing)
  return chosen ? end + 1 : end
}

/** *a pound of almonds, and twenty bitter ones*: the next in the list; *in a dish or six small ones* speaks of dishes. */
function onesCounted({ line, last }: Context, { start, end, article, low, high, tale }: Amount): Statement | null {
  const ones = pastDescribing(line, end)
  if (
    article ||
    !last?.thing ||
    last.kind === 'comparison' ||
    start > last.end + 2 ||
    line.at(start - 1) === the.or ||
    line.at(ones) !== the.one ||
    ones === end
  )
    return null
  const name = last.thing
  const eggs = eggNames.has(name) ? { whole: low, yolks: 0, whites: 0 } : null
  return statement('counted', start, ones + 1, {
    amount: { low, high },
    measure: 'none',
    thing: name,
    qualifier: pastQualifiers(line, end).qualifier,
    eggs,
    tale,
  })
}

/** What says of a loaf that it was bought, and not that the receipt makes one. */
const ofBread = new Set(['white', 'stale', 'brown', 'wheaten', 'household', 'old', 'new'])

/** *a stale white loaf*: one loaf or roll counts where the words say of what bread, or where nothing else is told. */
function isBought({ line, phrase }: Context, { end }: Amount, { row, end: last }: Thing): boolean {
  if (row?.id !== 'loaf' && row?.id !== 'roll') return false
  for (let at = end; at < last; at++) if (ofBread.has(line.at(at).text)) return true
  return phrase
}

const uncounted = new Set(['water', 'juice', 'liquor', 'broth', 'syrup', 'oil', 'spirit'])

/** A mass may be counted by a number in so many words: *eight spinages*. */
function isPlural(line: Line, amount: Amount, thing: Thing): boolean {
  return (
    !amount.article && amount.high > 1 && !uncounted.has(thing.row?.label ?? thing.name) && line.text[line.end(thing.end - 1) - 1] === 's'
  )
}

/**
 * Whether a number counts what stands before it: nothing that it could count follows, as in *lemons, 2* and *nutmeg, ½ grated*. Behind *of*
 * (*of eggs vj and beat them*) and in figures (*eggs xx and sugar*) another entry of the list may.
 *
 * @param end where the thing ends that stands before the number
 */
export function countsBefore(line: Line, end: number, amount: Amount, of: boolean): boolean {
  if (amount.article || amount.each) return false
  if (amount.start !== end && !(line.at(end) === mark.comma && amount.start === end + 1)) return false
  let at = amount.end
  while (at < amount.end + 2 && line.is(at, Role.Describing)) at++
  if (line.is(at, Role.Mark) || line.at(at) === the.or) return true
  return line.at(amount.end) === the.and && (of || isInFigures(line, amount.start))
}

const isInFigures = (line: Line, at: number): boolean => line.at(at).text === digits || romanNumber(line.at(at).text) > 0

/** *lemons, 2*: in lists the number stands behind its thing. */
export function countBehind({ line, loose }: Context, amount: Amount): Statement | null {
  const last = loose.at(-1)
  if (last?.row?.count !== 'each' || !countsBefore(line, last.end, amount, line.at(last.start - 1) === the.of)) return null
  const eggs = eggNames.has(last.name) ? { whole: amount.low, yolks: 0, whites: 0 } : null
  return statement('counted', last.start, amount.end, {
    amount: { low: amount.low, high: amount.high },
    measure: 'none',
    thing: last.name,
    qualifier: amount.qualifier,
    eggs,
  })
}

import { alikeAt, weightGoesOnAt, weightOfAt } from './alike.js'
import { type Amount, amountAt } from './amount.js'
import { asMuchAt } from './as-much.js'
import { isInPowder } from './before.js'
import { countBehind, countedAt, isExample } from './counted.js'
import { type EggsFound, eggsAt } from './eggs.js'
import { heapBehind } from './heap.js'
import { heatWithoutOvenAt, ovenAt } from './heat.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { measuredAt } from './measured.js'
import { elidedWholeAt, withPart } from './portions.js'
import { pieceAt, sizeBehind } from './size.js'
import { lengthAt, thicknessAt } from './solid.js'
import { type Context, type Statement, statement } from './statement.js'
import { type Thing, thingAt, withParts } from './thing.js'
import { looseTimeAt } from './time.js'
import { isEmptyVessel } from './unit.js'
import { the } from './vocabulary.js'
import { Leads, mark, Role, type Word } from './word.js'

/** What a walk along a line finds. */
export interface Findings {
  readonly statements: Statement[]
  /** Things named without an amount. */
  readonly unmeasured: Thing[]
}

const numbers = Role.Cardinal | Role.Article | Role.Half | Role.Part | Role.Collective | Role.Each | Role.Qualifier
const starters =
  numbers |
  Role.Determiner |
  Role.Yolk |
  Role.White |
  Role.Alike |
  Role.Twice |
  Role.Weight |
  Role.Oven |
  Role.Named |
  Role.Size |
  Role.Vague |
  Role.Describing

/** Reads one line from left to right; each token is looked at by a bounded number of readers, each of which looks a bounded way ahead. */
export function readLine(line: Line, phrase: boolean): Findings {
  const context: Context = { line, measured: null, last: null, eggs: null, by: new Map(), every: null, loose: [], phrase }
  const found: Findings = { statements: [], unmeasured: [] }
  for (let at = 0; at < line.length; ) {
    const word = line.at(at)
    if (word === mark.stop) {
      settleLoose(context, found)
      context.measured = null
      at++
      continue
    }
    const begins = (word.roles & starters) !== 0 || (word.leads & Leads.Statement) !== 0
    const next = begins ? statementAt(context, at) : null
    if (next === null) {
      at = nameLoose(context, found, at)
      continue
    }
    if (phrase || !isYield(line, next)) take(context, found, next)
    at = Math.max(at + 1, next.end)
  }
  settleLoose(context, found)
  return found
}

/** *To make two gallons of orange wine*: what a receipt yields is no part of it. */
const isYield = (line: Line, { kind, start, thing }: Statement): boolean =>
  kind === 'measured' &&
  thing !== null &&
  (line.at(start - 1).text === 'make' || line.at(start - 1).text === 'brew') &&
  line.at(start - 2) === the.to

/** Adds a statement; things that it drew from before itself are no longer loose. */
function take(context: Context, found: Findings, next: Statement): void {
  if (next.kind === 'measured') {
    context.measured = next
    if (next.thing !== null && !next.implied) context.by.set(next.measure!, next.thing)
  }
  if (next.thing !== null) context.last = next
  if (next.eggs !== null) context.eggs = next
  if (next.each && next.thing !== null && !next.implied) context.every = next
  while (context.loose.length > 0 && context.loose.at(-1)!.end > next.start) context.loose.pop()
  settleLoose(context, found)
  // "a turkey of ten pounds" takes the turkey up.
  while (found.statements.length > 0 && found.statements.at(-1)!.start >= next.start) found.statements.pop()
  found.statements.push(next)
}

const particles = new Set(['out', 'up', 'off', 'down', 'all', 'very', 'into'])

/** Behind these stands a verb: *as it will bear* is no beer. */
const modal = new Set(['will', 'would', 'shall', 'should', 'can', 'could', 'may', 'might', 'must'])

/** Whether the word that names a thing does something else here: *peel them*, *roll it out*, *a sauce-pan*, *clear as amber*, *like jelly*. */
function isNoName(line: Line, { start, end }: Thing): boolean {
  if (end > start + 1) return false
  const next = line.at(end)
  if (next === the.it || next === the.them || isEmptyVessel(line, end)) return true
  const before = line.at(start - 1)
  if (modal.has(before.text)) return true
  if (before === the.as && line.is(start - 2, Role.Describing | Role.Heat | Role.White)) return true
  if (before === the.like && !line.is(start - 2, Role.Article | Role.Determiner)) return true
  // A word that may be a verb is one before what verbs take, unless something before it calls for a noun.
  const calls = Role.Article | Role.Determiner | Role.Describing | Role.Vague
  if (!line.is(start, Role.Plain) || line.is(start - 1, calls) || before === the.of || before === the.with) return false
  return line.is(end, Role.Article | Role.Determiner | Role.Cardinal) || particles.has(next.text)
}

function settleLoose(context: Context, found: Findings): void {
  if (context.loose.length === 0) return
  for (const thing of context.loose) if (thing.row?.count !== 'joint' && !isNoName(context.line, thing)) found.unmeasured.push(thing)
  context.loose = []
}

/** A thing named in passing. */
function nameLoose(context: Context, found: Findings, at: number): number {
  if (!context.line.is(at, Role.Named)) return at + 1
  const thing = thingAt(context.line, at, false)
  if (thing === null || thing.start !== at || thing.row?.count === 'dish') return at + 1
  if (isInPowder(context.line, thing.end - 1)) return thing.end
  // "as big as a pigeon": no pigeon goes in.
  if (context.line.is(at - 1, Role.Article) && isExample(context.line, at - 1, true)) return thing.end
  if (context.loose.length > 40) settleLoose(context, found)
  const whole = withParts(context.line, thing)
  context.loose.push(whole)
  return whole.end
}

/** Words of which one at least stands in a statement that begins with neither a number nor a measure. */
const hints =
  Role.Egg |
  Role.Yolk |
  Role.White |
  Role.Weight |
  Role.Alike |
  Role.Twice |
  Role.Size |
  Role.Quantity |
  Role.Dimension |
  Role.Oven |
  Role.Vague |
  Role.Qualifier

/** How far ahead the words of a statement are looked for before its reader is tried. */
const sight = 9

/** The statement that starts at a token, by the first reader that knows it. No reader is tried unless words of its kind are in sight. */
function statementAt(context: Context, at: number): Statement | null {
  const { line } = context
  const word = line.at(at)
  const roles = line.rolesAhead(at, sight)
  // Most words that describe or determine stand before nothing that is read.
  if ((word.roles & numbers) === 0 && (word.leads & (Leads.Measure | Leads.Statement)) === 0 && (roles & hints) === 0) return null
  if ((word.roles & Role.Oven) !== 0 || (context.phrase && word === the.fire)) return ovenAt(line, at)
  if ((roles & Role.Oven) !== 0 && startsHeat(line, at)) return null
  const comparison = comparisonAt(context, at, word, roles)
  if (comparison !== null) return withPart(context, comparison)
  const amount = amountAt(line, at)
  const eggs = (roles & (Role.Egg | Role.Yolk | Role.White)) !== 0 ? eggsAt(line, at, amount) : null
  if (eggs !== null) return eggStatement(at, eggs)
  // "large tablespoonful of yeast": lists leave the article out.
  const leads = line.is(at, Role.Qualifier) && !line.is(at, Role.Vague) ? word.leads | line.at(at + 1).leads : word.leads
  const told = amount !== null || (leads & Leads.Measure) !== 0 || word === the.ditto ? amountOrNameAt(context, at, amount) : null
  return withPart(context, told ?? elidedWholeAt(context, at, amount)) ?? vagueAt(context, at)
}

/** Statements that begin with an amount, or with the name of a measure. */
function amountOrNameAt(context: Context, at: number, amount: Amount | null): Statement | null {
  const { line } = context
  const leads = line.leadsAhead(at, sight)
  const measured = (leads & Leads.Measure) !== 0 ? pieceAt(context, at, amount) : null
  if (measured !== null) return measured
  return (
    measuredAt(context, at, amount) ??
    (amount === null
      ? null
      : (((leads & Leads.Length) !== 0 ? lengthAt(line, amount) : null) ?? countBehind(context, amount) ?? countedAt(context, amount)))
  )
}

/** The words before an oven belong to it: *a quick oven* is not a quick anything else. */
function startsHeat(line: Line, at: number): boolean {
  let oven = line.is(at, Role.Article | Role.Determiner) ? at + 1 : at
  while (oven < at + 6 && line.is(oven, Role.Heat | Role.Degree)) oven++
  return oven > at && line.is(oven, Role.Oven) && !line.is(at, Role.Oven)
}

/** What a likening may begin with: *their weight*, *an equal quantity*, *double the quantity*, *three quarters of its weight*. */
const likening =
  Role.Determiner | Role.Article | Role.Alike | Role.Twice | Role.Weight | Role.Cardinal | Role.Half | Role.Part | Role.Collective

function comparisonAt(context: Context, at: number, word: Word, roles: number): Statement | null {
  const { line, loose, phrase } = context
  const begins = (word.leads & Leads.Statement) !== 0
  const likens = (word.roles & likening) !== 0
  const sized = (roles & (Role.Size | Role.Quantity)) !== 0 || ((roles & Role.Qualifier) !== 0 && (phrase || loose.length > 0))
  return (
    (isAsAhead(line, at) ? asMuchAt(context, at) : null) ??
    ((roles & Role.Weight) !== 0 && (likens || (word.leads & Leads.Coin) !== 0) ? weightOfAt(context, at) : null) ??
    ((roles & (Role.Weight | Role.Alike | Role.Quantity | Role.Twice)) !== 0 && likens ? alikeAt(context, at) : null) ??
    (sized ? sizeBehind(context, at) : null) ??
    heapBehind(context, at) ??
    ((roles & Role.Dimension) !== 0 || begins ? thicknessAt(context, at) : null) ??
    (word === the.of ? weightGoesOnAt(context, at) : null) ??
    (begins ? (heatWithoutOvenAt(line, at) ?? looseTimeAt(line, at)) : null)
  )
}

/** *as much*, *half as much*, *three times as much*. */
function isAsAhead(line: Line, at: number): boolean {
  for (let ahead = at; ahead < at + 4; ahead++) if (line.at(ahead) === the.as || line.at(ahead) === the.so) return true
  return false
}

function eggStatement(start: number, { amount, eggs, thing, parted, qualifier, tale, contradiction, end }: EggsFound): Statement {
  const parts = contradiction === null ? eggs : null
  return statement(parted ? 'eggparts' : 'counted', start, end, {
    amount,
    measure: 'none',
    thing,
    eggs: parts,
    qualifier,
    tale,
    contradiction,
  })
}

/** *a few cloves*, *some blades of mace*; in a short phrase *a little salt* too. */
function vagueAt(context: Context, start: number): Statement | null {
  const { line } = context
  const at = line.is(start, Role.Article) ? start + 1 : start
  const word = line.at(at)
  if ((word.roles & Role.Vague) === 0) return null
  const few = word === the.few
  let next = at + 1
  if (line.at(next) === the.of) next++
  const unit = longestName(line, next, 'measure')
  if (!few && !context.phrase) return null
  const thing = thingAt(line, unit !== null && line.at(unit.end) === the.of ? unit.end + 1 : next, context.phrase)
  if (thing === null) return null
  return statement('vague', start, thing.end, {
    measure: unit !== null && line.at(unit.end) === the.of ? unit.row.label : word.text,
    thing: thing.name,
  })
}

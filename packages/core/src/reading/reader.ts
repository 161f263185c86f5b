import { alikeAt, asMuchAt, heapBehind, pieceAt, sizeBehind, weightOfAt } from './comparison.js'
import { countBehind, countedAt } from './counted.js'
import { type EggsFound, eggsAt } from './eggs.js'
import { heatWithoutOvenAt, ovenAt } from './heat.js'
import { measuredAt } from './measured.js'
import { lengthAt, thicknessAt } from './solid.js'
import { type Context, type Statement, statement } from './statement.js'
import { longestName, type Thing, thingAt } from './thing.js'
import { looseTimeAt } from './time.js'
import type { Line } from './tokens.js'
import { the } from './vocabulary.js'
import { mark, Role, type Word } from './word.js'

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
  Role.PartOf |
  Role.Dimension |
  Role.Describing

/** Words of the plain kind that may nevertheless begin a statement. */
const beginners: ReadonlySet<Word> = /* @__PURE__ */ new Set([
  the.as,
  the.so,
  the.to,
  the.all,
  the.over,
  the.after,
  the.when,
  the.bake,
  the.hot,
  the.thick,
  the.between,
  the.from,
  the.of,
])

/** Reads one line from left to right; each token is looked at by a bounded number of readers, each of which looks a bounded way ahead. */
export function readLine(line: Line, phrase: boolean): Findings {
  const context: Context = { line, measured: null, last: null, loose: [], phrase }
  const found: Findings = { statements: [], unmeasured: [] }
  for (let at = 0; at < line.length; ) {
    const word = line.at(at)
    if (word === mark.stop) {
      settleLoose(context, found)
      context.measured = null
      at++
      continue
    }
    const next = (word.roles & starters) !== 0 || beginners.has(word) ? statementAt(context, at) : null
    if (next === null) {
      at = nameLoose(context, found, at)
      continue
    }
    take(context, found, next)
    at = Math.max(at + 1, next.end)
  }
  settleLoose(context, found)
  return found
}

/** Adds a statement; things that it drew from before itself are no longer loose. */
function take(context: Context, found: Findings, next: Statement): void {
  if (next.kind === 'measured') context.measured = next
  if (next.thing !== null) context.last = next
  while (context.loose.length > 0 && context.loose.at(-1)!.end > next.start) context.loose.pop()
  settleLoose(context, found)
  found.statements.push(next)
}

function settleLoose(context: Context, found: Findings): void {
  for (const thing of context.loose) if (thing.row?.count !== 'joint') found.unmeasured.push(thing)
  context.loose.length = 0
}

/** A thing named in passing. */
function nameLoose(context: Context, found: Findings, at: number): number {
  if (!context.line.is(at, Role.Named)) return at + 1
  const thing = thingAt(context.line, at, false)
  if (thing === null || thing.start !== at || thing.row?.count === 'dish') return at + 1
  if (context.loose.length > 40) settleLoose(context, found)
  context.loose.push(thing)
  return thing.end
}

/** The statement that starts at a token, by the first reader that knows it. */
function statementAt(context: Context, at: number): Statement | null {
  const { line } = context
  const word = line.at(at)
  if ((word.roles & Role.Oven) !== 0) return ovenAt(line, at)
  if (startsHeat(line, at)) return null
  const comparison = comparisonAt(context, at)
  if (comparison !== null) return comparison
  const eggs = eggsAt(line, at)
  if (eggs !== null) return eggStatement(line, at, eggs)
  if ((word.roles & (numbers | Role.Named | Role.Size)) === 0 && word !== the.between && word !== the.from) return vagueAt(context, at)
  return withPart(
    line,
    pieceAt(context, at) ??
      measuredAt(context, at) ??
      lengthAt(context, at) ??
      countBehind(context, at) ??
      countedAt(context, at) ??
      vagueAt(context, at),
  )
}

/** The words before an oven belong to it: *a quick oven* is not a quick anything else. */
function startsHeat(line: Line, at: number): boolean {
  let oven = line.is(at, Role.Article | Role.Determiner) ? at + 1 : at
  while (oven < at + 6 && line.is(oven, Role.Heat | Role.Degree)) oven++
  return oven > at && line.is(oven, Role.Oven) && !line.is(at, Role.Oven)
}

function comparisonAt(context: Context, at: number): Statement | null {
  const { line } = context
  return (
    asMuchAt(context, at) ??
    weightOfAt(context, at) ??
    alikeAt(context, at) ??
    sizeBehind(context, at) ??
    heapBehind(context, at) ??
    thicknessAt(context, at) ??
    heatWithoutOvenAt(line, at) ??
    looseTimeAt(line, at)
  )
}

function eggStatement(line: Line, start: number, found: EggsFound): Statement {
  const behind = line.at(start - 1) === mark.comma ? start : start
  return statement(found.parted ? 'eggparts' : 'counted', behind, found.end, {
    amount: found.amount,
    measure: 'none',
    thing: 'egg',
    eggs: found.eggs,
    qualifier: found.qualifier,
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

/** Draws *the juice of* and its like into the statement that it stands before. */
function withPart(line: Line, next: Statement | null): Statement | null {
  if (
    next === null ||
    (next.kind !== 'counted' && next.kind !== 'priced') ||
    line.at(next.start - 1) !== the.of ||
    !line.is(next.start - 2, Role.PartOf)
  )
    return next
  let start = next.start - 2
  const part = line.at(start).text
  while (start > next.start - 6 && line.is(start - 1, Role.Describing | Role.Determiner | Role.Article)) start--
  return { ...next, start, part }
}

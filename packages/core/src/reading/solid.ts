import type { Amount } from './amount.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { type Context, once, type Statement, statement } from './statement.js'
import { thingAt } from './thing.js'
import { the } from './vocabulary.js'
import { Role } from './word.js'

/** A length: *two fingers broad*, *an inch and a half thick*. Parts of the body measure only with their dimension. */
export function lengthAt(line: Line, amount: Amount): Statement | null {
  if (amount.each) return null
  const unit = longestName(line, amount.end, 'length')
  if (unit === null) return null
  let { low, high } = amount
  let { end } = unit
  if (line.at(end) === the.and && line.is(end + 1, Role.Article) && line.is(end + 2, Role.Half | Role.Part)) {
    low += line.value(end + 2)
    high += line.value(end + 2)
    end += 3
  }
  const dimension = dimensionAt(line, end)
  if (dimension === 0 && unit.row.needs === 'dimension') return null
  return statement('length', amount.start, dimension || end, {
    amount: { low, high },
    measure: unit.row.label,
    qualifier: amount.qualifier,
  })
}

/** The end of *thick*, *in breadth*, *breadth*, or 0. */
function dimensionAt(line: Line, start: number): number {
  const at = line.at(start) === the.in || line.at(start) === the.of ? start + 1 : start
  return line.is(at, Role.Dimension) ? at + 1 : 0
}

/** *as thick as a crown piece*, *the thickness of a shilling*: a length; *as thick as cream*, *the consistency of honey*: how it pours. */
export function thicknessAt(context: Context, start: number): Statement | null {
  const { line } = context
  let at = start
  while (at < start + 2 && line.is(at, Role.Determiner | Role.Article)) at++
  const word = line.at(at)
  if (word === the.thickness || word === the.consistency || word.text === 'consistence') {
    return line.at(at + 1) === the.of ? likenessOf(context, start, at + 2, word !== the.thickness) : null
  }
  if (line.at(at) === the.as) at++
  if (line.at(at) !== the.thick && line.at(at).text !== 'stiff' && line.at(at).text !== 'thin') return null
  return line.at(at + 1) === the.as || line.at(at + 1) === the.like ? likenessOf(context, start, at + 2, line.at(at) !== the.thick) : null
}

/** What it is likened to: a solid gives a length, anything else a consistency. */
function likenessOf(context: Context, start: number, at: number, pours: boolean): Statement | null {
  const { line } = context
  let object = at
  while (object < at + 3 && line.is(object, Role.Article | Role.Determiner)) object++
  const solid = pours ? null : solidAt(line, object)
  if (solid !== null)
    return statement('length', start, solid.end, {
      amount: once,
      measure: `thickness of ${/^[aeiou]/.test(solid.noun) ? 'an' : 'a'} ${solid.noun}`,
    })
  const thing = thingAt(line, object, context.phrase)
  return thing === null || thing.row === null
    ? null
    : statement('consistency', start, thing.end, { measure: `consistency of ${thing.name}`, thing: thing.name })
}

function solidAt(line: Line, at: number): { noun: string; end: number } | null {
  const found = longestName(line, at, 'coin') ?? longestName(line, at, 'length') ?? solidObjectAt(line, at)
  return found === null ? null : { noun: found.row.label, end: found.end }
}

/** Objects have a thickness unless the same words name something that pours: *a pancake* has, *pancake batter* has none. */
function solidObjectAt(line: Line, at: number): ReturnType<typeof longestName<'object'>> {
  const object = longestName(line, at, 'object')
  const thing = thingAt(line, at, false)
  return object !== null && thing !== null && thing.end > object.end ? null : object
}

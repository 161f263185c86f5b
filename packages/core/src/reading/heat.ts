import { classOf, emptied } from './heat-class.js'
import { degreesBehind, testAt } from './heat-test.js'
import { comparatives, fromDegree, likenessAt, wordsIn } from './likeness.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { type Statement, statement } from './statement.js'
import { type Thing, thingAt } from './thing.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

const reach = 9

/** *after the household bread is drawn*, *when the manchet comes out*: the end of it, or 0. */
function afterBatchAt(line: Line, start: number): number {
  if (line.at(start) !== the.after && line.at(start) !== the.when) return 0
  let batch = false
  for (let at = start + 1; at < start + reach; at++) {
    const word = line.at(at)
    if ((word.roles & Role.Mark) !== 0) return 0
    if (
      word === the.bread ||
      word === the.loaf ||
      word === the.manchet ||
      word.thing?.count === 'dish' ||
      longestName(line, at, 'thing')?.row.id === 'bread'
    )
      batch = true
    else if (batch && emptied.has(word.text)) return at + 1
  }
  return 0
}

/** *be pretty quick*, *which must not be too hot*, *is of a drying heat*, behind the oven: the end of it, or 0. */
function predicateAt(line: Line, start: number): number {
  let at = start
  let verb = false
  while (at < start + reach) {
    const word = line.at(at)
    if (word === the.be || word === the.is || word.text === 'being') verb = true
    else if (verb) break
    else if (
      word !== the.which &&
      word !== the.that &&
      word !== the.must &&
      word !== the.should &&
      word !== the.not &&
      word !== mark.comma &&
      word !== the.let
    )
      break
    at++
  }
  const likeness = likenessAt(line, at, true)
  if (likeness > 0) return likeness
  if (!verb) return 0
  if (line.at(at) === the.of && line.is(at + 1, Role.Article)) at += 2
  let end = 0
  for (const first = at; at < first + 5 && line.is(at, Role.Degree | Role.Heat | Role.Half); at++) if (line.is(at, Role.Heat)) end = at + 1
  return end
}

/** *as for white bread*, *with manchet* behind an oven: the end of it, or 0. */
function companyAt(line: Line, start: number): number {
  const as = line.at(start) === the.as && line.at(start + 1) === the.for
  if (!as && line.at(start) !== the.with) return 0
  const thing = thingAt(line, as ? start + 2 : start + 1, false)
  return thing !== null && (as || isBatch(thing)) ? thing.end : 0
}

const isBatch = (thing: Thing): boolean => thing.row?.count === 'dish' || thing.row?.id === 'bread' || thing.row?.id === 'manchet'

/** What stands behind an oven and says how hot: all of it, or the oven's own end. */
function pastOven(line: Line, end: number): number {
  const next = line.at(end) === mark.comma || line.at(end) === mark.colon ? end + 1 : end
  return (
    afterBatchAt(line, next) ||
    likenessAt(line, next, true) ||
    testAt(line, next) ||
    predicateAt(line, end) ||
    companyAt(line, end) ||
    degreesBehind(line, next)
  )
}

/** Heat words, how much of them, and what joins two: *very slow*, *three parts cold*, *gentle or slow*. */
function belongs(line: Line, at: number): boolean {
  const part = line.is(at, Role.Cardinal) ? at + 1 : at
  if (line.at(part).text === 'part') return line.is(part + 1, Role.Heat) && line.is(part - 1, Role.Cardinal)
  if (line.at(at) === the.or || line.at(at) === the.and) return line.is(at - 1, Role.Heat) && line.is(at + 1, Role.Heat | Role.Degree)
  // "a quick, but not scorching, oven"
  if (line.at(at) === mark.comma || line.at(at) === the.but)
    return line.is(at - 1, Role.Heat | Role.Mark) && line.is(at + 1, Role.Heat | Role.Degree | Role.Oven)
  const nearly = line.at(at).qualifier === 'scant' && line.is(at + 1, Role.Heat)
  return nearly || (line.is(at, Role.Heat | Role.Degree) && line.at(at) !== the.about)
}

function hasHeat(line: Line, start: number, end: number): boolean {
  for (let at = start; at < end; at++) if (line.is(at, Role.Heat)) return true
  return false
}

/** The first token of the heat words before an oven, or the oven itself. */
function beforeOven(line: Line, oven: number): number {
  let at = oven
  // "in as hot an oven as for manchet"
  if (line.is(at - 1, Role.Article) && line.is(at - 2, Role.Heat) && line.at(at - 3) === the.as) return at - 3
  while (at > oven - 7 && belongs(line, at - 1)) at--
  return at < oven ? fromArticle(line, at) : at
}

/** All that stands between an article and the heat words bends them, known or not: *a tolerable quick oven*. */
function fromArticle(line: Line, heat: number): number {
  for (let at = heat; at > heat - 4 && !line.is(at - 1, Role.Mark | Role.Plain | Role.Cardinal | Role.Oven); at--)
    if (line.is(at - 1, Role.Article)) return at
  return heat
}

/** An oven and how hot it is to be; null where nothing says so. */
export function ovenAt(line: Line, oven: number): Statement | null {
  let start = beforeOven(line, oven)
  const adjective = hasHeat(line, start, oven)
  if (!adjective) start = oven
  if (line.is(start - 1, Role.Article | Role.Determiner)) start--
  // "if the oven is hot" and "as long as the oven is hot" tell of a heat, but ask for none.
  const conditional = line.at(start - 1).text === 'if' || line.at(start - 1) === the.as
  const behind = conditional ? 0 : pastOven(line, oven + 1)
  if (!adjective && behind === 0) return null
  if (line.at(start - 1) === the.not && line.at(start - 2) === the.let) start -= 2
  const end = behind > 0 ? behind : oven + 1
  return heatOf(line, start, end)
}

/** A heat told without its oven: *as hot as for bread*, *after the bread is drawn*, *bake it with tarts*, *bake at 400 degrees*. */
export function heatWithoutOvenAt(line: Line, start: number): Statement | null {
  const word = line.at(start)
  if (word === the.after || word === the.when) {
    const end = afterBatchAt(line, start)
    return end > 0 ? heatOf(line, start, end) : null
  }
  if (word === the.bake) return bakedWith(line, start)
  if (word === the.at) return bakedAt(line, start)
  if (word !== the.as && word !== the.hot && word !== the.half && word !== the.so && !comparatives.has(word.text)) return null
  const end = likenessAt(line, start, false)
  return end > 0 ? heatOf(line, fromDegree(line, start), end) : null
}

/** *bake it in tins at 375 degrees*. */
function bakedAt(line: Line, start: number): Statement | null {
  const end = degreesBehind(line, start + 1)
  if (end === 0) return null
  for (let at = start - 1; at > start - 16 && at >= 0 && line.at(at) !== mark.stop; at--)
    if (line.at(at) === the.bake) return heatOf(line, start, end)
  return null
}

function bakedWith(line: Line, start: number): Statement | null {
  const at = line.at(start + 1) === the.it || line.at(start + 1) === the.them ? start + 2 : start + 1
  if (line.at(at) !== the.with) return null
  const thing = thingAt(line, at + 1, false)
  if (thing === null || !isBatch(thing)) return null
  return statement('heat', start, thing.end, { heat: `with ${thing.name}`, heatClass: 'other' })
}

/** The statement of a heat, with its class. */
export function heatOf(line: Line, start: number, end: number): Statement {
  const words = wordsIn(line, start, end)
  return statement('heat', start, end, { heat: words.join(' '), heatClass: classOf(words) })
}

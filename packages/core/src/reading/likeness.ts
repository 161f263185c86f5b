import type { Line } from './line.js'
import { thingAt } from './thing.js'
import { the } from './vocabulary.js'
import { digits, Role } from './word.js'

const reach = 9

/** Heats that are told beside another: *slower than for bread*. */
export const comparatives: ReadonlySet<string> = new Set(
  'hotter quicker brisker fiercer sharper warmer stronger slower slacker cooler colder softer gentler milder'.split(' '),
)

/** How much hotter or slower, beside words of degree. */
const howMuch = new Set(['something', 'much', 'far', 'bit'])

/** The text of a stretch in modern spelling, without marks; numbers as they are written. */
export function wordsIn(line: Line, start: number, end: number): string[] {
  const words: string[] = []
  for (let at = start; at < end; at++) {
    const { text, roles } = line.at(at)
    if ((roles & Role.Mark) === 0) words.push(text === digits ? line.text.slice(line.start(at), line.end(at)) : text)
  }
  return words
}

const tellsDegree = (line: Line, at: number): boolean => line.is(at, Role.Degree) || howMuch.has(line.at(at).text)

/** The first of the words of degree that stand before a heat: *not so*, *a little*, *something*. */
export function fromDegree(line: Line, heat: number): number {
  let at = heat
  while (at > heat - 4 && tellsDegree(line, at - 1)) at--
  return at < heat && line.is(at - 1, Role.Article) ? at - 1 : at
}

/**
 * *as hot as for manchet*, *something slower than for bread*, *hot enough for pies*, *so hot as to colour paper*: the end of it, or 0.
 *
 * @param ofOven whether the words speak of an oven: *softer than butter* does not
 */
export function likenessAt(line: Line, start: number, ofOven: boolean): number {
  let at = line.is(start, Role.Article) && tellsDegree(line, start + 1) ? start + 1 : start
  while (at < start + 5 && (tellsDegree(line, at) || line.is(at, Role.Half)) && line.at(at) !== the.as && line.at(at) !== the.so) at++
  if (line.at(at) === the.as || line.at(at) === the.so) at++
  const compared = comparatives.has(line.at(at).text)
  if (line.at(at) !== the.hot && !compared && !(line.is(at, Role.Heat) && line.at(at + 1) === the.as)) return 0
  at++
  const than = at
  while (
    at < start + reach &&
    (line.at(at) === the.as || line.at(at) === the.than || line.at(at).text === 'then' || line.at(at).text === 'enough')
  )
    at++
  if (line.at(at) === the.for) return thingAt(line, line.is(at + 1, Role.Article) ? at + 2 : at + 1, true)?.end ?? 0
  // "hotter than bread requires"
  if (compared && ofOven && at > than) return thingAt(line, at, false)?.end ?? 0
  if (line.at(at) !== the.to) return 0
  if (line.at(at + 1) === the.bake) return thingAt(line, at + 2, false)?.end ?? 0
  for (let end = at + 1; end < at + reach; end++) if (line.at(end) === the.paper || line.at(end) === the.flour) return end + 1
  return 0
}

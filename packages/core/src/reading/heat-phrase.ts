import { heatOf } from './heat.js'
import { degreesBehind, testAt } from './heat-test.js'
import { comparatives } from './likeness.js'
import type { Line } from './line.js'
import type { Statement } from './statement.js'
import { thingAt } from './thing.js'
import { the } from './vocabulary.js'
import { digits, Role, type Word } from './word.js'

/** Words behind which a heat names what is baked at it. */
const before = new Set(['for', 'than', 'then', 'after', 'when', 'as', 'with'])

/** Dials have no words for a heat. */
const dials = new Set(['gas', 'regulo', 'mark'])

const isHeat = ({ text, roles }: Word): boolean => (roles & Role.Heat) !== 0 || comparatives.has(text)

/** Whether a thing is named that no heat is told by: *hot water* is no heat of an oven. */
function namesOther(line: Line): boolean {
  let told = false
  for (let at = 0; at < line.length; at++) {
    if (before.has(line.at(at).text)) told = true
    const thing = line.is(at, Role.Named) ? thingAt(line, at, false) : null
    if (thing !== null && thing.start === at && !told) return true
  }
  return false
}

/** What may be hot by the words for an oven. */
const hearths = new Set(['fire', 'heat', 'stove', 'furnace', 'kiln', 'hearth', 'temperature', 'baking', 'bake'])

/** Whether the heat is said of something that is no oven: *a moderate man*, *a hot summer*. */
function isSaidOfOther(line: Line): boolean {
  if (!line.is(0, Role.Article) || (line.rolesAhead(0, line.length) & Role.Oven) !== 0) return false
  let at = 1
  while (line.is(at, Role.Heat | Role.Degree) || comparatives.has(line.at(at).text)) at++
  const word = line.at(at)
  const goesOn = line.is(at, Role.Mark | Role.Oven | Role.Qualifier | Role.Cardinal) || before.has(word.text) || hearths.has(word.text)
  return at > 1 && !goesOn && line.is(at, Role.Named | Role.Plain) && word !== the.or && word !== the.and && word !== the.of
}

/** What paper, flour and the hand tell of an oven. */
const shows = new Set('brown yellow black scorch colour burn golden blacken count hold bear second'.split(' '))

/** *the paper browns in five minutes*, *count twenty with your hand in the oven*: words for a test, which may tell a time besides. */
export function isTestPhrase(line: Line): boolean {
  let tried = false
  let shown = false
  for (let at = 0; at < line.length; at++) {
    const word = line.at(at)
    if (testAt(line, at) > 0) return true
    if (word.text === 'hand') tried = true
    if (word === the.paper || word === the.flour || word.text === 'notepaper') tried = true
    if (shows.has(word.text)) shown = true
  }
  return tried && shown
}

/** A short phrase that as a whole names a heat, though no oven stands in it: *pretty hot*, *not too quick*, *as for tarts*, *gas mark 4*. */
export function heatPhrase(line: Line): Statement | null {
  if (line.length === 0) return null
  const whole = (): Statement => heatOf(line, 0, line.length)
  let heat = false
  for (let at = 0; at < line.length; at++) {
    const word = line.at(at)
    if (degreesBehind(line, at) > 0 || (dials.has(word.text) && line.at(at + 1).text === digits)) return whole()
    if (isHeat(word) || word === the.oven || word === the.fire || (word === the.as && line.at(at + 1) === the.for)) heat = true
  }
  return isTestPhrase(line) || (heat && !namesOther(line) && !isSaidOfOther(line)) ? whole() : null
}

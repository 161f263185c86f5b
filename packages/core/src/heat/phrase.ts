import { PottleError } from '../error.js'
import { nearestTo, sayNearest } from '../nearest.js'
import { heatRelations, heats } from '../tables/index.js'
import { convertDegrees, requireOvenHeat, toFahrenheit } from './degrees.js'
import type { Found } from './found.js'
import { gasMarkToFahrenheit } from './gas.js'
import { comparatives, grammatical, later, noHeats, ovens } from './grammar.js'
import { byAdjectives } from './mentions.js'
import { afterwards, asFor, byComparison, byEquation } from './relations.js'
import { heatNearest, heatRow } from './scale.js'
import { bySign } from './signs.js'
import { keyOf, type Word } from './words.js'

const degreesSaid =
  /(?<![\d.])(-?\d{1,5}(?:\.\d{1,20})?)\s{0,3}(?:(?:°|deg(?:rees?)?\.?)?\s{0,3}(?:of\s)?(f|c|r|fahr|fahrenheit|celsius|centigrade|r[eé]aumur)\b|°|degrees?\b)/i
const markSaid = /\b(?:gas(?:\s{1,3}mark)?|regulo|mark)\s{0,3}(¼|½|1\/4|1\/2|\d{1,2}(?:\.\d{1,2})?)(?![\d/])/i
const markFractions: Readonly<Record<string, number>> = { '¼': 0.25, '1/4': 0.25, '½': 0.5, '1/2': 0.5 }
const scaleLetters = { f: 'degF', c: 'degC', r: 'degR' } as const
const unscaled = 'No scale is named: read as Fahrenheit, by which English books count.'

/** Degrees or a gas mark, where the phrase states them: no word outweighs a figure. */
export function byDegrees(phrase: string, words: readonly Word[]): Found | undefined {
  const degrees = degreesSaid.exec(phrase)
  const mark = markSaid.exec(phrase)
  if (!degrees && !mark) return undefined
  const letter = (degrees?.[2]?.[0]?.toLowerCase() ?? 'f') as keyof typeof scaleLetters
  const notes = degrees && degrees[2] === undefined ? [unscaled] : []
  const celsius = degrees
    ? convertDegrees(Number(degrees[1]), scaleLetters[letter], 'degC')
    : convertDegrees(gasMarkToFahrenheit(markFractions[mark![1]!] ?? Number(mark![1])), 'degF', 'degC')
  requireOvenHeat('phrase', celsius)
  const degF = toFahrenheit(celsius)
  const used = words.map(({ at }) => at)
  return { heat: heatNearest(celsius).id, core: { low: degF, high: degF }, via: 'degrees', likelihood: 1, others: [], notes, used }
}

const coolest = 2

/** Adjectives and a cooling oven in one phrase: *a cool oven all night* is the cooling oven, *brisk, after the white bread is drawn* is brisk. */
function weighCooling(named: Found, cooling: Found): Found {
  const rank = heatRow(named.heat).rank
  const agrees = cooling.relation!.kind === 'overnight' ? rank <= coolest : Math.abs(rank - heatRow(cooling.heat).rank) <= 1
  const used = [...named.used, ...cooling.used]
  if (agrees) return { ...cooling, used }
  return {
    ...named,
    used,
    notes: [...named.notes, `The words also say "${cooling.relation!.label}": the oven is falling while the food is in it.`],
  }
}

/** What the words come to, whichever way they say it. */
export function findIn(words: readonly Word[], year: number | null): Found | undefined {
  const told = bySign(words) ?? byComparison(words, (rest) => findIn(rest, year)) ?? byEquation(words, year)
  if (told) return told
  const cooling = afterwards(words)
  const named = byAdjectives(words, year)
  if (cooling && named) return weighCooling(named, cooling)
  return named ?? cooling ?? asFor(words)
}

/** *Quick at first, then slow*: the two halves of a bake, parted where *then* does not stand for *than*. */
export function halves(words: readonly Word[]): readonly [readonly Word[], readonly Word[]] | undefined {
  const at = words.findIndex(({ key }, i) => i > 0 && later.has(key) && !comparatives.has(words[i - 1]!.key))
  return at > 0 ? [words.slice(0, at), words.slice(at + 1)] : undefined
}

/** A word that has meant several heats stands here once. */
const labels = [...new Set([...heats.flatMap(({ names }) => names.map(({ words }) => words)), ...heatRelations.map(({ label }) => label)])]

/** The error for words that name no heat: what was read, what was not, and the nearest heats. */
export function unreadable(phrase: string, words: readonly Word[]): PottleError {
  const told = words.filter(({ key }) => !grammatical.has(key))
  const sought = told.map(({ text }) => text).join(' ') || phrase
  const vessel = words.find(({ key }) => noHeats.has(key))
  const oven = words.find(({ key }) => ovens.has(key)) ?? { text: 'oven', key: keyOf('oven') }
  const why = vessel
    ? `"${vessel.text} ${oven.text}" is a kind of oven and not a heat`
    : `no heat of an oven is named by "${phrase.slice(0, 60)}"`
  const detail = `${why}${sayNearest(sought, labels, 5)}`
  const understood = words.filter(({ key }) => grammatical.has(key)).map(({ text }) => text)
  return new PottleError('unreadable', [{ parameter: 'phrase', detail }], {
    understood,
    unread: told.map(({ text }) => text),
    nearest: nearestTo(sought, labels, 5),
  })
}

import { toFahrenheit } from './degrees.js'
import { type Found, plainly } from './found.js'
import { negating } from './grammar.js'
import { type OvenSign, type PaperColour, readTest } from './tests.js'
import { keyOf, type Word, wordSet } from './words.js'

const papers = wordSet('paper notepaper')
const flours = wordSet('flour meal')
const brown = wordSet('brown browns browned scorch scorches scorched colour color')
const black = wordSet('black blacken blackens burn burns burnt flame flames')
const yellow = keyOf('yellow')
const pale = wordSet('light lightly pale delicate delicately slightly tinged')
const deep = wordSet('dark deep deeper chocolate')
const units: ReadonlyMap<string, number> = new Map([
  [keyOf('minute'), 60],
  [keyOf('minutes'), 60],
  [keyOf('second'), 1],
  [keyOf('seconds'), 1],
])
const numbers: ReadonlyMap<string, number> = new Map(
  (
    [
      ['a', 1],
      ['one', 1],
      ['two', 2],
      ['three', 3],
      ['four', 4],
      ['five', 5],
      ['six', 6],
      ['seven', 7],
      ['eight', 8],
      ['nine', 9],
      ['ten', 10],
      ['twelve', 12],
      ['fifteen', 15],
      ['twenty', 20],
      ['thirty', 30],
      ['forty', 40],
    ] as const
  ).map(([word, value]) => [keyOf(word), value]),
)
const [half, quarter, of, and] = ['half', 'quarter', 'of', 'and'].map(keyOf)
const hands = wordSet('hand arm')
/** A cook counts to a number, one a second. */
const counting = wordSet('count counting counted counts number tell reckon')

function colourOf(says: (set: ReadonlySet<string>) => boolean, words: readonly Word[]): PaperColour | undefined {
  if (words.some(({ key }) => key === yellow)) return says(pale) ? 'light-yellow' : 'dark-yellow'
  if (says(black)) return 'black'
  if (!says(brown)) return undefined
  if (says(deep)) return 'dark-brown'
  return says(pale) ? 'light-brown' : 'golden-brown'
}

function numberIn(word: Word | undefined): number | undefined {
  if (!word) return undefined
  return /^\d{1,2}$/.test(word.text) ? Number(word.text) : numbers.get(word.key)
}

/** *Half a minute*, *a quarter of a minute*, *a minute and a half*, *thirty seconds*. */
function secondsOf(words: readonly Word[]): number | undefined {
  const at = words.findIndex(({ key }) => units.has(key))
  if (at < 0) return undefined
  const key = (from: number): string | undefined => words[at + from]?.key
  const whole = numberIn(words[at - 1])
  if (whole === undefined) return undefined
  const part = key(-2) === half ? 0.5 : key(-2) === of && key(-3) === quarter ? 0.25 : 1
  const more = key(1) === and && key(3) === half ? 0.5 : 0
  return (whole * part + more) * units.get(words[at]!.key)!
}

/** *Count twenty with the hand in the oven*, or the seconds that it is borne. */
function countOf(words: readonly Word[]): number | undefined {
  const at = words.findIndex(({ key }) => counting.has(key))
  const told =
    at < 0
      ? undefined
      : words
          .slice(at + 1, at + 4)
          .map(numberIn)
          .find((number) => number !== undefined && number > 1)
  return told ?? secondsOf(words)
}

function byHand(words: readonly Word[]): Found | undefined {
  const seconds = countOf(words)
  if (seconds === undefined) return undefined
  return foundBy({ kind: 'hand', seconds }, words)
}

function foundBy(sign: OvenSign, words: readonly Word[]): Found | undefined {
  const reading = readTest(sign)
  if (!reading) return undefined
  const used = words.map(({ at }) => at)
  const [low, best, high] = [reading.value.low, reading.value.best, reading.value.high].map(toFahrenheit)
  return { ...plainly(reading.heat.id, 'test', used, [reading.advice]), core: { low: low!, best: best!, high: high! } }
}

/** Paper that keeps its colour: the oven is below the heat of the palest test. */
const uncoloured = 'slow'

/**
 * A heat told by a test: *an oven that browns white paper in five minutes*, *one that will not brown paper*, *where you can count twenty with
 * your hand in it*.
 */
export function bySign(words: readonly Word[]): Found | undefined {
  const says = (set: ReadonlySet<string>): boolean => words.some(({ key }) => set.has(key))
  const kind = says(papers) ? 'paper' : says(flours) ? 'flour' : undefined
  const colour = colourOf(says, words)
  if (!kind || !colour) return says(hands) ? byHand(words) : undefined
  if (says(negating)) {
    const used = words.map(({ at }) => at)
    return plainly(uncoloured, 'test', used, [`An oven that leaves ${kind} its colour is below the palest test.`])
  }
  const seconds = secondsOf(words)
  return foundBy(seconds === undefined ? { kind, colour } : { kind, colour, seconds }, words)
}

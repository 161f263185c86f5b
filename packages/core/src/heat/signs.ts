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
const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'].map(keyOf)

function colourOf(says: (set: ReadonlySet<string>) => boolean, words: readonly Word[]): PaperColour | undefined {
  if (words.some(({ key }) => key === yellow)) return says(pale) ? 'light-yellow' : 'dark-yellow'
  if (says(black)) return 'black'
  if (!says(brown)) return undefined
  if (says(deep)) return 'dark-brown'
  return says(pale) ? 'light-brown' : 'golden-brown'
}

function secondsOf(words: readonly Word[]): number | undefined {
  const at = words.findIndex(({ key }) => units.has(key))
  const before = words[at - 1]
  if (!before) return undefined
  const said = /^\d{1,2}$/.test(before.text) ? Number(before.text) : numbers.indexOf(before.key) + 1
  return said > 0 ? said * units.get(words[at]!.key)! : undefined
}

/** Paper that keeps its colour: the oven is below the heat of the palest test. */
const uncoloured = 'slow'

/** A heat told by a test: *an oven that browns white paper in five minutes*, *one that will not brown paper*. */
export function bySign(words: readonly Word[]): Found | undefined {
  const says = (set: ReadonlySet<string>): boolean => words.some(({ key }) => set.has(key))
  const kind = says(papers) ? 'paper' : says(flours) ? 'flour' : undefined
  const colour = colourOf(says, words)
  if (!kind || !colour) return undefined
  const used = words.map(({ at }) => at)
  if (says(negating)) return plainly(uncoloured, 'test', used, [`An oven that leaves ${kind} its colour is below the palest test.`])
  const seconds = secondsOf(words)
  const sign: OvenSign = seconds === undefined ? { kind, colour } : { kind, colour, seconds }
  const reading = readTest(sign)
  if (!reading) return undefined
  const [low, best, high] = [reading.value.low, reading.value.best, reading.value.high].map(toFahrenheit)
  return { ...plainly(reading.heat.id, 'test', used, [reading.advice]), core: { low: low!, best: best!, high: high! } }
}

import { comparatives } from './likeness.js'
import type { HeatClass } from './reading.js'

/** The class of a heat word that stands alone; what degrees it meant is for the tables of heats to say. */
const classes: Readonly<Record<string, HeatClass>> = {
  cool: 'cool',
  coolest: 'cool',
  cold: 'cool',
  warm: 'cool',
  lukewarm: 'cool',
  drying: 'other',
  slow: 'slow',
  slack: 'slow',
  slackish: 'slow',
  gentle: 'slow',
  soft: 'slow',
  mild: 'slow',
  temperate: 'slow',
  slowest: 'very-slow',
  moderate: 'moderate',
  middling: 'moderate',
  reasonable: 'moderate',
  steady: 'moderate',
  regular: 'moderate',
  soaking: 'moderate',
  solid: 'moderate',
  even: 'moderate',
  quickish: 'moderate-quick',
  quick: 'quick',
  brisk: 'quick',
  sharp: 'quick',
  smart: 'quick',
  lively: 'quick',
  quickest: 'very-hot',
  hot: 'hot',
  heated: 'hot',
  good: 'hot',
  strong: 'hot',
  hottest: 'very-hot',
  fierce: 'very-hot',
  scorching: 'very-hot',
  furious: 'very-hot',
  declining: 'falling',
  falling: 'falling',
  cooling: 'falling',
}

const lowered = new Set(['reasonable', 'pretty', 'moderately', 'tolerably', 'rather', 'reasonably', 'indifferently', 'fairly', 'somewhat'])

const raised = new Set(['very', 'exceedingly', 'extremely', 'most'])

const negating = new Set(['not', 'no', 'too', 'half', 'less', 'neither'])

export const emptied: ReadonlySet<string> = new Set([
  'draw',
  'drawn',
  'out',
  'withdrawn',
  'drew',
  'come',
  'comes',
  'came',
  'taken',
  'removed',
])

export function classOf(words: readonly string[]): HeatClass {
  const has = (word: string): boolean => words.includes(word)
  if (has('paper')) return 'test-paper'
  if (has('flour') && has('to')) return 'test-flour'
  if (words.some((word) => emptied.has(word)) && (has('after') || has('when'))) return 'after-bread'
  const negated = words.some((word) => negating.has(word) || comparatives.has(word))
  if (has('for') || has('to')) return negated ? 'other' : has('manchet') ? 'as-for-manchet' : has('bread') ? 'as-for-bread' : 'other'
  if (negated) return 'other'
  return gradeOf(words)
}

/** The class of the heat words themselves, with *very* and *pretty* taken into account. */
function gradeOf(words: readonly string[]): HeatClass {
  // A good soaking heat is a soaking one.
  const told = words.findIndex((word) => word in classes && word !== 'even' && word !== 'good')
  const at = told < 0 ? words.indexOf('good') : told
  const plain = classes[words[at] ?? ''] ?? 'other'
  if (words.some((word) => raised.has(word)))
    return plain === 'slow' || plain === 'cool' ? 'very-slow' : plain === 'quick' || plain === 'hot' ? 'very-hot' : plain
  if (words.some((word) => lowered.has(word)) && (plain === 'quick' || plain === 'hot')) return 'moderate-quick'
  return plain
}

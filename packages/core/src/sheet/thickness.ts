/** The thickness that an open quantity is to bring the rest to, found behind the thing in the text. */
import { consistencies } from '../tables/index.js'

/** A thickness as the text names it, and where its name ends. */
export interface Thickness {
  readonly name: string
  readonly end: number
}

/** So far behind the thing the words say what it is to become. */
const reach = 120
/** What may stand between a thing and its *as will make*: *as much cream, blood-warm, as will make it up*. */
const opens = /^(?:[\s,]{0,4}|,[^,]{1,40},\s{1,3})(?:as|to)\b/
/** Words that lead to a thickness: *like a batter*, *into a light paste*, *make it the thickness of cream*. */
const lead = String.raw`(?:like|(?:thick|thin|stiff|soft)(?:ness)?\s{1,3}(?:as|of|like)|consist(?:ence|ency)\s{1,3}of|into|make|(?:it|them|all|up)(?:\s{1,3}(?:to|be))?)`
const between = String.raw`\s{1,3}(?:(?:a|an|the|pretty|good|moderate|moderately)\s{1,3}){0,2}`
const names = consistencies
  .flatMap((row) => row.names)
  .sort((a, b) => b.length - a.length)
  .map((name) => name.replaceAll(' ', String.raw`\s{1,3}`))
const named = new RegExp(String.raw`\b${lead}${between}(${names.join('|')})\b`, 'i')

/**
 * The thickness named in the rest of the sentence behind a thing.
 *
 * @example thicknessBehind('milk as will make it like a batter, and stir', 4)   // { name: 'batter', end: 34 }
 */
export function thicknessBehind(text: string, end: number): Thickness | undefined {
  const sentence = text.slice(end, end + reach).split(/[.;:]/, 1)[0]!
  const met = opens.test(sentence) ? named.exec(sentence) : null
  return met ? { name: met[1]!.toLowerCase().replace(/\s+/g, ' '), end: end + met.index + met[0].length } : undefined
}

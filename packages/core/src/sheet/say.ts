/** How every rendering says the same thing. */
import type { Value } from '../answer.js'
import type { Sheet, SheetLine } from './sheet.js'

/** Three digits, as a reader compares them. */
const short = (value: number): string => String(Number(value.toPrecision(3)))

/** A text with its first letter large. */
export const capital = (text: string): string => (text === '' ? '' : text[0]!.toUpperCase() + text.slice(1))

/** `England, 1690`; the year as it was given, or that none was. */
export function saySetting({ setting }: Sheet): string {
  const place = setting.place.split('-').map(capital).join(' ')
  return `${place}, ${setting.year ?? 'no year given'}`
}

/** From here on grams are told in kilograms and millilitres in litres. */
const large = 2000
const larger: Readonly<Record<string, string>> = { g: 'kg', ml: 'litres' }

/** The unit that a value is read in, and how many of its base unit that is. */
function readIn({ best, unit }: Value): { readonly name: string; readonly of: number } {
  const name = best >= large ? larger[unit] : undefined
  return name ? { name: ` ${name}`, of: 1000 } : { name: unit === 'each' ? '' : ` ${unit}`, of: 1 }
}

/** `233 to 291 ml`; one figure where both ends are the same. */
export function sayBand(value: Value): string {
  const { name, of } = readIn(value)
  const [from, to] = [short(value.low / of), short(value.high / of)]
  return from === to ? `${short(value.best / of)}${name}` : `${from} to ${to}${name}`
}

/** `about 803 g (779 to 937 g, 90 times in 100)`. */
export function sayTotal(value: Value): string {
  const { low, best, high, coverage } = value
  const { name, of } = readIn(value)
  const figure = `${short(best / of)}${name}`
  return low === high ? figure : `about ${figure} (${sayBand(value)}, ${Math.round(coverage * 100)} times in 100)`
}

/** What goes in at a step: the thing and how much of it; eggs name themselves. */
export function sayGoing(line: SheetLine): string {
  const text = line.working?.text ?? 'as you judge'
  return isEgg(line) ? text : `${sayThing(line)} ${text}`
}

const isEgg = ({ eggs, working }: SheetLine): boolean => eggs !== null && working !== null

/** The thing of a line with its part: `lemon, the juice`. */
export function sayThing({ thing, part }: SheetLine): string {
  return [thing ?? 'not named', part ? `the ${part}` : ''].filter(Boolean).join(', ')
}

/** What to measure off, metric behind it where the kitchen's own units are not. */
export function sayWorking({ working }: SheetLine): string {
  if (!working) return 'as you judge'
  return working.metric ? `${working.text} (${working.metric})` : working.text
}

/** Why the sense was chosen, with its likelihood where it is not sure. */
export function sayChosen({ chosen }: SheetLine): string {
  if (!chosen) return ''
  const share = chosen.likelihood < 0.995 ? ` (${Math.round(chosen.likelihood * 100)} in 100)` : ''
  return `${chosen.label}${share}`
}

/** Why the sense was chosen, without what its label says already; empty where it says all. */
export function reasonBeside({ chosen }: SheetLine): string {
  if (!chosen) return ''
  const { reason, label } = chosen
  const [head] = label.split(';', 1)
  const rest = capital(reason.startsWith(head!) ? reason.slice(head!.length).replace(/^[.;, ]{1,3}/, '') : reason)
  return rest === '' || /[.!?]$/.test(rest) ? rest : `${rest}.`
}

/** Numbers in runs: 1, 3–5. */
export function runsOf(numbers: readonly number[]): readonly { readonly first: number; readonly text: string }[] {
  const runs: { first: number; last: number }[] = []
  for (const number of numbers) {
    const run = runs.at(-1)
    if (run && number === run.last + 1) run.last = number
    else runs.push({ first: number, last: number })
  }
  return runs.map(({ first, last }) => ({
    first,
    text: last - first > 1 ? `${first}–${last}` : first === last ? `${first}` : `${first}, ${last}`,
  }))
}

/** A list of numbers as a sentence has them: `lines 1, 2 and 5`. */
export function sayLines(numbers: readonly number[]): string {
  if (numbers.length === 0) return 'no line'
  const last = numbers.at(-1)!
  return numbers.length === 1 ? `line ${last}` : `lines ${numbers.slice(0, -1).join(', ')} and ${last}`
}

/** What the receipt names without an amount, each thing once. */
export function sayUnmeasured({ unmeasured }: Sheet): readonly string[] {
  return [...new Set(unmeasured.map(({ thing }) => thing))]
}

/** The figures of the batch, one to a line. */
export function sayBatch({ scale, totals, dishes, eggs, rounding }: Sheet): readonly string[] {
  const missing = totals.mass?.without ?? []
  return [
    `Scale: ${scale.text}`,
    totals.mass ? `Weight: ${sayTotal(totals.mass)}${missing.length > 0 ? `, without ${sayLines(missing)}` : ''}` : '',
    totals.volume ? `Volume, without the air in dry things: ${sayTotal(totals.volume)}` : '',
    dishes.text ? `Fills ${dishes.text}` : '',
    eggs ? `Eggs: ${eggs.text}` : '',
    rounding ?? '',
  ].filter(Boolean)
}

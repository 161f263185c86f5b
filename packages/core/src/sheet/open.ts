/** Quantities that a receipt leaves open: *so much cream as will make it like a batter*, worked out from the rest. */
import { assess } from '../assess.js'
import { bestOf, type Expression, sum, times } from '../bands/index.js'
import { PottleError } from '../error.js'
import type { Found, FoundThing, Reading, ReceiptReading } from '../reading/index.js'
import type { Sense } from '../senses/index.js'
import { findGood } from '../tables/index.js'
import { goodFor, isFixed, type Workshop } from './chosen.js'
import { kernelOf } from './kernel.js'
import { thicknessBehind } from './thickness.js'
import { type Met, type Worked, workLine } from './worked.js'

/** An open quantity and the thickness that it is to bring the rest to. */
export interface Open {
  readonly found: Found
  readonly thickness: string
}

const asMuch = /\b(?:as|so|soe)\s{1,3}m[uv]che?\b/i
/** So far before the thing the *as much* may stand. */
const reach = 24

const isA = (thing: string | null, name: string): boolean => (thing ? (findGood(thing)?.classes.includes(name) ?? false) : false)

function openFrom(text: string, { start: from, end: to, thing }: FoundThing): Open | undefined {
  const before = Math.max(0, from - reach)
  const much = isA(thing, 'meal') || isA(thing, 'liquid') ? asMuch.exec(text.slice(before, to)) : null
  const thickness = much ? thicknessBehind(text, to) : undefined
  if (!much || !thickness) return undefined
  const { name, end } = thickness
  const start = before + much.index
  const measure = `consistency of ${name}`
  const stated = { start, end, phrase: text.slice(start, end), amount: null, measure, thing, qualifier: null, eggs: null }
  return { found: { ...stated, kind: 'consistency', understood: [{ start, end }], unread: [] }, thickness: name }
}

/** The open quantities of a receipt that has flour to reckon them by. */
export function findOpen(text: string, { measures, unmeasured }: ReceiptReading): readonly Open[] {
  const floured = measures.some(({ thing }) => isA(thing, 'meal'))
  return unmeasured
    .map((thing) => (floured || isA(thing.thing, 'meal') ? openFrom(text, thing) : undefined))
    .filter((open) => open !== undefined)
}

/** The whole of a line by its likeliest sense; nothing where it can't be told. */
function likeliest({ kernel, base }: Worked, of: 'mass' | 'volume'): Expression {
  return times(kernel?.[of]?.[0]?.value ?? [], base)
}

/** One over a ratio, which is a number times unknowns. */
function over(ratio: Expression): Expression {
  return ratio.map(({ coefficient, factors }) => ({
    coefficient: 1 / coefficient,
    factors: factors.map(({ unknown, power }) => ({ unknown, power: -power })),
  }))
}

/** Flour in g and liquid in ml, as the lines before an open quantity have them. Eggs are liquid, as the printed ratios have them. */
function mixtureBefore(start: number, lines: readonly Worked[]): { readonly flour: Expression; readonly liquid: Expression } {
  const before = lines.filter(({ found }) => found.start < start)
  const has = (name: string) => (line: Worked) => line.kernel?.good?.classes.includes(name) ?? false
  return {
    flour: sum(...before.filter(has('meal')).map((line) => likeliest(line, 'mass'))),
    liquid: sum(...before.filter((line) => line.reading.eggs !== null || has('liquid')(line)).map((line) => likeliest(line, 'volume'))),
  }
}

/** What is wanting, by each sense of the thickness: ml of liquid to 1 g of flour. */
function sensesOf({ found, thickness }: Open, lines: readonly Worked[], { setting }: Workshop): readonly Sense[] {
  const { flour, liquid } = mixtureBefore(found.start, lines)
  const likeness: Reading = { ...found, kind: 'consistency', thing: null }
  return assess(likeness, setting).senses.map((sense) => {
    const { exact: _, ...rest } = sense
    const meal = isA(found.thing, 'meal')
    const value = meal ? sum(times(liquid, over(sense.value)), times(flour, -1)) : sum(times(flour, sense.value), times(liquid, -1))
    const label = `what brings the rest to a thickness like ${thickness}`
    return { ...rest, label, quantity: meal ? 'mass' : 'volume', value, whole: true, choice: `open:${found.start}`, standard: sense.id }
  })
}

/** Works an open quantity from the flour and the liquids named before it; sugar and fat do not count. */
export function workOpen(open: Open, number: number, lines: readonly Worked[], shop: Workshop, met: Met): Worked {
  const { found, thickness } = open
  if (isFixed(number, shop)) return workLine(found, { reading: found }, number, shop, met)
  const good = goodFor(found, shop)
  const known = { number, found, reading: found, estimate: true, base: 1, fixes: good.fixes }
  try {
    const senses = sensesOf(open, lines, shop)
    if (bestOf(senses[0]!.value) > 0) return { ...known, kernel: kernelOf(senses, good.value), problem: null }
    return { ...known, kernel: null, problem: `the rest is as thick or as thin as ${thickness} already, as far as it can be told` }
  } catch (error) {
    if (!(error instanceof PottleError)) throw error
    return { ...known, kernel: null, problem: error.faults.map(({ detail }) => detail).join('; ') }
  }
}

/** Quantities that a receipt leaves open: *so much cream as will make it like a batter*, worked out from the rest. */
import { bestOf, type Expression, power, spread, sum, times, type Unknown, unknown } from '../bands/index.js'
import type { Found, FoundThing, ReceiptReading } from '../reading/index.js'
import type { Sense } from '../senses/index.js'
import { type BatterRow, batters, findGood, type Quantity } from '../tables/index.js'
import { goodFor, isFixed, type Workshop } from './chosen.js'
import { kernelOf } from './kernel.js'
import { type Met, type Worked, workLine } from './worked.js'

/** An open quantity and the thickness that it is to bring the rest to. */
export interface Open {
  readonly found: Found
  readonly row: BatterRow
}

const asMuch = /\b(?:as|so|soe)\s{1,3}m[uv]che?\b/i
/** So far behind the thing the words say what it is to become. */
const reach = 120

const byLength: readonly { readonly name: string; readonly row: BatterRow }[] = batters
  .flatMap((row) => row.names.map((name) => ({ name, row })))
  .sort((a, b) => b.name.length - a.name.length)

const names = new RegExp(`\\b(?:${byLength.map(({ name }) => name.replaceAll(' ', '\\s{1,3}')).join('|')})\\b`, 'i')

/** The thickness named in the rest of the sentence behind a thing, and where its name ends. */
function thicknessBehind(text: string, end: number): { row: BatterRow; end: number } | undefined {
  const sentence = text.slice(end, end + reach).split(/[.;:]/, 1)[0]!
  if (!/^[\s,]{0,4}(?:as|to)\b/.test(sentence)) return undefined
  const met = names.exec(sentence)
  if (!met) return undefined
  const said = met[0].toLowerCase().replace(/\s+/g, ' ')
  return { row: byLength.find(({ name }) => name === said)!.row, end: end + met.index + met[0].length }
}

const isMeal = (thing: string | null): boolean => (thing ? (findGood(thing)?.classes.includes('meal') ?? false) : false)
const isLiquid = (thing: string | null): boolean => (thing ? (findGood(thing)?.classes.includes('liquid') ?? false) : false)

function openFrom(text: string, { end: named, start: from, thing }: FoundThing): Open | undefined {
  const before = Math.max(0, from - 24)
  const much = asMuch.exec(text.slice(before, named))
  const thickness = much && (isMeal(thing) || isLiquid(thing)) ? thicknessBehind(text, named) : undefined
  if (!much || !thickness) return undefined
  const { row, end } = thickness
  const start = before + much.index
  const phrase = text.slice(start, end)
  const measure = `as much as makes ${row.label}`
  const found: Found = {
    start,
    end,
    phrase,
    kind: 'consistency',
    amount: null,
    measure,
    thing,
    qualifier: null,
    eggs: null,
    understood: [{ start, end }],
    unread: [],
  }
  return { found, row }
}

/** The open quantities of a receipt that has flour to reckon them by. */
export function findOpen(text: string, { measures, unmeasured }: ReceiptReading): readonly Open[] {
  const floured = measures.some(({ thing }) => isMeal(thing))
  return unmeasured
    .map((thing) => (floured || isMeal(thing.thing) ? openFrom(text, thing) : undefined))
    .filter((open) => open !== undefined)
}

/** The whole of a line by its likeliest sense; nothing where it can't be told. */
function likeliest({ kernel, base }: Worked, of: 'mass' | 'volume'): Expression {
  return times(kernel?.[of]?.[0]?.value ?? [], base)
}

const isA = ({ kernel }: Worked, name: string): boolean => kernel?.good?.classes.includes(name) ?? false

/** ml that are wanting to so much flour, or g that are wanting to so much liquid: r is g of flour to 100 ml. */
function wanting(flour: Expression, liquid: Expression, ratio: Unknown, meal: boolean): Expression {
  return meal
    ? sum(times(times(liquid, ratio), 1 / 100), times(flour, -1))
    : sum(times(times(flour, power(ratio, -1)), 100), times(liquid, -1))
}

function senseOf({ row, found }: Open, value: Expression, quantity: Quantity): Sense {
  const { low, best, high } = row.flour
  const step = {
    text: row.note ?? row.label,
    factor: `${best} g of flour to 100 ml (${low} to ${high})`,
    grade: row.grade,
    checked: row.checked,
    sources: row.source,
  }
  const label = `what brings the rest to ${row.label}`
  return {
    id: `open.${row.id}`,
    label,
    likelihood: 1,
    quantity,
    value,
    steps: [step],
    whole: true,
    choice: `open:${found.start}`,
    standard: row.id,
  }
}

/**
 * Works an open quantity from the likeliest senses of the flour and the liquids named before it.
 *
 * Eggs count as liquid, as the printed ratios have them; sugar and fat do not count.
 */
export function workOpen(open: Open, number: number, lines: readonly Worked[], shop: Workshop, met: Met): Worked {
  const { found, row } = open
  if (isFixed(number, shop)) return workLine(found, { reading: found }, number, shop, met)
  const before = lines.filter((line) => line.found.start < found.start)
  const flour = sum(...before.filter((line) => isA(line, 'meal')).map((line) => likeliest(line, 'mass')))
  const wet = before.filter((line) => line.reading.eggs !== null || isA(line, 'liquid'))
  const liquid = sum(...wet.map((line) => likeliest(line, 'volume')))
  const meal = isMeal(found.thing)
  const value = wanting(flour, liquid, unknown(`batter:${row.id}`, spread(row.flour)), meal)
  const good = goodFor(found, shop)
  const known = { number, found, reading: found, estimate: true, base: 1, fixes: good.fixes }
  if (bestOf(value) <= 0) return { ...known, kernel: null, problem: `the rest comes to ${row.label} already, as far as it can be told` }
  return { ...known, kernel: kernelOf([senseOf(open, value, meal ? 'mass' : 'volume')], good.value), problem: null }
}

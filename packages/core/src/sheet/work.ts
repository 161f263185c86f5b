import { scaleBand } from '../bands/index.js'
import { badOption, requireFields } from '../error.js'
import { checkOptions } from '../options.js'
import { readReceipt } from '../reading/index.js'
import type { Setting } from '../setting.js'
import { dataset } from '../tables/index.js'
import { cautionsOf, notesOf, roundingOf } from './about.js'
import { bakesOf } from './bake.js'
import { ownEgg, sumEggs } from './eggs.js'
import { fitDishes } from './fit.js'
import { fixesOf } from './fixes.js'
import { startFootnotes } from './footnotes.js'
import { type Telling, tellLine } from './lines.js'
import { orderOf } from './order.js'
import { ovensOf } from './oven.js'
import { type CheckedPlan, checkPlan, type Plan } from './plan.js'
import { unmeasuredOf, workLines } from './receipt.js'
import { scaleFor } from './scale.js'
import type { Sheet, Total } from './sheet.js'
import { totalOf, totalRestsOn } from './totals.js'
import { warmthsOf } from './warmth.js'

/** What a caller may say beside the text. */
export interface SheetOptions {
  /** A year, or a date in EDTF level 1. */
  readonly year?: number | string | null | undefined
  /** A place's id; `england` where none is given. */
  readonly place?: string | undefined
  readonly title?: string | undefined
  readonly plan?: Plan | undefined
  /** How much of the probability the bands hold; 0.9 where none is given. */
  readonly coverage?: number | undefined
}

const longestTitle = 300

function checkTitle(title: unknown): string {
  if (title === undefined) return 'A receipt'
  if (typeof title === 'string' && title.trim() !== '' && title.length <= longestTitle) return title
  throw badOption('title', `give a title of at most ${longestTitle} characters, or none`)
}

function checkText(text: unknown): string {
  if (typeof text !== 'string') throw badOption('text', 'give the words of a receipt as text')
  if (text.trim() === '') throw badOption('text', 'the text is empty; give the words of a receipt')
  return text
}

type Sum = Omit<Total, 'sources'> | null

function scaledTotal(total: Sum, factor: number, sources: readonly number[]): Total | null {
  return total && { ...total, ...scaleBand(total, factor), sources }
}

function sheetFrom(text: string, title: string, plan: CheckedPlan, setting: Setting, coverage: number): Sheet {
  const reading = readReceipt(text)
  const lines = workLines(text, reading, { setting, fixed: plan.fixed })
  const [mass, room] = [totalOf(lines, 'mass', coverage), totalOf(lines, 'room', coverage)]
  const scale = scaleFor(plan, lines, mass, room, reading.serves)
  const [egg, footnotes] = [ownEgg(plan), startFootnotes()]
  const known: Telling['told'] = new Map()
  const told = lines.map((line) => tellLine(line, { plan, factor: scale.factor, coverage, egg, footnotes, told: known }))
  const weight = scaledTotal(mass, scale.factor, footnotes.cite(totalRestsOn(lines, 'mass')))
  const volume = scaledTotal(room, scale.factor, footnotes.cite(totalRestsOn(lines, 'room')))
  const dishes = fitDishes(plan.dishes, volume, footnotes)
  const oven = ovensOf(reading, setting, plan, footnotes)
  const warmths = warmthsOf(reading, setting, footnotes)
  const unmeasured = unmeasuredOf(reading, lines)
  return {
    title,
    setting: { year: setting.from === setting.to ? setting.from : setting.year, place: setting.places[0]! },
    units: plan.units,
    scale,
    lines: told.map(({ line }) => line),
    unmeasured,
    totals: { mass: weight, volume },
    dishes,
    eggs: sumEggs(
      told.map(({ cracked }) => cracked).filter((cracked) => cracked !== null),
      egg,
    ),
    oven,
    warmths,
    bake: bakesOf({ title, text, lines, times: reading.times, ovens: oven, fits: dishes.fits, room: room?.best ?? null }, plan, footnotes),
    order: orderOf(
      text,
      told.map(({ line }) => line),
      reading.times,
    ),
    rounding: roundingOf(told),
    notes: notesOf(lines, setting, oven, text),
    cautions: cautionsOf(text, lines, unmeasured, oven),
    sources: footnotes.list(),
    fixed: fixesOf(plan.fixed, lines),
    text,
    dataset,
  }
}

/**
 * Works a whole receipt: from running prose in period spelling to a sheet that a kitchen can cook from and a scholar can check.
 *
 * Each measured thing is a line with its period words, the sense chosen and why, what to measure off, and its band; the same pint, egg or
 * spoon in several lines is the same unknown, so that the totals have honest bands. The text is kept to the last character.
 *
 * @param text the words of the receipt; they may hold no measure at all, and the sheet then says so
 * @throws PottleError `bad-option` that names each option or field of the plan that is wrong, and both of two fixes that contradict each
 * other; `no-answer` where the plan asks for what the receipt can't tell, such as a dish filled by a receipt without a volume
 * @example workSheet('Take a pint of cream and ten eggs, leaving out four of the whites', { year: 1690, plan: { scale: '1/2' } }).lines[0].working.text   // '240 ml'
 */
export function workSheet(text: string, options: SheetOptions = {}): Sheet {
  const words = checkText(text)
  requireFields('options', options)
  const title = checkTitle(options.title)
  const { setting, coverage } = checkOptions({ year: options.year, place: options.place, coverage: options.coverage })
  return sheetFrom(words, title, checkPlan(options.plan ?? {}), setting, coverage)
}

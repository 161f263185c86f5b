import { PottleError } from '../error.js'
import type { Content } from '../heat/index.js'
import { type BakeDish, type BakePlan, bakePlan } from '../heat/index.js'
import type { FoundTime } from '../reading/index.js'
import { bakeFoods, bakeGoods } from '../tables/index.js'
import { commonPair, type Vessel } from './dish.js'
import type { Footnotes } from './footnotes.js'
import type { CheckedPlan } from './plan.js'
import type { DishFit, SheetBake, SheetOven } from './sheet.js'
import type { Worked } from './worked.js'

/** A time stands for the heat that it is said with when no more than this lies between them, in characters. */
const nearby = 100
/** Words that say the receipt bakes small things. */
const smallWords = /\b(?:small|smal|little|litle|patt(?:y|ies)|tartlets?|cups?|buns?|wigg?s)\b/i

function dishOf({ filling }: Vessel, full: number): BakeDish | undefined {
  if (!filling) return undefined
  const { base, length, width, deep } = filling
  const depth = deep * full
  // An oval heats as the round one of its area does, nearly.
  return base === 'ellipse'
    ? { shape: 'round', size: { diameter: Math.sqrt(length * width), depth } }
    : { shape: 'box', size: { length, width, depth } }
}

const massOf = (lines: readonly Worked[], is: (line: Worked) => boolean): number =>
  lines.filter(is).reduce((sum, { kernel, base }) => sum + (kernel?.bands(0.9).mass?.best ?? 0) * base, 0)

/** What kind of food the batch is, so that heat is reckoned as it goes through it: by its name, else by what is in it. */
function foodOf(title: string, lines: readonly Worked[]): string {
  const words = ` ${title.toLowerCase().replace(/[^a-z]{1,20}/g, ' ')} `
  const named = bakeFoods.find(
    ({ id, names }) => !['batter', 'bread', 'custard', 'pastry'].includes(id) && names.some((name) => words.includes(` ${name} `)),
  )
  if (named) return named.id
  const has =
    (name: string) =>
    (line: Worked): boolean =>
      line.kernel?.good?.classes.includes(name) ?? false
  const whole = massOf(lines, () => true)
  if (massOf(lines, has('meal')) > whole / 4) return lines.some(has('barm')) ? 'bread' : 'batter'
  if (massOf(lines, has('meat')) > whole / 3) return 'meat-pie'
  const setting = massOf(lines, (line) => line.reading.eggs !== null || has('dairy')(line))
  return setting > whole / 4 ? 'custard' : 'pastry'
}

function contentsOf(lines: readonly Worked[]): readonly Content[] {
  const eggs = lines.some(({ reading }) => reading.eggs !== null)
  const milk = lines.some(({ kernel }) => kernel?.good?.classes.includes('dairy') && kernel.good.classes.includes('liquid'))
  return [...(eggs ? (['egg'] as const) : []), ...(milk ? (['milk'] as const) : [])]
}

const gap = (a: { start: number; end: number }, start: number, end: number): number => Math.max(0, start - a.end, a.start - end)

/** The time that is said with a heat. */
function timeWith({ start, end }: SheetOven, times: readonly FoundTime[]): number | undefined {
  if (start === null || end === null) return undefined
  const near = times.filter((time) => time.minutes !== null && gap(time, start, end) <= nearby)
  const [nearest] = near.sort((a, b) => gap(a, start, end) - gap(b, start, end))
  return nearest && (nearest.minutes!.low + nearest.minutes!.high) / 2
}

/** A time to start from: the receipt's own, else that of a table of the 1920s and 30s for goods of that name. */
interface Known {
  readonly minutes: number
  readonly said: string
  readonly sources: (typeof bakeGoods)[number]['source']
}

function knownTime(title: string, oven: SheetOven, times: readonly FoundTime[]): Known | undefined {
  const stated = timeWith(oven, times)
  if (stated !== undefined) return { minutes: stated, said: `the receipt's own ${stated} minutes`, sources: [] }
  const words = ` ${title.toLowerCase().replace(/[^a-z]{1,20}/g, ' ')} `
  const rows = bakeGoods.flatMap((row) => row.names.filter((name) => words.includes(` ${name} `)).map((name) => ({ row, name })))
  const [longest] = rows.sort((a, b) => b.name.length - a.name.length)
  if (!longest) return undefined
  const { minutes, label, source } = longest.row
  return {
    minutes: (minutes[0] + minutes[1]) / 2,
    said: `${minutes.join(' to ')} minutes for ${label} in tables of about 1930`,
    sources: source,
  }
}

/** What bakes, and how long the receipt gives it. */
export interface Baking {
  readonly title: string
  readonly text: string
  readonly lines: readonly Worked[]
  readonly times: readonly FoundTime[]
  readonly ovens: readonly SheetOven[]
  readonly fits: readonly DishFit[]
}

function planned(run: () => BakePlan): BakePlan | undefined {
  try {
    return run()
  } catch (error) {
    // An oven too cool to set the dish has no time to give.
    if (error instanceof PottleError && error.code === 'no-answer') return undefined
    throw error
  }
}

function bakeOf(fit: DishFit, plan: BakePlan, note: string, footnotes: Footnotes, known: Known): SheetBake {
  const { minutes, core, signs, warnings, sources } = plan
  return {
    dish: fit.label,
    minutes: { early: minutes.early, best: minutes.nominal, late: minutes.late },
    text: plan.text,
    core: core ? `${core.degC[0].toFixed(0)} °C (${core.degF[0]} °F) at the middle` : null,
    signs,
    note: [note, ...warnings].join(' '),
    sources: footnotes.cite([...known.sources, ...sources]),
  }
}

/** How long each dish of the plan bakes; none where the receipt names no heat, or neither a time nor goods whose time is known. */
export function bakesOf({ title, text, lines, times, ovens, fits }: Baking, plan: CheckedPlan, footnotes: Footnotes): readonly SheetBake[] {
  const [oven] = ovens
  const known = oven && knownTime(title, oven, times)
  if (!oven || !known || !(known.minutes > 0)) return []
  const [small, large] = commonPair()
  const reference = smallWords.test(`${title} ${text}`) ? small : large
  const food = foodOf(title, lines)
  const vessels = plan.dishes.length > 0 ? plan.dishes : [small, large]
  const note = `From ${known.said}, taken to be for a ${reference.label} filled ${Math.round(reference.filling!.deep)} mm deep.`
  return fits.flatMap((fit, i) => {
    const to = dishOf(vessels[i]!, fit.full)
    if (!to) return []
    const from = { ...dishOf(reference, 1)!, minutes: known.minutes, celsius: oven.value.best }
    const bake = planned(() => bakePlan({ food, from, to, contains: contentsOf(lines), fan: plan.oven === 'fan' }))
    return bake ? [bakeOf(fit, bake, note, footnotes, known)] : []
  })
}

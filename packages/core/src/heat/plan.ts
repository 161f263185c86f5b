import { badOption, noAnswer, requireFields, requireWord } from '../error.js'
import { type BakeFoodRow, bakeFoods, type Citation, doneness, type Spread } from '../tables/index.js'
import { firstTerm } from './conduction.js'
import { coverage, requireNumber, requireOvenHeat, requirePositive, tidy } from './degrees.js'
import { type BakeDish, type Pace, paceOf } from './dish.js'
import { fanTime, usualFanRule } from './fan.js'
import { assumptionsOf, sameHeat, warningsFor } from './plan-notes.js'
import { type Content, type CoreTemperature, coreFor } from './safety.js'
import { bestOfHeat, type HeatName, heatNearest, heatOfRank, nameOf } from './scale.js'
import { type OvenSettings, ovenSettings } from './settings.js'

/** A dish whose time is known, and the one whose time is wanted. */
export interface BakePlanOptions {
  /** `minutes` in an oven of `celsius` without a fan. */
  readonly from: BakeDish & { readonly minutes: number; readonly celsius: number }
  /** `celsius` where another oven is meant than that of `from`. */
  readonly to: BakeDish & { readonly celsius?: number }
  /** `batter`, `custard`, `bread`, `joint` ... or a dish of that kind. */
  readonly food: string
  /** What is in it that decides how hot its middle must become, beyond what the food is known to hold. */
  readonly contains?: readonly Content[]
  /** A fan oven: its setting and its earlier look. */
  readonly fan?: boolean
  /** One of `allFanRules()`. */
  readonly fanRule?: string
}

/** How long a dish bakes, how hot, and how a cook knows that it is done. */
export interface BakePlan {
  readonly food: string
  /** `early` is when to look first, `late` when to look for what went wrong. */
  readonly minutes: { readonly early: number; readonly nominal: number; readonly late: number }
  readonly text: string
  /** The oven without a fan, in degC. */
  readonly celsius: number
  readonly heat: HeatName
  readonly settings: OvenSettings
  readonly fan: boolean
  /** The power of the thickness that the time was scaled by. */
  readonly exponent: Spread
  /** How many times as long heat needs to reach the middle, if it went by conduction alone. */
  readonly ratio: number
  readonly signs: readonly string[]
  /** Null where nothing in it calls for one. */
  readonly core: CoreTemperature | null
  readonly assumptions: readonly string[]
  readonly warnings: readonly string[]
  readonly sources: readonly Citation[]
}

function foodOf(name: string): BakeFoodRow {
  const sought = requireWord('food', name).trim().toLowerCase()
  const row = bakeFoods.find((food) => food.id === sought) ?? bakeFoods.find((food) => food.names.includes(sought))
  if (!row)
    throw badOption(
      'food',
      `"${sought.slice(0, 40)}" is not a food that is planned for; give one of ${bakeFoods.map(({ id }) => id).join(', ')}`,
    )
  return row
}

/** W/(m² K) between the air of a still oven and a dish: the middle of the 10 to 30 that ovens have. Judgement. */
const surface = 20

/** How long the middle takes in an oven, up to a factor that dish and food share: ln of the leading term (Carslaw & Jaeger 1959, §3.11). */
function slowness({ conductivity, start, done }: BakeFoodRow, { depth }: Pace, celsius: number): number {
  const { coefficient } = firstTerm('slab', (surface * depth) / 2000 / conductivity)
  return Math.log((coefficient * (celsius - start)) / (celsius - done))
}

function requireBaking(parameter: string, celsius: number, { label, done }: BakeFoodRow): number {
  requireOvenHeat(parameter, celsius)
  if (celsius <= done + sameHeat)
    throw noAnswer(parameter, `an oven of ${celsius} degC never brings the middle of ${label} to ${done} degC`)
  return celsius
}

/** A dish deeper than this many times the other wants a cooler oven, or its outside is done before its middle (tables of the 1930s, fruit cake). */
const deepest = 2

/** The oven one step of the scale lower. */
function stepDown(celsius: number): number {
  const { rank, id } = heatNearest(celsius)
  return celsius - (bestOfHeat(id) - bestOfHeat(heatOfRank(rank - 1).id))
}

function chooseOven({ from, to }: BakePlanOptions, paces: readonly [Pace, Pace]): { readonly celsius: number; readonly lowered: boolean } {
  if (to.celsius !== undefined) return { celsius: to.celsius, lowered: false }
  const lowered = paces[1].depth > deepest * paces[0].depth
  return { celsius: lowered ? stepDown(from.celsius) : from.celsius, lowered }
}

function scale(minutes: number, ratio: number, exponent: Spread, oven: number): BakePlan['minutes'] {
  // Time goes as thickness to the power n, and the rate as thickness to the power -2.
  const times = [exponent.low, exponent.best, exponent.high].map((n) => minutes * ratio ** (n / 2) * oven)
  return { early: Math.min(...times), nominal: times[1]!, late: Math.max(...times) }
}

/**
 * The minutes of a bake as a cook reads them.
 *
 * @example sayMinutes({ early: 28.4, nominal: 31, late: 35.2 })   // 'about 31 minutes; look first at 28, and expect it by 36'
 */
export function sayMinutes({ early, nominal, late }: BakePlan['minutes']): string {
  return `about ${Math.round(nominal)} minutes; look first at ${Math.floor(early)}, and expect it by ${Math.ceil(late)}`
}

const round = (minutes: number): number => tidy(Math.round(minutes * 10) / 10)

/**
 * How long a dish bakes, from the time of another dish of the same food: heat conduction scales it, with a band for what conduction leaves out.
 *
 * @param options sizes in mm, g or ml; temperatures in degC
 * @returns minutes `early`, `nominal` and `late`, the settings, the signs that it is done and the stated core temperature
 * @throws PottleError `bad-option` for a dish without a size, an unknown shape or food; `no-answer` for an oven too cool to bake it
 * @example bakePlan({ food: 'custard', from: { shape: 'tart', size: { diameter: 70, depth: 25 }, minutes: 30, celsius: 176.7 }, to: { shape: 'pie', size: { diameter: 220, depth: 35 } } }).minutes   // { early: 50.8, nominal: 55.4, late: 72.1 }
 */
export function bakePlan(options: BakePlanOptions): BakePlan {
  const { from, to, fan = false, fanRule = usualFanRule, contains = [] } = requireFields('options', options)
  if (!from || !to) throw badOption(from ? 'to' : 'from', 'give a dish with its shape and size')
  const food = foodOf(options.food)
  requirePositive('from.minutes', requireNumber('from.minutes', from.minutes), 'minutes')
  const paces = [paceOf(from, 'from'), paceOf(to, 'to')] as const
  requireBaking('from.celsius', from.celsius, food)
  const { celsius, lowered } = chooseOven(options, paces)
  requireBaking('to.celsius', celsius, food)
  const ratio = paces[0].rate / paces[1].rate
  // The same dish in the same oven takes the same time; another oven changes it as the leading term does.
  const oven = celsius === from.celsius ? 1 : slowness(food, paces[1], celsius) / slowness(food, paces[1], from.celsius)
  const minutes = scale(from.minutes, ratio, food.exponent, oven)
  const early = round(fan ? fanTime(minutes.early, fanRule) : minutes.early)
  const [nominal, late] = [round(minutes.nominal), round(minutes.late)]
  const core = coreFor(food.core, contains)
  return {
    food: food.id,
    minutes: { early, nominal, late },
    text: sayMinutes({ early, nominal, late }),
    celsius: tidy(celsius),
    heat: nameOf(heatNearest(celsius)),
    settings: ovenSettings({ low: celsius, best: celsius, high: celsius, coverage }, fanRule),
    fan,
    exponent: food.exponent,
    ratio: tidy(ratio),
    signs: food.signs.map((sign) => doneness.find((row) => row.id === sign)!.sign),
    core,
    assumptions: assumptionsOf(food, { lowered, moved: to.celsius !== undefined, fan }),
    warnings: warningsFor(food, celsius),
    sources: [...food.source, ...(core?.sources ?? [])],
  }
}

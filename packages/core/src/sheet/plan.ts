import { badOption, show } from '../error.js'
import { type Faults, gatherFaults } from '../faults.js'
import { findUnit, unitIds } from '../modern/index.js'
import { sayNearest } from '../nearest.js'
import { type EggClassRow, eggClasses, type Quantity } from '../tables/index.js'
import { checkDishes, type Dish, type Vessel } from './dish.js'
import { type CheckedFixed, checkFixed, type Fixed } from './fixed.js'
import { countUpTo, nameIn, numberIn, refuseUnknown, requireObject } from './number.js'

/** The one thing that there is least of: all the rest is scaled to it. */
export interface Limit {
  readonly thing: string
  readonly amount: number | string
  /** A modern unit: `g`, `ml`, `cup-us`; `each` for eggs and for what is counted. */
  readonly unit: string
}

/** What the kitchen has and wants. One of scale, guests and limit scales the receipt; a dish does where none of them is given. */
export interface Plan {
  /** A factor: `0.5`, `'1/3'`. */
  readonly scale?: number | string | undefined
  /** How many are to be fed; `serves` says how many the receipt feeds, else its own words do, else that is estimated from its weight. */
  readonly guests?: number | undefined
  readonly serves?: number | undefined
  readonly dish?: Dish | string | readonly (Dish | string)[] | undefined
  readonly limit?: Limit | undefined
  readonly units?: 'metric' | 'us' | 'uk' | undefined
  /** A modern class of egg: `egg-us-large`. */
  readonly eggClass?: string | undefined
  readonly oven?: 'conventional' | 'fan' | 'gas' | undefined
  readonly fixed?: Fixed | undefined
}

/** A plan that was checked. */
export interface CheckedPlan {
  readonly scale: number | null
  readonly guests: number | null
  readonly serves: number | null
  readonly limit: { readonly thing: string; readonly amount: number; readonly unit: string; readonly quantity: Quantity } | null
  readonly dishes: readonly Vessel[]
  readonly units: 'metric' | 'us' | 'uk'
  readonly eggClass: EggClassRow
  readonly oven: 'conventional' | 'fan' | 'gas'
  readonly fixed: CheckedFixed
}

type Units = CheckedPlan['units']
const allUnits: readonly Units[] = ['metric', 'us', 'uk']
const ovens: readonly CheckedPlan['oven'][] = ['conventional', 'fan', 'gas']

const fields = ['scale', 'guests', 'serves', 'dish', 'limit', 'units', 'eggClass', 'oven', 'fixed']
/** The egg of the nearest shop, where the plan names none. */
const usualEgg = { metric: 'egg-eu-m', uk: 'egg-uk-m', us: 'egg-us-large' } as const
const mostGuests = 100_000

function oneOf<Name extends string>(at: string, value: unknown, names: readonly Name[]): Name {
  const name = names.find((one) => one === value)
  if (name === undefined) throw badOption(at, `${show(value)} won't do; choose ${names.join(', ')}`)
  return name
}

const checkScale = (value: unknown): number => numberIn('plan.scale', value, 0.001, 1000, 'or a fraction such as "1/3"')

function checkLimit(given: unknown): CheckedPlan['limit'] {
  requireObject('plan.limit', given)
  refuseUnknown('plan.limit', given, ['thing', 'amount', 'unit'])
  const { thing, unit } = given
  if (typeof thing !== 'string' || thing.trim() === '')
    throw badOption('plan.limit.thing', 'name the thing that there is least of, such as cream')
  const row = typeof unit === 'string' ? findUnit(unit) : undefined
  if (!row) throw badOption('plan.limit.unit', `${show(unit)} is not a unit of these tables${sayNearest(nameIn(unit), unitIds())}`)
  const amount = numberIn('plan.limit.amount', given.amount, 0.001, 1e6)
  return { thing: thing.trim().toLowerCase(), amount, unit: row.id, quantity: row.quantity }
}

function checkEggClass(given: unknown, units: Units): EggClassRow {
  const id = given ?? usualEgg[units]
  const row = eggClasses.find((one) => one.id === id)
  if (row) return row
  const ids = eggClasses.map((one) => one.id)
  throw badOption('plan.eggClass', `${show(id)} is not a class of egg${sayNearest(nameIn(id), ids)}`)
}

/** Two ways to scale, or two eggs, can't both rule. */
function refuseContradictions(plan: Plan): void {
  const ways = (['scale', 'guests', 'limit'] as const).filter((way) => plan[way] !== undefined)
  if (ways.length > 1) throw badOption(`plan.${ways[1]}`, `plan.${ways[0]} and plan.${ways[1]} both scale the receipt; give one of them`)
  if (plan.serves !== undefined && plan.guests === undefined)
    throw badOption('plan.serves', 'it tells how many the receipt feeds, which scales nothing without plan.guests')
  if (plan.eggClass !== undefined && plan.fixed?.egg !== undefined)
    throw badOption('plan.fixed.egg', 'plan.eggClass and plan.fixed.egg contradict each other; give one of them')
}

function read(plan: Plan, faults: Faults): CheckedPlan {
  const absent = <Value>(given: unknown, check: () => Value): Value | null => (given === undefined ? null : (faults.check(check) ?? null))
  const units = faults.check(() => oneOf('plan.units', plan.units ?? 'metric', allUnits)) ?? 'metric'
  faults.check(() => refuseContradictions(plan))
  return {
    scale: absent(plan.scale, () => checkScale(plan.scale)),
    guests: absent(plan.guests, () => countUpTo('plan.guests', plan.guests, mostGuests)),
    serves: absent(plan.serves, () => countUpTo('plan.serves', plan.serves, mostGuests)),
    limit: absent(plan.limit, () => checkLimit(plan.limit)),
    dishes: absent(plan.dish, () => checkDishes(plan.dish, 'plan.dish')) ?? [],
    units,
    eggClass: faults.check(() => checkEggClass(plan.eggClass, units)) ?? eggClasses[0]!,
    oven: faults.check(() => oneOf('plan.oven', plan.oven ?? 'conventional', ovens)) ?? 'conventional',
    fixed: faults.check(() => checkFixed(faults, plan.fixed ?? {}, 'plan.fixed')) ?? noneFixed,
  }
}

const noneFixed: CheckedFixed = { standards: new Map(), sizes: new Map(), lines: new Map(), densities: new Map(), egg: null, oven: null }

/** @throws PottleError `bad-option` that names every field that is wrong and what would be right */
export function checkPlan(plan: unknown): CheckedPlan {
  requireObject('plan', plan)
  refuseUnknown('plan', plan, fields)
  const faults = gatherFaults()
  const checked = read(plan as Plan, faults)
  faults.settle()
  return checked
}

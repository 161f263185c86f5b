import { PottleError } from '../error.js'
import type { Content } from '../heat/index.js'
import { type BakeDish, type BakePlan, type BakePlanOptions, bakePlan, sayMinutes } from '../heat/index.js'
import type { FoundTime } from '../reading/index.js'
import { bakeFoods } from '../tables/index.js'
import { type Batch, type Reference, referenceFor } from './bake-reference.js'
import { type KnownTime, knownTime } from './bake-time.js'
import { commonPair, type Vessel } from './dish.js'
import type { Footnotes } from './footnotes.js'
import type { CheckedPlan } from './plan.js'
import type { DishFit, SheetBake, SheetOven } from './sheet.js'
import type { Worked } from './worked.js'

function dishOf(filling: Vessel['filling'], full: number): BakeDish | undefined {
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

/** What bakes, and how long the receipt gives it. */
export interface Baking extends Batch {
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

/** The receipt's own dish may have been shallower or deeper by this part than the one it is taken for. Judgement. */
const otherwise = 1.25

/** One dish of the plan, the time that is known, and the dish it is known of. */
interface Baked {
  readonly fit: DishFit
  readonly vessel: Vessel
  readonly reference: Reference
  readonly known: KnownTime
  readonly celsius: number
}

/** How long a dish bakes by a time that is known of the reference, filled so many times as deep as that. */
function planBy(
  { fit, vessel, reference, celsius }: Baked,
  minutes: number,
  deep: number,
  options: Pick<BakePlanOptions, 'food' | 'contains' | 'fan'>,
): BakePlan | undefined {
  const [from, to] = [dishOf(reference.vessel, deep), dishOf(vessel.filling, fit.full)]
  return from && to && planned(() => bakePlan({ ...options, from: { ...from, minutes, celsius }, to }))
}

function bakeOf(
  baked: Baked,
  options: Pick<BakePlanOptions, 'food' | 'contains' | 'fan'>,
  note: string,
  footnotes: Footnotes,
): SheetBake | undefined {
  const { fit, known } = baked
  const { low, high } = known.minutes
  const plan = planBy(baked, (low + high) / 2, 1, options)
  if (!plan) return undefined
  const { core, signs, warnings, sources } = plan
  const cooler =
    plan.celsius < baked.celsius - 1 ? `So deep a dish wants a cooler oven: its time is for ${Math.round(plan.celsius)} °C.` : ''
  const sooner = planBy(baked, low, otherwise, options) ?? plan
  const later = planBy(baked, high, 1 / otherwise, options) ?? plan
  const early = Math.min(plan.minutes.early, sooner.minutes.early)
  const late = Math.max(plan.minutes.late, later.minutes.late)
  return {
    dish: fit.deep === null ? fit.label : `${fit.label}, filled ${Math.round(fit.deep)} mm deep`,
    minutes: { early, best: plan.minutes.nominal, late },
    text: sayMinutes({ early, nominal: plan.minutes.nominal, late }),
    core: core ? `${core.degC[0].toFixed(0)} °C (${core.degF[0]} °F) at the middle` : null,
    signs,
    note: [note, cooler, ...warnings].filter(Boolean).join(' '),
    sources: footnotes.cite([...known.sources, ...sources]),
  }
}

/** Why a larger dish may bake sooner than a smaller one. */
function depthNote(fits: readonly DishFit[], bakes: readonly SheetBake[]): string {
  const ordered = fits.map((fit, i) => ({ fit, best: bakes[i]!.minutes.best })).sort((a, b) => a.fit.volume - b.fit.volume)
  const sooner = ordered.find(({ fit, best }, i) => ordered.slice(0, i).some((one) => one.best > best + 1 && one.fit.deep! > fit.deep!))
  return sooner ? `The ${sooner.fit.label} is filled less deep than the smaller one, and heat has less far to go in it.` : ''
}

/** How long each dish of the plan bakes; none where the receipt names no heat, or neither a time nor goods whose time is known. */
export function bakesOf(baking: Baking, plan: CheckedPlan, footnotes: Footnotes): readonly SheetBake[] {
  const { title, lines, times, ovens, fits } = baking
  const [oven] = ovens
  const known = oven && knownTime(title, oven, times)
  if (!oven || !known || !(known.minutes.low > 0)) return []
  const [small, large] = commonPair()
  const reference = referenceFor(baking, oven, known)
  const vessels = plan.dishes.length > 0 ? plan.dishes : [small, large]
  const options = { food: foodOf(title, lines), contains: contentsOf(lines), fan: plan.oven === 'fan' }
  const note = `From ${known.said}, taken to be for ${reference.said}, a quarter more or less.`
  const baked = fits.flatMap((fit, i) => {
    const bake = bakeOf({ fit, vessel: vessels[i]!, reference, known, celsius: oven.value.best }, options, note, footnotes)
    return bake ? [{ fit, bake }] : []
  })
  const bakes = baked.map(({ bake }) => bake)
  const why = depthNote(
    baked.map(({ fit }) => fit),
    bakes,
  )
  return why ? bakes.map((bake) => ({ ...bake, note: `${bake.note} ${why}` })) : bakes
}

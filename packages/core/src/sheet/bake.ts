import { PottleError } from '../error.js'
import type { Content } from '../heat/index.js'
import { type BakeDish, type BakePlan, type BakePlanOptions, bakePlan, sayMinutes } from '../heat/index.js'
import type { FoundTime, Range } from '../reading/index.js'
import { bakeFoods, bakeGoods } from '../tables/index.js'
import { commonPair, type Vessel } from './dish.js'
import type { Footnotes } from './footnotes.js'
import type { CheckedPlan } from './plan.js'
import type { DishFit, SheetBake, SheetOven } from './sheet.js'
import type { Worked } from './worked.js'

/** A time stands for the heat that it is said with when no more than this lies between them, in characters. */
const nearby = 100
/** What may be baked in, or baked, small or large. */
const bakeable =
  '(?:ones?|pies?|tarts?|tins?|pans?|dish(?:es)?|mou?lds?|coff[iy]ns?|loa(?:f|ves)|cakes?|puddings?|pasties|custards?|biscuits?)'
/** Words that say the receipt bakes small things: *little pies*, *small round cakes*, but not *beat it small* with *a little salt*. */
const smallWords = new RegExp(
  String.raw`\b(?:(?:smalle?|smale?|litt?le|lytt?[ey]ll?)\s{1,3}(?:[a-z]{1,12}\s{1,3})?${bakeable}|patt(?:y|ies)|tartlets?|cups|buns?|wigg?s)\b`,
  'i',
)

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

/** Words near the oven that say that several things stand in it. */
const several = /\b(?:them|'em|hem|theym?|[þy]em|these|loaves|pies|tarts|cakes|puddings|custards|tins|pans|dishes)\b/i

/** A batch in one round vessel is taken to be a third as deep as it is across. Judgement. */
const deepness = 1 / 3
/** More than this, in ml, was divided before it went into the oven. Judgement. */
const mostInOne = 20_000

/** What the receipt's own time is taken to be of. */
interface Reference {
  readonly vessel: Vessel['filling']
  readonly said: string
}

const common = ({ label, filling }: Vessel): Reference => ({
  vessel: filling,
  said: `a ${label} filled ${Math.round(filling!.deep)} mm deep`,
})

/** The whole batch in one vessel. */
function wholeOf(volume: number): Reference {
  const across = 10 * Math.cbrt((4 * volume) / (Math.PI * deepness))
  const deep = across * deepness
  const said = `the whole of it in one round, ${Math.round(across / 10)} cm across and ${Math.round(deep / 10)} cm deep`
  return { vessel: { base: 'ellipse', length: across, width: across, deep }, said }
}

/** The words between the points before and behind a stretch of the text, as far as they are near. */
function clauseAround(text: string, start: number, end: number): string {
  const before = text
    .slice(Math.max(0, start - nearby), start)
    .split(/[.;:]/)
    .at(-1)!
  return before + text.slice(start, end) + text.slice(end, end + nearby).split(/[.;:]/, 1)[0]!
}

/** What the receipt bakes at once: small things, several things, or all of it as one. */
function referenceFor({ title, text, lines, room }: Baking, { start, end }: SheetOven, known: Known): Reference {
  const [small, large] = commonPair()
  if (bakesSmall(title, text, lines)) return common(small)
  const clause = start === null || end === null ? '' : clauseAround(text, start, end)
  const whole = known.own && room !== null && room <= mostInOne && !several.test(clause)
  return whole ? wholeOf(room) : common(large)
}

/** Whether the receipt bakes small things, by its words outside its measures: a small cupful is none. */
function bakesSmall(title: string, text: string, lines: readonly Worked[]): boolean {
  let rest = `${title}. `
  let from = 0
  for (const { found } of lines) {
    rest += `${text.slice(from, Math.max(from, found.start))}·`
    from = Math.max(from, found.end)
  }
  return smallWords.test(rest + text.slice(from))
}

const gap = (a: { start: number; end: number }, start: number, end: number): number => Math.max(0, start - a.end, a.start - end)

/** The time that is said with a heat. */
function timeWith({ start, end }: SheetOven, times: readonly FoundTime[]): Range | undefined {
  if (start === null || end === null) return undefined
  const near = times.filter((time) => time.minutes !== null && gap(time, start, end) <= nearby)
  const [nearest] = near.sort((a, b) => gap(a, start, end) - gap(b, start, end))
  return nearest?.minutes ?? undefined
}

const sayRange = ({ low, high }: Range): string => (low === high ? String(low) : `${low} to ${high}`)

/** A time to start from: the receipt's own, else that of a table of the 1920s and 30s for goods of that name. */
interface Known {
  readonly minutes: Range
  readonly said: string
  /** Whether the receipt itself states it. */
  readonly own: boolean
  readonly sources: (typeof bakeGoods)[number]['source']
}

function knownTime(title: string, oven: SheetOven, times: readonly FoundTime[]): Known | undefined {
  const stated = timeWith(oven, times)
  if (stated !== undefined) return { minutes: stated, said: `the receipt's own ${sayRange(stated)} minutes`, own: true, sources: [] }
  const words = ` ${title.toLowerCase().replace(/[^a-z]{1,20}/g, ' ')} `
  const rows = bakeGoods.flatMap((row) => row.names.filter((name) => words.includes(` ${name} `)).map((name) => ({ row, name })))
  const [longest] = rows.sort((a, b) => b.name.length - a.name.length)
  if (!longest) return undefined
  const { minutes, label, source } = longest.row
  return {
    minutes: { low: minutes[0], high: minutes[1] },
    said: `${minutes.join(' to ')} minutes for ${label} in tables of about 1930`,
    own: false,
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
  /** The whole receipt in ml, unscaled; null where it can't be told. */
  readonly room: number | null
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
  readonly known: Known
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
  const early = Math.min(plan.minutes.early, planBy(baked, low, otherwise, options)!.minutes.early)
  const late = Math.max(plan.minutes.late, planBy(baked, high, 1 / otherwise, options)!.minutes.late)
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

import type { AnswerSense } from '../answer.js'
import { type Band, scaleBand } from '../bands/index.js'
import { tellStep } from '../cite/index.js'
import { type Cracked, findUnit, type OwnEgg } from '../modern/index.js'
import type { Sense } from '../senses/index.js'
import { baseUnits, type Citation, exactRatio, type Quantity } from '../tables/index.js'
import type { Footnotes } from './footnotes.js'
import type { Kernel, Option } from './kernel.js'
import type { CheckedPlan } from './plan.js'
import { noteOf } from './remarks.js'
import type { Chosen, SheetLine, Working } from './sheet.js'
import { toValue } from './totals.js'
import type { Worked } from './worked.js'
import { countedOut, eggsOut, knownOf, measuredOut, spannedOut } from './working.js'

/** What all lines of a sheet are told with. */
export interface Telling {
  readonly plan: CheckedPlan
  readonly factor: number
  readonly coverage: number
  readonly egg: OwnEgg
  readonly footnotes: Footnotes
  /** Lines told so far, by what they have of which kernel. */
  readonly told: Map<Kernel, Map<string, Told>>
}

/** A line as the sheet has it, and the eggs that it cracks. */
export interface Told {
  readonly line: SheetLine
  readonly cracked: Cracked | null
}

/** All the digits of a sense, where neither it nor the number of the words leaves a doubt. */
function exactDigits({ sense }: Option, { reading, base }: Worked, quantity: Quantity): string | null {
  const { amount } = reading
  const ranged = amount !== null && amount.low !== amount.high
  if (sense.exact === undefined || ranged || sense.quantity !== quantity) return null
  return exactRatio(sense.exact).times(base).toSignificantDigits(15).toString()
}

function answerSense(option: Option, band: Band, worked: Worked, quantity: Quantity): AnswerSense {
  const { sense, weight } = option
  const { low, best, high } = scaleBand(band, worked.base)
  const { id, label, steps } = sense
  const exact = exactDigits(option, worked, quantity)
  return { id, label, likelihood: Number(weight.toFixed(4)), unit: baseUnits[quantity], low, best, high, exact, steps: steps.map(tellStep) }
}

/** Why a sense was chosen: what usage says of it, else what defines it. */
function reasonOf(sense: Sense, fixed: boolean): string {
  if (fixed) return 'Fixed by the user.'
  const usage = sense.steps.find(({ factor }) => factor.startsWith('weight '))
  return (usage ?? sense.steps[0])?.text ?? sense.label
}

function chosenOf({ kernel, fixes }: Worked): Chosen | null {
  const first = kernel?.own[0]
  if (!first) return null
  const { id, label } = first.sense
  const fixed = fixes.some((fix) => !fix.startsWith('densities.'))
  return { id, label, likelihood: Number(first.weight.toFixed(4)), reason: reasonOf(first.sense, fixed) }
}

/** What a worked line comes to, and what to measure off. */
function figuresOf(
  worked: Worked,
  kernel: Kernel,
  telling: Telling,
): Pick<SheetLine, 'value' | 'senses' | 'working'> & { cracked: Cracked | null } {
  const { base, estimate } = worked
  const { coverage, factor } = telling
  const bands = kernel.bands(coverage)
  const whole = scaleBand(bands.own, base)
  // What is wanting to a batter can't be less than nothing.
  const value = toValue(kernel.quantity, estimate ? { ...whole, low: Math.max(0, whole.low) } : whole)
  const known = knownOf(kernel, base * factor, coverage)
  const eggs = eggsOut(worked, known, telling.egg)
  return {
    value,
    working:
      eggs?.working ?? countedOut(worked, known, base * factor, coverage) ?? measuredOut(known, telling.plan.units) ?? spannedOut(value),
    senses: kernel.own.map((option, i) => answerSense(option, bands.senses[i]!, worked, kernel.quantity)),
    cracked: eggs?.cracked ?? null,
  }
}

/** Who says how dense the thing is, where its measure was turned from weight to volume or back. */
function turnedBy(kernel: Kernel | null, working: Working | null): readonly Citation[] {
  if (!kernel?.good || !working) return []
  const quantities = [working.value.quantity, findUnit(working.unit)?.quantity ?? kernel.quantity]
  const turned = quantities.some((quantity) => quantity !== kernel.quantity && (quantity === 'mass' || quantity === 'volume'))
  return turned ? kernel.good.source : []
}

const nothing = { value: null, senses: [], working: null, cracked: null } as const

/** A line told from the beginning. */
function tellAfresh(worked: Worked, telling: Telling): Told {
  const { number, found, reading, kernel, estimate } = worked
  const { value, senses, working, cracked } = kernel ? figuresOf(worked, kernel, telling) : nothing
  const line: SheetLine = {
    number,
    start: found.start,
    end: found.end,
    phrase: found.phrase,
    kind: found.kind,
    thing: reading.things && reading.things.length > 1 ? reading.things.join(' and ') : reading.thing,
    part: reading.part ?? null,
    amount: reading.amount,
    measure: reading.measure,
    eggs: reading.eggs,
    chosen: chosenOf(worked),
    senses,
    value,
    working,
    estimate,
    note: noteOf(worked, { value, working, senses }, telling.factor),
    sources: telling.footnotes.cite([
      ...(kernel?.own[0]?.sense.steps ?? []).flatMap(({ sources }) => sources),
      ...turnedBy(kernel, working),
    ]),
  }
  return { line, cracked }
}

/** One line of the sheet: its period words, what they come to, and what to measure off. As much of the same is told alike. */
export function tellLine(worked: Worked, telling: Telling): Told {
  const { number, found, kernel, base, reading } = worked
  if (!kernel) return tellAfresh(worked, telling)
  const alike = telling.told.get(kernel) ?? new Map<string, Told>()
  telling.told.set(kernel, alike)
  const much = `${found.kind}|${base}|${reading.amount?.low}|${reading.amount?.high}|${worked.per}`
  const told = alike.get(much) ?? tellAfresh(worked, telling)
  alike.set(much, told)
  const { start, end, phrase } = found
  return { ...told, line: { ...told.line, number, start, end, phrase } }
}

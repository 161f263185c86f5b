import type { AnswerCaution } from './answer.js'
import { type Assessment, assess } from './assess.js'
import { type Band, bandOf, mixtureBand, rectangle, times, type Unknown, unknown } from './bands/index.js'
import { cautionsAbout } from './caution.js'
import { type AnswerStep, tellStep } from './cite/index.js'
import { noAnswer } from './error.js'
import type { CheckedOptions } from './options.js'
import type { Range, Reading } from './reading/index.js'
import { inQuantity, type Sense } from './senses/index.js'
import type { Citation, Quantity } from './tables/index.js'

/** A sense with its band, for one of the measure; the phrase's number scales it. */
export interface ResolvedSense {
  readonly sense: Sense
  /** To four digits, as it is told. */
  readonly likelihood: number
  readonly band: Band
  readonly steps: readonly AnswerStep[]
}

/** All that does not depend on the phrase's number: worked out once for a measure, thing and setting, then scaled. */
export interface Resolved {
  readonly assessment: Assessment
  readonly senses: readonly ResolvedSense[]
  /** The mixture of all senses, for one of the measure. */
  readonly band: Band
  /** The same in mass for a volume and in volume for a mass, where the thing's density is known. */
  readonly other: { readonly quantity: Quantity; readonly band: Band } | undefined
  readonly citations: readonly Citation[]
  readonly cautions: readonly AnswerCaution[]
  /** Whether the phrase's number still has to multiply the bands; an egg statement has counted its eggs already. */
  readonly scales: boolean
}

/** More of anything than this is a slip of the pen. Judgement: the largest cask, a tun, is some 31,000 gills. */
const mostAmount = 1e6

/** The number in front of the measure, and how much wider than it the range is: *two or three* is 2 and 1.5. */
export function numberOf(amount: Range | null): { readonly base: number; readonly ratio: number } {
  if (!amount) return { base: 1, ratio: 1 }
  if (!(amount.low > 0)) throw noAnswer('phrase', 'an amount of nothing has no measure; give a number above zero')
  if (amount.high > mostAmount)
    throw noAnswer('phrase', `${amount.high} is more than any kitchen held; the most that is answered is ${mostAmount}`)
  return { base: amount.low, ratio: amount.high / amount.low }
}

function distinct(citations: readonly Citation[]): Citation[] {
  return [...new Map(citations.map((citation) => [citation.id, citation])).values()]
}

/** The other of mass and volume, through the thing's density. */
function otherBand({ quantity, senses, good }: Assessment, spanning: Unknown | undefined, coverage: number): Resolved['other'] {
  const other = quantity === 'mass' ? 'volume' : quantity === 'volume' ? 'mass' : undefined
  if (!other || !good?.density) return undefined
  const weighted = senses.map((sense) => {
    const { value } = inQuantity(sense, other, good)
    return { weight: sense.likelihood, value: spanning ? times(value, spanning) : value }
  })
  return { quantity: other, band: mixtureBand(weighted, coverage) }
}

function work(reading: Reading, { setting, coverage, quantity, standard }: CheckedOptions): Resolved {
  const assessment = assess(reading, setting, { ...(quantity ? { quantity } : {}), ...(standard ? { standard } : {}) })
  const { ratio } = numberOf(reading.amount)
  const scales = !assessment.senses[0]!.whole
  const spanning = scales && ratio > 1 ? unknown('amount', rectangle(1, ratio)) : undefined
  const weighted = assessment.senses.map((sense) => ({
    weight: sense.likelihood,
    value: spanning ? times(sense.value, spanning) : sense.value,
  }))
  return {
    assessment,
    senses: assessment.senses.map((sense, i) => ({
      sense,
      likelihood: Number(sense.likelihood.toFixed(4)),
      band: bandOf(weighted[i]!.value, coverage),
      steps: sense.steps.map(tellStep),
    })),
    band: mixtureBand(weighted, coverage),
    other: otherBand(assessment, spanning, coverage),
    citations: distinct([...assessment.senses, ...assessment.apart].flatMap(({ steps }) => steps.flatMap(({ sources }) => sources))),
    cautions: cautionsAbout(assessment),
    scales,
  }
}

const remembered = new Map<string, Resolved>()
const mostRemembered = 20_000

/** Eggs are counted in the value itself, so their number belongs to the question. */
function eggsSaid({ eggs, amount, thing }: Reading): string {
  if (!eggs && !thing?.endsWith('egg')) return ''
  return `${eggs?.whole},${eggs?.yolks},${eggs?.whites},${amount?.low},${amount?.high}`
}

function keyOf(reading: Reading, checked: CheckedOptions): string {
  const { setting, coverage, quantity, standard } = checked
  const { kind, measure, thing, qualifier } = reading
  const { ratio } = numberOf(reading.amount)
  const said = `${kind}|${measure}|${thing}|${qualifier}|${reading.standard ?? ''}|${reading.part ?? ''}|${reading.tale ?? ''}|${reading.describing ?? ''}|${ratio}`
  return `${said}|${eggsSaid(reading)}|${setting.year}|${setting.places[0]}|${coverage}|${quantity ?? ''}|${standard ?? ''}`
}

const rememberable: ReadonlySet<Reading['kind']> = new Set(['measured', 'counted', 'priced', 'eggparts'])

/** Readings that point at another one can't be remembered under their own words. */
function plain(reading: Reading): boolean {
  return rememberable.has(reading.kind) && !reading.reference && !reading.parts
}

/**
 * Works out a reading for one of its measure. What depends only on measure, thing and setting is remembered, so that a reader's number
 * scales a band instead of computing it again.
 */
export function resolve(reading: Reading, checked: CheckedOptions): Resolved {
  if (!plain(reading)) return work(reading, checked)
  const key = keyOf(reading, checked)
  const known = remembered.get(key)
  if (known) return known
  const fresh = work(reading, checked)
  if (remembered.size >= mostRemembered) remembered.clear()
  remembered.set(key, fresh)
  return fresh
}

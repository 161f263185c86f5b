import type { AnswerSource } from './answer.js'
import { type Assessment, assess } from './assess.js'
import { type Band, bandOf, type Expression, mixtureBand, rectangle, times, type Unknown, unknown } from './bands/index.js'
import { type AnswerStep, tellStep } from './cite/index.js'
import { noAnswer } from './error.js'
import type { CheckedOptions } from './options.js'
import type { Range, Reading } from './reading/index.js'
import { inQuantity, type Sense } from './senses/index.js'
import { sourcesOf } from './sources-of.js'
import { ExactNumber, type Quantity } from './tables/index.js'

/** A sense with its band, for one of the measure; the phrase's number scales it. */
export interface ResolvedSense {
  readonly sense: Sense
  /** To four digits, as it is told. */
  readonly likelihood: number
  readonly band: Band
  readonly exact: ExactNumber | undefined
  readonly steps: readonly AnswerStep[]
}

/** More of anything than this is a slip of the pen. Judgement: the largest cask, a tun, is some 31,000 gills. */
const mostAmount = 1e6
/** And less is another: the millionth part of a pound is half a milligram. Judgement. */
const leastAmount = 1e-6

/** The number in front of the measure, and how much wider than it the range is: *two or three* is 2 and 1.5. */
export function numberOf(amount: Range | null): { readonly base: number; readonly ratio: number } {
  if (!amount) return { base: 1, ratio: 1 }
  if (!(amount.low > 0)) throw noAnswer('phrase', 'an amount of nothing has no measure; give a number above zero')
  if (amount.low < leastAmount)
    throw noAnswer('phrase', `${amount.low} is less than any kitchen weighs; the least that is answered is ${leastAmount}`)
  if (amount.high > mostAmount)
    throw noAnswer('phrase', `${amount.high} is more than any kitchen held; the most that is answered is ${mostAmount}`)
  return { base: amount.low, ratio: amount.high / amount.low }
}

/** The other of mass and volume. */
export interface Other {
  readonly quantity: Quantity
  readonly band: Band
}

/**
 * All that does not depend on the phrase's number: worked out once for a measure, thing and setting, then scaled. What a caller who wants the
 * band alone can do without is worked out when it is first asked for.
 */
export class Resolved {
  readonly assessment: Assessment
  /** The mixture of all senses, for one of the measure. */
  readonly band: Band
  /** Whether the phrase's number still has to multiply the bands; an egg statement has counted its eggs already. */
  readonly scales: boolean
  readonly #coverage: number
  readonly #spanning: Unknown | undefined
  #senses: readonly ResolvedSense[] | undefined
  #other: Other | null | undefined
  #sources: readonly AnswerSource[] | undefined

  /** @throws PottleError as `assess` and `numberOf` do */
  constructor(reading: Reading, { setting, coverage, quantity, standard }: CheckedOptions) {
    this.assessment = assess(reading, setting, { ...(quantity ? { quantity } : {}), ...(standard ? { standard } : {}) })
    const { senses } = this.assessment
    const { ratio } = numberOf(reading.amount)
    this.scales = !senses[0]!.whole
    this.#coverage = coverage
    this.#spanning = this.scales && ratio > 1 ? unknown('amount', rectangle(1, ratio)) : undefined
    this.band = this.#mixture(senses)
  }

  get senses(): readonly ResolvedSense[] {
    this.#senses ??= this.assessment.senses.map((sense) => ({
      sense,
      likelihood: Number(sense.likelihood.toFixed(4)),
      band: bandOf(this.#spanned(sense), this.#coverage),
      exact: sense.exact === undefined ? undefined : new ExactNumber(sense.exact),
      steps: sense.steps.map(tellStep),
    }))
    return this.#senses
  }

  /** The same in mass for a volume and in volume for a mass, where the thing's density is known; else null. */
  get other(): Other | null {
    if (this.#other === undefined) this.#other = this.#makeOther()
    return this.#other
  }

  get sources(): readonly AnswerSource[] {
    const { senses, apart } = this.assessment
    this.#sources ??= sourcesOf([...senses, ...apart].flatMap(({ steps }) => steps))
    return this.#sources
  }

  #spanned({ value }: Sense): Expression {
    return this.#spanning ? times(value, this.#spanning) : value
  }

  #mixture(senses: readonly Sense[]): Band {
    return mixtureBand(
      senses.map((sense) => ({ weight: sense.likelihood, value: this.#spanned(sense) })),
      this.#coverage,
    )
  }

  #makeOther(): Other | null {
    const { quantity, senses, good } = this.assessment
    const other = quantity === 'mass' ? 'volume' : quantity === 'volume' ? 'mass' : undefined
    if (!other || !good?.density) return null
    return { quantity: other, band: this.#mixture(senses.map((sense) => inQuantity(sense, other, good))) }
  }
}

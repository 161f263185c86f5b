import { type Band, bandOf, type Expression, mixtureBand, spread, times, unknown } from '../bands/index.js'
import { inQuantity, namesOf, reaches, type Sense } from '../senses/index.js'
import { type DisplacementRow, displacements, type GoodRow, type Quantity } from '../tables/index.js'

/** One sense as a part of a mixture: for one of the measure, or for the whole where the sense has counted already. */
export interface Option {
  readonly sense: Sense
  readonly id: string
  readonly weight: number
  readonly value: Expression
}

/** All that a measure of a thing may mean, apart from how many of it there are: lines that say the same share it. */
export interface Kernel {
  readonly good: GoodRow | undefined
  readonly quantity: Quantity
  /** True where the senses have counted already, as those of eggs do. */
  readonly whole: boolean
  /** Names the choice that its senses depend on. */
  readonly choice: string | undefined
  readonly own: readonly Option[]
  readonly mass: readonly Option[] | undefined
  readonly volume: readonly Option[] | undefined
  /** The room it takes in a batch, once no air stands between its grains. */
  readonly room: readonly Option[] | undefined
  /** Bands of the mixture and of each sense alone, worked out when first asked for. */
  bands(coverage: number): KernelBands
}

export interface KernelBands {
  readonly own: Band
  readonly mass: Band | undefined
  readonly volume: Band | undefined
  readonly senses: readonly Band[]
}

/** The options in another quantity; undefined where the likeliest of them can't be had in it. */
function optionsIn(options: readonly Option[], quantity: Quantity, good: GoodRow | undefined): readonly Option[] | undefined {
  if (!reaches(options[0]!.sense, quantity, good)) return undefined
  return options
    .filter(({ sense }) => reaches(sense, quantity, good))
    .map((option) => ({ ...option, value: inQuantity({ ...option.sense, value: option.value }, quantity, good).value }))
}

/** How a thing packs once it lies in a batch; undefined for liquids, and for what keeps its bulk. */
export function displacementOf(good: GoodRow | undefined): DisplacementRow | undefined {
  if (!good || good.classes.includes('liquid')) return undefined
  return namesOf(good.id, good)
    .map((name) => displacements.find(({ things }) => things.includes(name)))
    .find((row) => row !== undefined)
}

/** Dry things give up the air between their grains; liquids and fats take the room that their measure says. */
function roomOf(mass: Kernel['mass'], volume: Kernel['volume'], good: GoodRow | undefined): Kernel['room'] {
  const row = displacementOf(good)
  if (!row || !mass) return volume
  const packed = unknown(`room:${row.id}`, spread(row.density))
  return mass.map((option) => ({ ...option, value: times(option.value, { unknown: packed, power: -1 }) }))
}

/**
 * The kernel of some senses.
 *
 * @param senses the likeliest first; at least one
 * @param by what each is multiplied by before it is counted: an uncertain range of amounts; leave it out for none
 */
export function kernelOf(senses: readonly Sense[], good: GoodRow | undefined, by?: Expression): Kernel {
  const [first] = senses
  const every = senses.map((sense) => ({
    sense,
    id: sense.standard ?? sense.id,
    weight: sense.likelihood,
    value: by && !sense.whole ? times(sense.value, by) : sense.value,
  }))
  const { quantity, choice, whole = false } = first!
  const own = optionsIn(every, quantity, good)!
  const mass = optionsIn(every, 'mass', good)
  const volume = optionsIn(every, 'volume', good)
  let known: { readonly coverage: number; readonly bands: KernelBands } | undefined
  const mixed = (options: readonly Option[] | undefined, coverage: number): Band | undefined => options && mixtureBand(options, coverage)
  return {
    good,
    quantity,
    whole,
    choice,
    own,
    mass,
    volume,
    room: roomOf(mass, volume, good),
    bands: (coverage) => {
      if (known?.coverage !== coverage) {
        const bands = {
          own: mixtureBand(own, coverage),
          mass: quantity === 'mass' ? undefined : mixed(mass, coverage),
          volume: quantity === 'volume' ? undefined : mixed(volume, coverage),
          senses: own.map(({ value }) => bandOf(value, coverage)),
        }
        known = { coverage, bands: { ...bands, [quantity]: bands.own } }
      }
      return known!.bands
    },
  }
}

import { commonPair, type Vessel } from './dish.js'
import type { Footnotes } from './footnotes.js'
import type { DishFit, Sheet, Total } from './sheet.js'

const numbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']
const spell = (count: number): string => numbers[count] ?? String(count)

/** A dish filled less than this, or heaped more, is worth a word. Judgement. */
const slack = 0.12

function fullness(full: number): string {
  if (Math.abs(full - 1) <= slack) return ''
  return full < 1 ? `, ${Math.round(full * 100)} % full` : `, with ${Math.round((full - 1) * 100)} % over`
}

/** A dish that is filled to nine tenths takes a tenth more to its brim, and no more. */
const brim = 1.1

/** The whole number of dishes nearest to what the batch fills, and one more where it would run over. */
function countFor(fills: number): number {
  const nearest = Math.max(1, Math.round(fills))
  return fills / nearest > brim ? nearest + 1 : nearest
}

function fitIn(vessel: Vessel, batch: number, footnotes: Footnotes): DishFit {
  const { id, label, plural, volume, source, filling } = vessel
  const fills = batch / volume
  const count = vessel.count ?? countFor(fills)
  const full = fills / count
  const text = `${spell(count)} ${count === 1 ? label : plural}${fullness(full)}`
  return {
    id,
    label,
    volume: Math.round(volume),
    fills: Number(fills.toPrecision(4)),
    count,
    full: Number(full.toPrecision(4)),
    deep: filling ? Number((filling.deep * full).toPrecision(3)) : null,
    text,
    sources: footnotes.cite(source),
  }
}

/** Beyond so many small tins the batch is not for tins: a brewing, a pickle for the year. Judgement. */
const mostTins = 60

/** *six small or two large*: the batch in either size of a common tin. */
function sayPair(small: DishFit, large: DishFit): string {
  return `${spell(small.count)} small or ${spell(large.count)} large`
}

/**
 * How many dishes a batch fills: those of the plan, or a common small and a common large one.
 *
 * @param room the batch as it is scaled; null where the receipt gives no volume
 */
export function fitDishes(dishes: readonly Vessel[], room: Total | null, footnotes: Footnotes): Sheet['dishes'] {
  if (!room) return { fits: [], text: null }
  if (dishes.length === 0) {
    const [small, large] = commonPair().map((vessel) => fitIn(vessel, room.best, footnotes))
    return { fits: [small!, large!], text: small!.count <= mostTins ? sayPair(small!, large!) : null }
  }
  const fits = dishes.length === 1 ? [fitIn(dishes[0]!, room.best, footnotes)] : shared(dishes, room.best, footnotes)
  return { fits, text: fits.map(({ text }) => text).join(' and ') }
}

/** Several dishes share one batch, all to the same height of their fill. */
function shared(dishes: readonly Vessel[], batch: number, footnotes: Footnotes): readonly DishFit[] {
  const whole = dishes.reduce((sum, { volume, count }) => sum + volume * (count ?? 1), 0)
  return dishes.map((dish) => fitIn({ ...dish, count: dish.count ?? 1 }, (batch * dish.volume * (dish.count ?? 1)) / whole, footnotes))
}

import { citeShort } from './cite/index.js'
import { requireWord } from './error.js'
import { labelOf, standardsUnder } from './senses/index.js'
import {
  baseUnits,
  type Checked,
  dataset,
  exactRatio,
  exactValue,
  findMeasure,
  type Grade,
  type MeasureKind,
  type MeasureRow,
  measures,
  type SenseRow,
  type StandardRow,
} from './tables/index.js'

/** One dated and placed meaning of a measure. */
export interface CatalogueSense {
  readonly id: string
  readonly label: string
  readonly standard: string
  readonly ratio: string
  /** First and last year; null where the sense is not dated. */
  readonly years: readonly [number, number] | null
  readonly place: string | null
  readonly unit: string
  readonly value: number
  /** Goods or classes that the sense is confined to; null for any. */
  readonly things: readonly string[] | null
  readonly grade: Grade
  readonly checked: Checked
  readonly sources: readonly string[]
}

/** A measure as the tables have it. */
export interface CatalogueMeasure {
  readonly id: string
  readonly label: string
  readonly kind: MeasureKind
  readonly names: readonly string[]
  readonly senses: readonly CatalogueSense[]
  readonly dataset: string
}

/** The years in which both a sense and its standard held; null where neither is dated. */
function yearsOf(row: SenseRow, standard: StandardRow): readonly [number, number] | null {
  const spans = [row.years, standard.years].filter((years) => years !== undefined)
  if (spans.length === 0) return null
  return [Math.max(...spans.map(([from]) => from)), Math.min(...spans.map(([, to]) => to))]
}

function sensesOf(measure: MeasureRow): CatalogueSense[] {
  return measure.senses.flatMap((row) =>
    standardsUnder(measure, row).map(({ id, standard }) => {
      const { quantity, value } = exactValue(standard.value)
      return {
        id,
        label: labelOf(row, standard),
        standard: standard.id,
        ratio: row.ratio,
        years: yearsOf(row, standard),
        place: row.place ?? standard.place ?? null,
        unit: baseUnits[quantity],
        value: exactRatio(row.ratio).times(value).toSignificantDigits(12).toNumber(),
        things: row.things ?? null,
        grade: row.grade,
        checked: row.checked,
        sources: [...row.source, ...standard.source].map(citeShort),
      }
    }),
  )
}

function entryOf(measure: MeasureRow): CatalogueMeasure {
  const { id, label, kind, names } = measure
  return { id: slugOf(id), label, kind, names, senses: sensesOf(measure).filter(({ years }) => !years || years[0] <= years[1]), dataset }
}

const slugOf = (id: string): string => id.replaceAll(' ', '-')

/**
 * Every measure of the tables with its senses by date and place. Values are in the base unit of their quantity: g, ml, each.
 *
 * @example listMeasures().find(({ id }) => id === 'pottle')?.senses[0]?.value   // 1892.705892
 */
export function listMeasures(): readonly CatalogueMeasure[] {
  return measures.map(entryOf)
}

/**
 * One measure by its name or a listed spelling.
 *
 * @returns values in the base unit of their quantity; undefined where the tables have none of that name
 * @throws PottleError `bad-option` for a name that is no text
 * @example describeMeasure('pottle')?.senses.map(({ id }) => id).includes('pottle.wine')   // true
 */
export function describeMeasure(name: string): CatalogueMeasure | undefined {
  const row = findMeasure(requireWord('name', name)) ?? findMeasure(name.replaceAll('-', ' '))
  return row && entryOf(row)
}

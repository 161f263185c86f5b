import { badOption } from '../error.js'
import { type GasMarkRow, gasMarks } from '../tables/index.js'
import { requirePositive, tidy, toCelsius, toFahrenheit } from './degrees.js'

/** A mark on the regulator's dial. */
export interface GasMark {
  /** As the dial shows it: `1/4`, `4`. */
  readonly mark: string
  readonly degC: number
  readonly degF: number
  /** What British books print beside it, in degC; they round, and differ by up to 10 degC from the rule. */
  readonly printed: readonly [number, number]
  readonly words: string
}

// Mark 1 is 275 degF and every mark above it 25 degF more; below it every halving of the mark is 25 degF less (encyclopaedia pages on the gas
// mark; the same rule gives every row of data/gas-marks.json).
const markOne = 275
const step = 25

/** How a dial shows the marks that are not whole. */
export const markSigns: Readonly<Record<string, string>> = { '1/4': '¼', '1/2': '½' }

/**
 * The temperature of a gas mark by its definition, in degF: 275 + 25 (mark - 1), and 275 + 25 log2(mark) below mark 1.
 *
 * @throws PottleError `bad-option` unless the mark is above zero and at most 12
 * @example gasMarkToFahrenheit(4)   // 350
 */
export function gasMarkToFahrenheit(mark: number): number {
  requirePositive('gasMark', mark, 'marks')
  if (mark > 12) throw badOption('gasMark', `${mark} is more than any regulator has; marks go from 1/4 to 9`)
  return mark >= 1 ? markOne + step * (mark - 1) : markOne + step * Math.log2(mark)
}

/**
 * The gas mark of a temperature, with all its digits.
 *
 * @param degC any oven temperature
 * @example gasMarkExact(176.666667).toFixed(3)   // '4.000'
 */
export function gasMarkExact(degC: number): number {
  const marks = (toFahrenheit(degC) - markOne) / step
  return marks >= 0 ? 1 + marks : 2 ** marks
}

const asMark = ({ mark, degF, printed, words }: GasMarkRow): GasMark => ({ mark, degC: tidy(toCelsius(degF)), degF, printed, words })

/**
 * Every mark of a British dial, from 1/4 to 9, with its degrees by definition: mark 1 is 275 degF, and each above it 25 degF more.
 *
 * @example allGasMarks().find(({ mark }) => mark === '4')?.degF   // 350
 */
export function allGasMarks(): readonly GasMark[] {
  return gasMarks.map(asMark)
}

/** The mark of the dial that is nearest; null more than half a step off either end of it. */
export function gasMarkNearest(degC: number): GasMark | null {
  const degF = toFahrenheit(degC)
  const off = (row: GasMarkRow): number => Math.abs(row.degF - degF)
  const nearest = gasMarks.reduce((best, row) => (off(row) < off(best) ? row : best))
  return off(nearest) <= step / 2 ? asMark(nearest) : null
}

/** What the reader of a line must choose or know. */
import type { AnswerSense, Value } from '../answer.js'
import type { SheetLine, Working } from './sheet.js'
import type { Worked } from './worked.js'
import { isEggs } from './working.js'

/** A sense less likely than this is not put before the reader as a choice. Judgement. */
const worthChoosing = 0.1
/** Senses further apart than this are a choice for the reader, not a band. Judgement. */
const farApart = 1.1

/** What a line comes to. */
type Figures = Pick<SheetLine, 'value' | 'working' | 'senses'>

const percent = (part: number): string => `${part > 0 ? '+' : '−'}${Math.abs(part * 100).toFixed(0)} %`

function choiceNote(senses: readonly AnswerSense[], factor: number): string | undefined {
  const serious = senses.filter(({ likelihood }) => likelihood >= worthChoosing)
  const bests = serious.map(({ best }) => best)
  if (serious.length < 2 || Math.max(...bests) / Math.min(...bests) < farApart) return undefined
  const said = serious.map(
    ({ label, best, unit, likelihood }) =>
      `${label} (${Number((best * factor).toPrecision(3))} ${unit}, ${Math.round(likelihood * 100)} in 100)`,
  )
  return `Choose: ${said.join(', or ')}.`
}

function eggNote(working: Working | null, worked: Worked): string | undefined {
  if (!working || !isEggs(worked) || Math.abs(working.moved) < 0.05) return undefined
  return `Whole eggs move it by ${percent(working.moved)}: beat them and weigh ${working.metric ?? working.text} for the exact share.`
}

/** Rounding by less than this is not worth a word, even where the law was exact. Judgement. */
const worthTelling = 1 / 25

/** What rounding does that the reader would not expect. */
function roundingNote(working: Working | null, value: Value | null, worked: Worked): string | undefined {
  if (!working || !value || isEggs(worked)) return undefined
  const rounded = value.best * (1 + working.moved)
  const outside = Math.abs(working.moved) > worthTelling && (rounded < value.low || rounded > value.high)
  return outside
    ? `Rounded by ${percent(working.moved)}, beyond its band${working.metric ? `: weigh ${working.metric} for the exact share` : ''}.`
    : undefined
}

/**
 * The note of a line; null where there is nothing to say.
 *
 * @param factor what the plan makes of the receipt, which the amounts to choose between are told for
 */
export function noteOf(worked: Worked, { value, working, senses }: Figures, factor: number): string | null {
  const problem = worked.problem ? `Not worked out: ${worked.problem}.` : undefined
  const estimate = worked.estimate ? 'An estimate: the receipt leaves it open, and it follows from the rest.' : undefined
  const notes = [problem, worked.per, estimate, choiceNote(senses, factor), eggNote(working, worked), roundingNote(working, value, worked)]
  return notes.filter(Boolean).join(' ') || null
}

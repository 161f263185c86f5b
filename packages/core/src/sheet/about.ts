/** What is said of a sheet as a whole. */
import type { AnswerCaution } from '../answer.js'
import { answerCaution } from '../caution.js'
import { cautionsFor } from '../cautions/index.js'
import type { Setting } from '../setting.js'
import type { Told } from './lines.js'
import type { SheetOven, SheetThing } from './sheet.js'
import type { Worked } from './worked.js'

const percent = (part: number): string => `${(part * 100).toFixed(1)} %`

/** Warnings that the things, the heat and the words of a receipt touch. */
export function cautionsOf(
  text: string,
  lines: readonly Worked[],
  unmeasured: readonly SheetThing[],
  ovens: readonly SheetOven[],
): readonly AnswerCaution[] {
  const things = [...lines.map(({ reading }) => reading.thing), ...unmeasured.map(({ thing }) => thing)].filter((thing) => thing !== null)
  const eggs = lines.some(({ reading }) => reading.eggs !== null)
  const [oven] = ovens
  const asked = { things: [...new Set(things)], eggs, text, ...(oven && oven.heat !== 'fixed' ? { heat: oven.heat } : {}) }
  return cautionsFor(asked).map(answerCaution)
}

const movedBy = ({ line }: Told): number => Math.abs(line.working!.moved)

function mostMoved(told: readonly Told[]): Told | undefined {
  return told.reduce<Told | undefined>((most, one) => (most && movedBy(most) >= movedBy(one) ? most : one), undefined)
}

/** What rounding moved most, so that the reader sees how far ratios hold. */
export function roundingOf(told: readonly Told[]): string | null {
  const worked = told.filter(({ line }) => line.working !== null)
  const [plain, eggs] = [mostMoved(worked.filter(({ cracked }) => !cracked)), mostMoved(worked.filter(({ cracked }) => cracked))]
  const most = plain && `Rounding moves no line by more than ${percent(movedBy(plain))} (line ${plain.line.number})`
  const byEggs = eggs && `${plain ? 'w' : 'W'}hole eggs move line ${eggs.line.number} by ${percent(movedBy(eggs))}`
  return most || byEggs ? `${[most, byEggs].filter(Boolean).join('; ')}.` : null
}

/** What the reader should know of the sheet as a whole. */
export function notesOf(lines: readonly Worked[], setting: Setting, ovens: readonly SheetOven[], text: string): readonly string[] {
  const none = lines.length === 0 ? 'The text states no measure that could be read, so that there is nothing to weigh or to scale.' : ''
  const year =
    setting.year === null
      ? `No year was given, so every period from ${setting.from} to ${setting.to} weighs in; a year narrows the bands.`
      : ''
  const heat = ovens.length === 0 && /\bbak(?:e|ed|ing|'d)\b/i.test(text) ? 'The text bakes but names no heat that could be read.' : ''
  return [none, year, heat].filter(Boolean)
}

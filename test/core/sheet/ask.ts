import { type Plan, type Sheet, type SheetOptions, workSheet } from '@core/sheet'
import { demoReceipts } from '@core/tables'
import { PottleError } from '@pottle/core'

export const [almondTart, seedBuns] = demoReceipts as [(typeof demoReceipts)[number], (typeof demoReceipts)[number]]

/** The first demo receipt by a plan. */
export const tartBy = (plan: Plan = {}): Sheet => workSheet(almondTart.text, { year: 1690, title: almondTart.title, plan })
export const bunsBy = (plan: Plan = {}): Sheet => workSheet(seedBuns.text, { year: 1790, title: seedBuns.title, plan })

/** The parameters and the words of what a call was refused for. */
export function refusal(text: string, options: SheetOptions): { code: string; parameters: string[]; details: string } {
  try {
    workSheet(text, options)
  } catch (error) {
    if (!(error instanceof PottleError)) throw error
    const { code, faults } = error
    return { code, parameters: faults.map(({ parameter }) => parameter), details: faults.map(({ detail }) => detail).join(' | ') }
  }
  throw new Error('it was not refused')
}

/** The line of a thing. */
export const lineOf = (sheet: Sheet, thing: string) => sheet.lines.find((line) => line.thing === thing)!

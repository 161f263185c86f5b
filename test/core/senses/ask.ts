import { type Band, bandOf, mixtureBand } from '@core/bands'
import type { Reading } from '@core/reading'
import { PottleError } from '../../../packages/core/src/error.js'
import type { Question, Sense, SenseKind } from '../../../packages/core/src/senses/sense.js'
import { settingOf } from '../../../packages/core/src/setting.js'

/** A reading with nothing in it but what a test says. */
export function reading(parts: Partial<Reading>): Reading {
  return {
    kind: 'measured',
    amount: { low: 1, high: 1 },
    measure: null,
    thing: null,
    qualifier: null,
    eggs: null,
    understood: [],
    unread: [],
    ...parts,
  }
}

/** A question about a reading in a year and place. */
export function ask(parts: Partial<Reading>, year: number | string | null, place = 'england'): Question {
  return { reading: reading(parts), setting: settingOf(year, place) }
}

/** What a kind answers, the likeliest first. */
export function answer(kind: SenseKind, parts: Partial<Reading>, year: number | string | null, place = 'england'): readonly Sense[] {
  return kind.senses(ask(parts, year, place))
}

/** The band of all senses together. */
export function bandFor(senses: readonly Sense[], coverage = 0.9): Band {
  return mixtureBand(
    senses.map(({ likelihood, value }) => ({ weight: likelihood, value })),
    coverage,
  )
}

export const bestOf = (senses: readonly Sense[]): number => bandOf(senses[0]!.value).best

/** The error that a call ends in, as one line; `nothing` where it ends in none. */
export function said(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (error instanceof PottleError) return `${error.code} ${error.message}`
    throw error
  }
  return 'nothing'
}

import { type Fault, type Plan, PottleError, type Sheet, type SheetOptions, workSheet } from '@pottle/core'
import type { Asked } from '../parts/asked.js'

/** A field that fixes the meaning of one line begins with this, and goes on with the line's number. */
export const lineField = 'line.'

const isNumber = (text: string): boolean => /^\d{1,6}$/.test(text)

/** A whole number where it is one; what it was where not, so that the library can say what is wrong with it. */
const counted = (text: string | undefined): number | undefined =>
  text === undefined ? undefined : isNumber(text) ? Number(text) : (text as unknown as number)

function dishOf({ dish, count }: Asked): Plan['dish'] {
  if (dish === undefined) return undefined
  return count === undefined ? dish : { id: dish, count: counted(count) }
}

function linesOf(asked: Asked): Plan['fixed'] {
  const lines = Object.entries(asked)
    .filter(([name, standard]) => name.startsWith(lineField) && standard !== undefined)
    .map(([name, standard]) => [name.slice(lineField.length), { standard }] as const)
  return lines.length === 0 ? undefined : { lines: Object.fromEntries(lines) }
}

/** What the form asks of the library. */
function optionsOf(asked: Asked): SheetOptions {
  const { year, place, title, scale, guests, units, oven } = asked
  return {
    year,
    place,
    title,
    plan: {
      scale,
      guests: counted(guests),
      dish: dishOf(asked),
      units: units as Plan['units'],
      oven: oven as Plan['oven'],
      fixed: linesOf(asked),
    },
  }
}

/** The field of the form that a fault is about: the library says `plan.fixed.lines.3.standard` where the form has `line.3`. */
function fieldOf({ parameter, detail }: Fault): Fault {
  const bare = parameter.replace(/^plan\./, '')
  const line = /^fixed\.lines\.(\d+)/.exec(bare)
  if (line) return { parameter: `${lineField}${line[1]}`, detail }
  if (bare === 'dish.count') return { parameter: 'count', detail }
  return { parameter: bare.split('.')[0]!, detail }
}

/** The sheet that the form asks for, or why there is none, told of the form's own fields. */
export function askSheet(asked: Asked): Sheet | PottleError {
  try {
    return workSheet(asked.text ?? '', optionsOf(asked))
  } catch (error) {
    if (!(error instanceof PottleError)) throw error
    const faults = error.faults.map(fieldOf).map(({ parameter, detail }) => ({ parameter, detail: detail.replace(/plan\.(\w+)/g, '“$1”') }))
    return new PottleError(error.code, faults, error.words)
  }
}

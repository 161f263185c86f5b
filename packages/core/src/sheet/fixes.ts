import { badOption } from '../error.js'
import { isCalled, standardsUnder } from '../senses/index.js'
import { findMeasure, standardsOf } from '../tables/index.js'
import type { CheckedFixed } from './fixed.js'
import type { SheetFix } from './sheet.js'
import type { Worked } from './worked.js'

/** A standard that bears on no line was not put to the test yet: the tables must know it all the same. */
function requireStandard(name: string, wish: string): void {
  const measure = findMeasure(name)
  const known = [
    ...(measure ? measure.senses.flatMap((row) => standardsUnder(measure, row).flatMap(({ id, standard }) => [id, standard.id])) : []),
    ...standardsOf(name).map(({ id }) => id),
  ]
  if (known.length === 0 || known.some((id) => isCalled(id, wish))) return
  const names = [...new Set(known)].slice(0, 12).join(', ')
  throw badOption(`plan.fixed.standards.${name}`, `a ${name} has no sense by "${wish.slice(0, 40)}"; it can go by ${names}`)
}

/**
 * What the user fixed, as the sheet shows it, with the lines that it bears on.
 *
 * @throws PottleError `bad-option` for a standard that the tables don't know
 */
export function fixesOf(fixed: CheckedFixed, lines: readonly Worked[]): readonly SheetFix[] {
  const ruled = (fix: string): readonly number[] => lines.filter(({ fixes }) => fixes.includes(fix)).map(({ number }) => number)
  const eggs = lines.filter(({ reading }) => reading.eggs !== null).map(({ number }) => number)
  for (const [name, wish] of fixed.standards) requireStandard(name, wish)
  return [
    ...[...fixed.standards].map(([name, wish]) => ({ what: name, value: wish, lines: ruled(`standards.${name}`) })),
    ...[...fixed.sizes].map(([name, { quantity, value }]) => ({
      what: name,
      value: `${value} ${quantity === 'mass' ? 'g' : 'ml'}`,
      lines: ruled(`sizes.${name}`),
    })),
    ...[...fixed.lines].map(([number, { standard, size }]) => ({
      what: `line ${number}`,
      value: standard ?? `${size!.value} ${size!.quantity === 'mass' ? 'g' : 'ml'}`,
      lines: [number],
    })),
    ...[...fixed.densities].map(([name, value]) => ({
      what: `density of ${name}`,
      value: `${value} g/ml`,
      lines: ruled(`densities.${name}`),
    })),
    ...(fixed.egg === null ? [] : [{ what: "the cook's own egg", value: `${fixed.egg} g in its shell`, lines: eggs }]),
    ...(fixed.oven === null ? [] : [{ what: 'oven', value: `${fixed.oven} °C`, lines: [] }]),
  ]
}

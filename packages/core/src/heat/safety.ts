import { badOption, show } from '../error.js'
import { type CoreTemperatureRow, coreTemperatures as rows } from '../tables/index.js'
import { type Cited, cited } from './cited.js'
import { tidy, toCelsius } from './degrees.js'

/** A temperature that an authority states, or that an old book printed. */
export interface CoreTemperature extends Cited {
  readonly id: string
  readonly label: string
  readonly of: CoreTemperatureRow['of']
  readonly degC: readonly [number, number]
  readonly degF: readonly [number, number]
  readonly restMinutes: number
  /** False for a figure that the authority of today does not hold safe. */
  readonly safe: boolean
  readonly year: number
}

/** What may be in a dish that decides how hot its middle must become. */
export type Content = 'egg' | 'milk' | 'poultry' | 'meat' | 'minced-meat' | 'fish'

const rowFor: Readonly<Record<Content, string>> = {
  egg: 'egg-dishes',
  milk: 'casseroles',
  poultry: 'poultry',
  meat: 'whole-cuts',
  'minced-meat': 'minced-meat',
  fish: 'fish',
}
const contents = Object.keys(rowFor)

function asCore(row: CoreTemperatureRow): CoreTemperature {
  const { id, label, of, degF, restMinutes = 0, safe, year } = row
  const degC = [tidy(toCelsius(degF[0])), tidy(toCelsius(degF[1]))] as const
  return { id, label, of, degC, degF, restMinutes, safe, year, ...cited(row) }
}

/**
 * Every temperature that an authority on food safety states, and the figures of old books beside them, which are not held safe today.
 *
 * @example coreTemperatures().find(({ id }) => id === 'poultry')?.degF   // [165, 165]
 */
export function coreTemperatures(): readonly CoreTemperature[] {
  return rows.map(asCore)
}

/** One of them; for ids out of our own tables, where none can be missing. */
export function coreTemperature(id: string): CoreTemperature {
  const row = rows.find((one) => one.id === id)
  if (!row) throw badOption('core', `"${id.slice(0, 40)}" is not a stated temperature; give one of ${rows.map((one) => one.id).join(', ')}`)
  return asCore(row)
}

/**
 * The highest temperature that a dish's contents call for at its middle; null where nothing in it calls for one.
 *
 * @param ids of rows that the food itself brings
 * @throws PottleError `bad-option` for contents that are not known
 * @example coreFor([], ['egg'])?.degF[0]   // 160
 */
export function coreFor(ids: readonly string[], inside: readonly Content[]): CoreTemperature | null {
  if (!Array.isArray(inside as unknown)) throw badOption('contains', `give a list of ${contents.join(', ')}`)
  const unknown = inside.find((content) => !contents.includes(content))
  if (unknown !== undefined) throw badOption('contains', `${show(unknown)} is not known; give any of ${contents.join(', ')}`)
  const stated = [...ids, ...inside.map((content) => rowFor[content])].map(coreTemperature).filter(({ of }) => of === 'centre')
  return stated.reduce<CoreTemperature | null>((most, one) => (most && most.degF[0] >= one.degF[0] ? most : one), null)
}

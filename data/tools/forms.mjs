/** Faults of texts that have a form which no type tells: ids, names, ratios, exact values. */
import { inside, partsOf, say } from './say.mjs'

/** The units that exact values are stated in, and the quantity of each. */
export const units = {
  in3: 'volume',
  ml: 'volume',
  gr: 'mass',
  g: 'mass',
  lb: 'mass',
  mm: 'length',
  in: 'length',
  s: 'time',
  each: 'count',
  ratio: 'ratio',
}

/** Digits without a sign, with a point or a fraction bar where wanted: 231, 0.25, 2150.4202/8. */
const number = String.raw`\d{1,30}(?:\.\d{1,30})?`
const ratioPattern = new RegExp(`^${number}(?:/${number})?$`)
export const isRatio = (text) => ratioPattern.test(text)

/** `"231 in3"` in its parts; undefined where it is no value with a unit. */
export function readValue(text) {
  const [ratio, unit, ...more] = text.split(' ')
  return isRatio(ratio) && unit !== undefined && more.length === 0 ? { ratio, unit } : undefined
}

const slug = (text) =>
  /^[a-z0-9']+([.\- ][a-z0-9']+)*$/i.test(text) ? undefined : 'write letters and figures, with hyphens or points between the words'
const lowSlug = (text) => slug(text) ?? lower(text)
const lower = (text) =>
  text === text.toLowerCase() && text === text.trim() ? undefined : 'write it in lower case, without spaces around it'
const ratio = (text) => (isRatio(text) ? undefined : 'write a number or a fraction as text, such as "1/8"')
const sourceId = (text) =>
  /^[a-z0-9-]+$/.test(text) ? undefined : 'write author and year in lower case with hyphens, such as "nicholson-1912"'

function value(text) {
  const read = readValue(text)
  if (!read) return 'write a number and its unit, such as "231 in3"'
  return read.unit in units ? undefined : `use one of the units ${Object.keys(units).join(', ')}`
}

/** What holds in every table. */
const everywhere = { id: slug, names: lower, classes: lowSlug, ratio }

/** What holds in one. */
const inTable = {
  places: { id: lowSlug },
  goods: { id: lowSlug },
  measures: { id: lowSlug },
  standards: { id: lowSlug, family: lowSlug, value, ends: value },
  'modern-units': { value, step: ratio },
  'assize-regimes': { grains: ratio, grainsLow: ratio },
  'assize-rules': { ounces: ratio, ends: ratio },
  'fixed-loaves': { ounces: ratio, ends: ratio },
  'loaf-coins': { pence: ratio },
  'loaf-kinds': { pence: ratio },
  'wheat-series': { harvest: ratio },
  numbers: { value: ratio },
  sources: { id: sourceId },
}

const textsOf = (field) => (Array.isArray(field) ? field : [field]).filter((text) => typeof text === 'string')

/** @returns {{table: string, row: string, said: string}[]} */
export function findFormFaults(tables) {
  return Object.entries(tables).flatMap(([table, rows]) => {
    const forms = Object.entries({ ...everywhere, ...inTable[table] })
    return rows.flatMap((row) =>
      partsOf(row).flatMap(({ path, part }) =>
        forms.flatMap(([field, faultOf]) =>
          textsOf(part[field]).flatMap((text) => {
            const fault = faultOf(text)
            return fault ? [say(table, row, inside(path, `${field} has "${text}": ${fault}`))] : []
          }),
        ),
      ),
    )
  })
}

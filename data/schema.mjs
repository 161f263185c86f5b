/**
 * What a row of each table must look like, for the checker alone: nothing here runs in the library.
 *
 * A table without a shape of its own here is held to the general rules of `tools/faults.mjs`, and the compiler holds every table to its
 * type in `packages/core/src/tables/schema/`.
 */
import { z } from 'zod'

export const grades = ['statute', 'standard', 'measured', 'handbook', 'scholarship', 'practice', 'judgement']
/** Grades that rest on no text, so that there is nothing to have read. */
export const ungrounded = ['practice', 'judgement']
export const checks = ['read', 'memory', 'none']
export const quantities = ['mass', 'volume', 'count', 'length', 'time', 'temperature', 'ratio']
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
}

/** Tables of words and places claim no figure, so their rows carry no source; `sources` are the sources. */
export const sourceless = ['places', 'words', 'numbers', 'particles', 'spellings', 'things', 'sources']

/** Digits without a sign, with a point or a fraction bar where wanted: 231, 0.25, 2150.4202/8. */
const number = String.raw`\d{1,30}(?:\.\d{1,30})?`
export const ratioPattern = new RegExp(`^${number}(?:/${number})?$`)

const kinds = [
  ...['weight', 'capacity', 'count', 'egg', 'loaf', 'vessel', 'comparison', 'coin', 'piece', 'pennyworth', 'time', 'length'],
  ...['consistency', 'temperature'],
]

const text = z.string().min(1)
const slug = z.string().regex(/^[a-z0-9']+([.\- ][a-z0-9']+)*$/, 'write it in lower case, with hyphens or points between the words')
const lower = z
  .string()
  .refine((name) => name === name.toLowerCase() && name === name.trim(), 'write it in lower case, without spaces around it')
const ratio = z.string().regex(ratioPattern, 'write a number or a fraction as text, such as "1/8"')
const value = z
  .string()
  .refine(
    (words) => ratioPattern.test(words.split(' ')[0] ?? '') && words.split(' ').length === 2,
    'write a number and its unit, such as "231 in3"',
  )
  .refine((words) => (words.split(' ')[1] ?? '') in units, `use one of the units ${Object.keys(units).join(', ')}`)
const years = z.tuple([z.number().int(), z.number().int()])
const spread = z.strictObject({ low: z.number(), best: z.number(), high: z.number() })

export const citation = z.strictObject({ id: text, at: text.optional() })
const attested = { source: z.array(citation).min(1), grade: z.enum(grades), checked: z.enum(checks), note: text.optional() }
const dated = { years: years.optional(), place: text.optional() }

const sense = z.strictObject({
  id: text,
  label: text,
  of: text,
  ratio,
  except: z.array(text).min(1).optional(),
  things: z.array(text).min(1).optional(),
  likelihood: z.number().positive().optional(),
  ...dated,
  ...attested,
})

const name = z.strictObject({ family: text.optional(), given: text.optional(), literal: text.optional() })
const field = text.optional()

/** The shape of the rows, table by table. */
export const shapes = {
  places: z.strictObject({ id: slug, label: text, within: text.optional() }),
  standards: z.strictObject({
    id: slug,
    label: text,
    family: slug,
    quantity: z.enum(quantities),
    value,
    ends: z.tuple([value, value]).optional(),
    ...dated,
    ...attested,
  }),
  measures: z.strictObject({ id: slug, label: text, kind: z.enum(kinds), names: z.array(lower), senses: z.array(sense).min(1) }),
  usage: z.strictObject({
    id: slug,
    family: slug,
    things: z.array(text).min(1).optional(),
    measures: z.array(text).min(1).optional(),
    weights: z.record(z.string(), z.number().positive().max(1)),
    reason: text,
    ...dated,
    ...attested,
  }),
  goods: z.strictObject({
    id: slug,
    label: text,
    names: z.array(lower),
    classes: z.array(slug),
    density: spread.optional(),
    repose: z.strictObject({ ...spread.shape, ...attested }).optional(),
    printed: z
      .array(z.strictObject({ density: z.number().positive(), fault: text.optional(), ...dated, ...attested }))
      .min(1)
      .optional(),
    ...attested,
  }),
  tolerances: z.strictObject({ id: slug, kind: z.enum(kinds), factor: spread, ...dated, ...attested }),
  sources: z.strictObject({
    id: z.string().regex(/^[a-z0-9-]+$/, 'write author and year in lower case with hyphens, such as "nicholson-1912"'),
    type: text,
    title: text,
    author: z.array(name).min(1).optional(),
    editor: z.array(name).min(1).optional(),
    issued: z.strictObject({ 'date-parts': z.array(z.array(z.number().int())).min(1) }).optional(),
    publisher: field,
    'publisher-place': field,
    'container-title': field,
    volume: field,
    number: field,
    page: field,
    edition: field,
    URL: field,
    DOI: field,
    language: field,
    note: field,
    custom: z.strictObject({ short: text, seen: text }),
  }),
}

import type * as z from 'zod'

/** A place in a value that does not fit its schema, and what would fit there. */
export interface Misfit {
  readonly path: readonly PropertyKey[]
  readonly detail: string
}

const kindNames: Readonly<Record<string, string>> = {
  string: 'a string',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'an array',
  object: 'an object',
  record: 'an object',
  null: 'null',
}

const nameOf = (kind: string): string => kindNames[kind] ?? kind

function listed(choices: readonly string[]): string {
  return choices.length < 2 ? choices.join('') : `${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}`
}

const longest = 40

/** What was given, told shortly; nothing where nothing was given. */
function inPlaceOf(input: unknown): string {
  if (input === undefined) return ''
  if (Array.isArray(input)) return ', not an array'
  if (typeof input === 'object' && input !== null) return ', not an object'
  return `, not ${JSON.stringify(typeof input === 'string' ? input.slice(0, longest) : input)}`
}

/** Whether a part of a union was not meant, the value being of another kind altogether. */
const isOfAnotherKind = (issue: z.core.$ZodIssue): issue is z.core.$ZodIssueInvalidType =>
  issue.code === 'invalid_type' && issue.path.length === 0

/** The kinds of value that the parts of a union take. */
const kindsOf = (parts: readonly (readonly z.core.$ZodIssue[])[]): string[] => [
  ...new Set(parts.flat().flatMap((one) => (isOfAnotherKind(one) ? [nameOf(one.expected)] : []))),
]

function fieldsOf(schema: unknown): string {
  const { shape = {} } = (schema as Partial<z.ZodObject>) ?? {}
  const names = Object.keys(shape)
  return names.length === 0 ? 'there are none' : `there are ${names.join(', ')}`
}

/** What would have been right, where the schema has no words of its own for it; a field goes by the name that the request has for it. */
const sayWith =
  (field: string): z.core.$ZodErrorMap =>
  (issue) => {
    switch (issue.code) {
      case 'invalid_type':
        return `give ${nameOf(issue.expected)}${inPlaceOf(issue.input)}`
      case 'invalid_value':
        return `give ${listed(issue.values.map((value) => JSON.stringify(value)))}${inPlaceOf(issue.input)}`
      case 'too_small':
        return `give ${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}`
      case 'too_big':
        return `give ${issue.inclusive ? 'at most' : 'less than'} ${issue.maximum}`
      case 'unrecognized_keys':
        return `there is no such ${field} here; ${fieldsOf(issue.inst)}`
      case 'invalid_union':
        return `give ${listed(kindsOf(issue.errors))}${inPlaceOf(issue.input)}`
      default:
        return undefined
    }
  }

/** A union that one part alone was meant of is told by what is wrong with that part. */
function misfitsOf(issue: z.core.$ZodIssue, before: readonly PropertyKey[] = []): readonly Misfit[] {
  const path = [...before, ...issue.path]
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => ({ path: [...path, key], detail: issue.message }))
  if (issue.code === 'invalid_union') {
    const [meant, ...others] = issue.errors.filter((part) => !part.some(isOfAnotherKind))
    if (meant && others.length === 0) return meant.flatMap((one) => misfitsOf(one, path))
  }
  return [{ path, detail: issue.message }]
}

/** A value that fits a schema, or where it does not and what would. */
export type Fitting<Output> = { readonly data: Output } | { readonly misfits: readonly Misfit[] }

/** Holds a value to a schema. */
export function fitting<Schema extends z.ZodType>(schema: Schema, value: unknown, field: string): Fitting<z.output<Schema>> {
  const result = schema.safeParse(value, { error: sayWith(field) })
  return result.success ? { data: result.data } : { misfits: result.error.issues.flatMap((issue) => misfitsOf(issue)) }
}

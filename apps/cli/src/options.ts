import { parseArgs } from 'node:util'
import { sayNearest } from '@pottle/core'
import { UsageError } from './fault.js'

/** One option of a command. One without `value` is a switch. */
export interface Option {
  readonly says: string
  /** What stands for its value in the help: `YEAR`. */
  readonly value?: string
  /** It may be given more than once. */
  readonly many?: true
  readonly short?: string
}

export type Options = Readonly<Record<string, Option>>

/** What was given, by the names of the options. */
export type Given<Named extends Options> = {
  readonly [Name in keyof Named]: Named[Name] extends { many: true }
    ? readonly string[]
    : Named[Name] extends { value: string }
      ? string | undefined
      : boolean
}

export interface Parsed<Named extends Options> {
  /** What is no option. */
  readonly words: readonly string[]
  readonly given: Given<Named>
}

type Token = Extract<NonNullable<ReturnType<typeof parseArgs>['tokens']>[number], { kind: 'option' }>

function requireOption({ name, rawName }: Token, options: Options): Option {
  const option = Object.hasOwn(options, name) ? options[name] : undefined
  if (option) return option
  throw new UsageError(rawName, `there is no such option${sayNearest(name, Object.keys(options), 3, '--')}`)
}

/** The value of an option; `true` for a switch. */
function takenFrom(token: Token, option: Option): string | true {
  const { rawName, value, inlineValue } = token
  if (option.value === undefined) {
    if (inlineValue) throw new UsageError(rawName, 'it takes no value')
    return true
  }
  if (value === undefined || value === '' || (!inlineValue && /^-./.test(value)))
    throw new UsageError(rawName, `it needs a value, ${option.value}: ${option.says}`)
  return value
}

/**
 * Divides a command line into words and options, by node's own `parseArgs`; the errors are ours, so that they say what would be right.
 *
 * @throws UsageError for an option that there is none of, a missing value, or a value where none is taken
 */
export function parseOptions<Named extends Options>(args: readonly string[], options: Named): Parsed<Named> {
  const config = Object.fromEntries(
    Object.entries(options).map(([name, { value, short }]) => [
      name,
      { type: value === undefined ? ('boolean' as const) : ('string' as const), ...(short ? { short } : {}) },
    ]),
  )
  const { tokens, positionals } = parseArgs({ args: [...args], options: config, allowPositionals: true, strict: false, tokens: true })
  const given: Record<string, string | boolean | string[] | undefined> = Object.fromEntries(
    Object.entries(options).map(([name, { value, many }]) => [name, many ? [] : value === undefined ? false : undefined]),
  )
  for (const token of tokens.filter((one) => one.kind === 'option')) {
    const value = takenFrom(token, requireOption(token, options))
    const list = given[token.name]
    if (Array.isArray(list)) list.push(String(value))
    else given[token.name] = value
  }
  return { words: positionals, given: given as Given<Named> }
}

/**
 * A number that was given as text; undefined where none was.
 *
 * @throws UsageError where the text is no number
 */
export function numberOf(option: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined
  if (/^[+-]?(\d{1,15}(\.\d{0,15})?|\.\d{1,15})$/.test(text)) return Number(text)
  throw new UsageError(`--${option}`, `"${text.slice(0, 40)}" is not a number`)
}

/** @throws UsageError where the text is none of the names */
export function oneOf<Name extends string>(option: string, text: string | undefined, names: readonly Name[]): Name | undefined {
  if (text === undefined) return undefined
  const name = names.find((one) => one === text)
  if (name !== undefined) return name
  throw new UsageError(`--${option}`, `"${text.slice(0, 40)}" won't do; choose ${names.join(', ')}`)
}

/**
 * The form that was asked for by `--format` or by `--json`, which is short for one of them.
 *
 * @throws UsageError where the two contradict each other, or there is no such form
 */
export function formatFrom<Name extends string>(
  { format, json }: { readonly format: string | undefined; readonly json: boolean },
  names: readonly Name[],
  byJson: Name,
): Name | undefined {
  const asked = oneOf('format', format, names)
  if (json && asked !== undefined && asked !== byJson) throw new UsageError('--json', `it contradicts --format ${asked}; give one of them`)
  return json ? byJson : asked
}

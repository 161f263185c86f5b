import { type Answer, type ConvertOptions, convert, type Plan, type Sheet, type SheetOptions, sayNearest, workSheet } from '@pottle/core'
import { UsageError } from '../fault.js'

/** What every line has unless it says otherwise. */
export interface Defaults {
  readonly year?: string | undefined
  readonly place?: string | undefined
}

type Fields = Readonly<Record<string, unknown>>

const ofPhrase = ['phrase', 'year', 'place', 'thing', 'to', 'coverage', 'standard'] as const satisfies readonly (
  | 'phrase'
  | keyof ConvertOptions
)[]
const ofReceipt = ['text', 'year', 'place', 'title', 'coverage', 'plan'] as const satisfies readonly ('text' | keyof SheetOptions)[]

const example = '{"phrase": "a pottle of cream", "year": 1690}'
const utf8 = new TextDecoder('utf-8', { fatal: true })

/** Where the whole line is at fault rather than a field of it. */
const whole = ''

function parse(bytes: Uint8Array): Fields {
  let value: unknown
  try {
    value = JSON.parse(utf8.decode(bytes))
  } catch (error) {
    throw new UsageError(
      whole,
      error instanceof SyntaxError ? `the line is not JSON; give an object such as ${example}` : 'the line is not text in UTF-8',
    )
  }
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Fields
  throw new UsageError(whole, `the line is not an object; give one such as ${example}`)
}

function requireFields(fields: Fields, known: readonly string[]): void {
  const unknown = Object.keys(fields).find((name) => !known.includes(name))
  if (unknown !== undefined)
    throw new UsageError(unknown.slice(0, 40), `there is no such field beside ${known[0]}${sayNearest(unknown, known)}`)
}

/**
 * Answers one line: a `phrase` is converted, a `text` is worked into a sheet.
 *
 * @throws UsageError for a line that is no question; PottleError where the library has no answer
 */
export function answerTo(bytes: Uint8Array, defaults: Defaults): Answer | Sheet {
  const fields = parse(bytes)
  if (fields.phrase !== undefined && fields.text !== undefined)
    throw new UsageError('text', 'give a phrase or the text of a receipt, not both')
  if (fields.text !== undefined) {
    requireFields(fields, ofReceipt)
    // The library checks the types of what a line says: it takes whatever JSON holds.
    const { text, ...rest } = { ...defaults, ...fields } as SheetOptions & { readonly text: string; readonly plan?: Plan }
    return workSheet(text, rest)
  }
  requireFields(fields, ofPhrase)
  const { phrase, ...rest } = { ...defaults, ...fields } as ConvertOptions & { readonly phrase: string }
  return convert(phrase, rest)
}

import type { Context } from 'hono'
import { originOf } from '../../embed/index.js'
import { asDate, sayYear } from './dates.js'
import { placeLabel } from './places.js'

/** What a form sent, by the names of its fields; a field left empty is absent. */
export type Asked = Readonly<Record<string, string | undefined>>

/** More than any form of ours has. */
const mostFields = 300

/** What copied text has in it that nobody sees: soft hyphens, marks of no width, and controls that are neither tabs nor ends of lines. */
const unseen = /[\u00ad\u200b\u2060\ufeff]|(?![\t\n\r])\p{Cc}/gu

/** What was typed, as the library takes it. */
function taken(name: string, typed: string): string {
  const seen = typed.replace(unseen, '').trim()
  return name === 'year' ? asDate(seen) : seen
}

export function askedIn(entries: Iterable<readonly [string, unknown]>): Asked {
  const asked: Record<string, string> = Object.create(null)
  for (const [name, value] of [...entries].slice(0, mostFields)) {
    const seen = typeof value === 'string' ? taken(name, value) : ''
    if (seen !== '' && asked[name] === undefined) asked[name] = seen
  }
  return asked
}

/** What the address asks. */
export const askedOf = (context: Context): Asked => askedIn(new URL(context.req.url).searchParams)

/** Whether anything was asked at all, so that a form that was only opened is not told of faults. */
export const wasSent = (context: Context, field: string): boolean => new URL(context.req.url).searchParams.has(field)

/** An address with what is to be asked there. */
export function addressOf(path: string, asked: Readonly<Record<string, string | number | null | undefined>>): string {
  const query = new URLSearchParams()
  for (const [name, value] of Object.entries(asked))
    if (value !== undefined && value !== null && value !== '') query.set(name, String(value))
  const text = query.toString()
  return text === '' ? path : `${path}?${text}`
}

/** What was asked in quotation marks, of which it may have had its own. */
export const quoted = (phrase: string): string => `“${phrase.replace(/^["“”‘'](.+)["“”’']$/su, '$1')}”`

/** The same address on the server that was asked, to be kept and passed on. */
export const absolute = (context: Context, address: string): string => new URL(address, originOf(context)).href

/** `London, 1690`, as a reader says a setting. */
export function saySetting(setting: { readonly year: number | string | null; readonly place?: string }): string {
  const { year, place } = setting
  return [place ? placeLabel(place) : '', year === null ? 'no year given' : sayYear(year)].filter(Boolean).join(', ')
}

import { settingOf } from '@pottle/core'
import type { Context } from 'hono'
import { originOf } from '../../embed/index.js'
import { placeLabel } from './places.js'

/** What a form sent, by the names of its fields; a field left empty is absent. */
export type Asked = Readonly<Record<string, string | undefined>>

/** More than any form of ours has. */
const mostFields = 300

export function askedIn(entries: Iterable<readonly [string, unknown]>): Asked {
  const asked: Record<string, string> = Object.create(null)
  for (const [name, value] of [...entries].slice(0, mostFields)) {
    if (typeof value === 'string' && value.trim() !== '' && asked[name] === undefined) asked[name] = value.trim()
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

/** The same address on the server that was asked, to be kept and passed on. */
export const absolute = (context: Context, address: string): string => new URL(address, originOf(context)).href

/** `London, 1690`, as a reader says a setting. */
export function saySetting(setting: { readonly year: number | string | null; readonly place?: string }): string {
  const { year, place } = setting
  return [place ? placeLabel(place) : '', year === null ? 'no year given' : sayYear(year)].filter(Boolean).join(', ')
}

/** A year as people say it: `about 1690`, `the 1690s`, `1650 to 1700`. */
export function sayYear(year: number | string): string {
  const text = String(year)
  const about = /^(\d{4})~$/.exec(text)
  if (about) return `about ${about[1]}`
  if (/^\d{3}X$/.test(text)) return `the ${text.slice(0, 3)}0s`
  if (/^\d{4}\/\d{4}$/.test(text)) return text.replace('/', ' to ')
  return text
}

/** The first and last year that a date leaves open. */
export function yearsIn(date: string): { from: number; to: number } {
  const { from, to } = settingOf(date)
  return { from, to }
}

import type { Context } from 'hono'
import { accepts } from 'hono/accepts'
import { faulty } from './problem.js'

/**
 * The media type to answer with: the one that the Accept header (RFC 9110, section 12.5.1) ranks highest among those the route has, the first
 * where the header is absent or allows anything.
 *
 * @throws ProblemError 406 that lists the types to be had
 */
export function negotiate<Type extends string>(context: Context, types: readonly [Type, ...Type[]]): Type {
  const header = context.req.header('accept')
  if (header === undefined || header === '*/*' || header === types[0]) return types[0]
  const chosen = accepts(context, { header: 'Accept', supports: [...types], default: '', match: bestOf })
  if (chosen !== '') return chosen as Type
  throw faulty('not-acceptable', [{ parameter: 'Accept', detail: `ask for one of ${types.join(', ')}` }])
}

interface Wanted {
  readonly type: string
  readonly params: Readonly<Record<string, string>>
  readonly q: number
}

function covers(pattern: string, type: string): boolean {
  return pattern === '*/*' || pattern === type || (pattern.endsWith('/*') && type.startsWith(pattern.slice(0, -1)))
}

/** How much a type is wanted: by the narrowest range that covers it, as RFC 9110 says. */
function weightOf(type: string, wanted: readonly Wanted[]): number {
  const covering = wanted
    .filter((one) => covers(one.type.toLowerCase(), type))
    .sort((a, b) => b.type.replaceAll('*', '').length - a.type.replaceAll('*', '').length)
  return covering[0]?.q ?? 0
}

function bestOf(wanted: readonly Wanted[], { supports }: { supports: string[] }): string {
  const [best] = supports.map((type) => ({ type, weight: weightOf(type, wanted) })).sort((a, b) => b.weight - a.weight)
  return best && best.weight > 0 ? best.type : ''
}

const forPrograms = 'application/problem+json'

/** Whether a caller would sooner have a page than data: a browser that was led here, and no program that takes whatever there is. */
export function prefersPage(context: Context): boolean {
  const supports = [forPrograms, 'application/json', 'text/html']
  return accepts(context, { header: 'Accept', supports, default: forPrograms, match: bestOf }) === 'text/html'
}

import type { Kind } from './entry.js'

/** A question as attributes, queries and directives state it: everything is text until the library reads it. */
export interface Question {
  readonly kind: Kind
  readonly asked: Readonly<Record<string, string>>
}

/** What may be said beside each kind of question; the names are those of the API. */
export const parameters: Readonly<Record<Kind, readonly string[]>> = {
  measure: ['phrase', 'year', 'place', 'thing', 'to', 'standard'],
  heat: ['phrase', 'year'],
  loaf: ['coin', 'kind', 'year', 'place'],
}

/** Where the API answers each kind of question. */
const routes: Readonly<Record<Kind, string>> = { measure: 'v1/convert', heat: 'v1/oven-heats', loaf: 'v1/loaves' }

/** Where the same server answers a person. */
const pages: Readonly<Record<Kind, string>> = { measure: 'measure', heat: 'heat', loaf: 'loaves' }

/**
 * A question out of named texts; empty ones are as if absent, and names that it does not know are left out.
 *
 * @example questionOf('heat', (name) => ({ phrase: 'a slack oven', year: '1796' })[name]).asked.year   // '1796'
 */
export function questionOf(kind: Kind, read: (name: string) => string | null | undefined): Question {
  const given = parameters[kind].map((name) => [name, (read(name) ?? '').trim().replace(/\s+/g, ' ')] as const)
  return { kind, asked: Object.fromEntries(given.filter(([, text]) => text !== '')) }
}

/**
 * A question as the query of an address.
 *
 * @example queryOf({ kind: 'heat', asked: { phrase: 'a slack oven', year: '1796' } })   // 'phrase=a+slack+oven&year=1796'
 */
export const queryOf = ({ asked }: Question): string => new URLSearchParams(asked).toString()

/** The address of a path below a base, which may itself have a path. */
const below = (base: string, path: string): string => `${base.replace(/\/$/, '')}/${path}`

/**
 * The address at which the API answers a question.
 *
 * @example apiAddress('https://pottle.example', { kind: 'heat', asked: { phrase: 'slack' } })   // 'https://pottle.example/v1/oven-heats?phrase=slack'
 */
export const apiAddress = (base: string, question: Question): string => below(base, `${routes[question.kind]}?${queryOf(question)}`)

/**
 * The address of the page with the whole working.
 *
 * @example pageAddress('https://pottle.example', { kind: 'loaf', asked: { coin: 'penny' } })   // 'https://pottle.example/loaves?coin=penny'
 */
export const pageAddress = (base: string, question: Question): string => below(base, `${pages[question.kind]}?${queryOf(question)}`)

/**
 * The address of the small page that shows a question's answer; `.svg` for the picture.
 *
 * @example embedAddress('https://pottle.example', { kind: 'heat', asked: { phrase: 'slack' } }, '.svg')   // 'https://pottle.example/embed/heat.svg?phrase=slack'
 */
export const embedAddress = (base: string, question: Question, ending: '' | '.svg' = ''): string =>
  below(base, `embed/${question.kind}${ending}?${queryOf(question)}`)

/**
 * The question that an address of ours asks, whichever of the pages it names, and the base that it stands below.
 *
 * @example questionAt(new URL('https://pottle.example/loaves?coin=penny&year=1680'))?.question.kind   // 'loaf'
 */
export function questionAt({ origin, pathname, searchParams }: URL): { base: string; question: Question } | undefined {
  const [, above, name] = /^(.*?\/)(?:embed\/)?(\w+)(?:\.svg)?$/.exec(pathname) ?? []
  const kind = (['measure', 'heat', 'loaf'] as const).find((one) => name === one || name === pages[one])
  return kind && { base: `${origin}${above}`, question: questionOf(kind, (parameter) => searchParams.get(parameter)) }
}

/**
 * The words of a question while there is no answer: the phrase itself, or the loaf by its coin and kind.
 *
 * @example wordsOf({ kind: 'loaf', asked: { coin: 'eighteenpenny' } })   // 'an eighteenpenny loaf'
 */
export function wordsOf({ kind, asked }: Question): string {
  if (kind !== 'loaf') return asked.phrase ?? ''
  return ['a', asked.coin ?? 'penny', asked.kind, 'loaf']
    .filter(Boolean)
    .join(' ')
    .replace(/^a (?=[aeiou])/, 'an ')
}

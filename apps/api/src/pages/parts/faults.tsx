import type { PottleError } from '@pottle/core'
import { findGood } from '@pottle/core/tables'
import { type Asked, addressOf } from './asked.js'

/** A piece of what was typed. */
interface Piece {
  readonly text: string
  readonly unread: boolean
}

/** Cuts what was typed at the words that were not understood, so that every character of it is shown. */
function piecesOf(phrase: string, unread: readonly string[]): readonly Piece[] {
  const pieces: Piece[] = []
  let at = 0
  for (const word of unread) {
    const start = phrase.toLowerCase().indexOf(word.toLowerCase(), at)
    if (start < 0) continue
    if (start > at) pieces.push({ text: phrase.slice(at, start), unread: false })
    pieces.push({ text: phrase.slice(start, start + word.length), unread: true })
    at = start + word.length
  }
  if (at < phrase.length) pieces.push({ text: phrase.slice(at), unread: false })
  return pieces
}

/** What was typed, with the words that gave nothing underlined, and said. */
export function WordsRead({ phrase, unread }: { phrase: string; unread: readonly string[] }) {
  return (
    <p class="read">
      {piecesOf(phrase, unread).map(({ text, unread: lost }) =>
        lost ? (
          <span class="unread">
            {text}
            <span class="visually-hidden"> (not understood)</span>
          </span>
        ) : (
          <span class="understood">{text}</span>
        ),
      )}
    </p>
  )
}

/** The article that goes before a word. */
const articleFor = (word: string): string => (/^[aeiou]/i.test(word) ? 'an' : 'a')

/** The phrase with the first word that was not understood put right, and the article before it. */
function mended(phrase: string, unread: string, nearest: string): string {
  const start = phrase.toLowerCase().indexOf(unread.toLowerCase())
  if (start < 0) return phrase
  const before = phrase.slice(0, start).replace(/\ban? $/, `${articleFor(nearest)} `)
  return `${before}${nearest}${phrase.slice(start + unread.length)}`
}

/** The phrase with an amount before it, where every word was understood and none of them said how much. */
function measured(phrase: string): readonly string[] {
  if (findGood(phrase)) return [`a pint of ${phrase}`, `a pound of ${phrase}`]
  return [/s$/.test(phrase) ? `two ${phrase}` : `${articleFor(phrase)} ${phrase}`]
}

/** What may have been meant: the unread word put right, or an amount where the words name a thing alone. */
function insteadOf(phrase: string, { words }: PottleError): readonly string[] {
  if (!words) return findGood(phrase) ? measured(phrase) : []
  const [first] = words.unread
  return first === undefined ? measured(phrase) : words.nearest.map((word) => mended(phrase, first, word))
}

/** More would be a list to search, not a hint. */
const mostTries = 3

/** The same question mended in the likeliest ways; only those that are answered. */
function Nearest({ path, asked, error, answers }: Pick<FaultsProps, 'path' | 'asked' | 'error' | 'answers'>) {
  const { phrase } = asked
  if (!phrase) return null
  const tries = [...new Set(insteadOf(phrase, error))]
    .map((one) => ({ ...asked, phrase: one }))
    .filter(answers)
    .slice(0, mostTries)
  if (tries.length === 0) return null
  return (
    <p>
      Did you mean{' '}
      {tries.map((one, i) => (
        <>
          {i > 0 && ', '}
          <a href={addressOf(path, one)}>{one.phrase}</a>
        </>
      ))}
      ?
    </p>
  )
}

const titles = {
  'bad-option': 'Something in the question needs putting right',
  unreadable: 'These words could not be read',
  'no-answer': 'The words were read, but the question has no answer',
} as const

const fieldNames: Readonly<Record<string, string>> = {
  phrase: 'The words',
  text: 'The receipt',
  year: 'The year',
  place: 'The place',
  standard: 'The sense',
  guests: 'The guests',
  scale: 'How many times',
  dish: 'The dish',
  title: 'The title',
  count: 'The number of dishes',
  units: 'What it is measured in',
  oven: 'What it is baked in',
  coin: 'The loaf',
  kind: 'The bread',
  from: 'The first year',
  to: 'The last year',
  start: 'The oven',
  hours: 'The hours',
  batch: 'The minutes',
}

/** Where a fault has a field of its own in the form, a link leads to it. */
function Detail({ form, parameter, detail, fields }: { form: string; parameter: string; detail: string; fields: readonly string[] }) {
  const name = fieldNames[parameter] ?? parameter
  return (
    <li>
      {fields.includes(parameter) ? <a href={`#${form}-${parameter}`}>{name}</a> : name}: {detail}.
    </li>
  )
}

interface FaultsProps {
  readonly error: PottleError
  readonly asked: Asked
  readonly path: string
  /** The form's id, and those of its fields that faults may be about. */
  readonly form: string
  readonly fields: readonly string[]
  /** What to say where every word was understood and yet something is wanting. */
  readonly lacking: string
  /** What level its title has; the page's own where nothing is said. */
  readonly heading?: 'h1' | 'h2'
  /** Whether a question has an answer, so that nothing is proposed that has none. */
  readonly answers: (asked: Asked) => boolean
}

/** What was wrong, which words were understood, and what to try. */
export function Faults({ error, asked, path, form, fields, lacking, answers, heading: Heading = 'h1' }: FaultsProps) {
  const { code, faults, words } = error
  return (
    <section class="faults" aria-labelledby="faults" data-answer tabindex={-1}>
      <Heading id="faults">{titles[code]}</Heading>
      {words && asked.phrase && (
        <>
          <WordsRead phrase={asked.phrase} unread={words.unread} />
          <p class="small quiet">{words.unread.length > 0 ? 'Underlined with a wave: not understood. The rest was.' : lacking}</p>
        </>
      )}
      {code !== 'unreadable' && (
        <ul>
          {faults.map(({ parameter, detail }) => (
            <Detail form={form} parameter={parameter} detail={detail.replace(/\.$/, '')} fields={fields} />
          ))}
        </ul>
      )}
      <Nearest path={path} asked={asked} error={error} answers={answers} />
    </section>
  )
}

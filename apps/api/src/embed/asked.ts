import { PottleError } from '@pottle/core'
import { answerQuestion } from '@pottle/embed/library'
import { type Entry, type Kind, type Question, questionOf, sentence } from '@pottle/embed/view'
import type { Context } from 'hono'

/** A question and its answer, or why there is none. */
export type Reply = { readonly question: Question } & (
  | { readonly entry: Entry; readonly fault?: never }
  | { readonly entry?: never; readonly fault: PottleError }
)

/** Answers a question; what is wrong with it is an answer too, for a page that shows it. */
export function replyTo(question: Question): Reply {
  try {
    return { question, entry: answerQuestion(question) }
  } catch (error) {
    if (error instanceof PottleError) return { question, fault: error }
    throw error
  }
}

/** The reply to what the address asks. */
export const replyFor = (context: Context, kind: Kind): Reply => replyTo(questionOf(kind, (name) => context.req.query(name)))

/** Why there is no answer, in sentences; a wrong option is named, since it stands in the address and not in the words. */
export function reasonsFor({ code, faults, words }: PottleError): string[] {
  const reasons = faults.map(({ parameter, detail }) => (code === 'bad-option' ? `${parameter}: ${detail}` : sentence(detail)))
  const nearest = words?.nearest ?? []
  return nearest.length > 0 ? [...reasons, `The nearest names: ${nearest.join(', ')}.`] : reasons
}

/** The status of a reply: malformed options are the caller's slip, words without an answer are not. */
export function statusOf({ fault }: Reply): 200 | 400 | 422 {
  if (!fault) return 200
  return fault.code === 'bad-option' ? 400 : 422
}

/** Where the server is to be reached from outside: behind a proxy that ends TLS the request itself looks like plain HTTP. */
export function originOf(context: Context): string {
  const url = new URL(context.req.url)
  if (context.req.header('x-forwarded-proto') === 'https') url.protocol = 'https:'
  return url.origin
}

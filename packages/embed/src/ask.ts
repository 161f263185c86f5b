import type { Oracle } from './element/index.js'
import { apiAddress, type Entry, entryOfHeat, entryOfLoaf, entryOfMeasure, type Kind, pageAddress, type Question } from './view/index.js'

/** After so long a reader is past the line, and an answer would only move it. */
const patience = 10_000

// biome-ignore lint/suspicious/noExplicitAny: whatever a server sends; what does not fit throws, and the words stay
const readers: Readonly<Record<Kind, (answer: any) => Entry>> = { measure: entryOfMeasure, heat: entryOfHeat, loaf: entryOfLoaf }

async function fetchEntry(address: string, kind: Kind): Promise<Entry> {
  const response = await fetch(address, {
    credentials: 'omit',
    headers: { accept: 'application/json' },
    signal: AbortSignal.timeout(patience),
  })
  const body = await response.json()
  // A problem (RFC 9457) says in `detail` what was wrong with the question.
  if (!response.ok) throw new Error(body.detail ?? `${response.status}`)
  return readers[kind](body)
}

const asked = new Map<string, Promise<Entry>>()

/** Asks once for what a page shows many times; a failure is forgotten, so that it can be tried again. */
function once(address: string, kind: Kind): Promise<Entry> {
  const known = asked.get(address)
  if (known) return known
  const answer = fetchEntry(address, kind)
  asked.set(address, answer)
  answer.catch(() => asked.delete(address))
  return answer
}

/** Answers questions by the API at `home`, or at the address that an element names. */
export function askApi(home: string): Oracle {
  const at = (api: string | null): string => new URL(api ?? home, document.baseURI).href
  return {
    answer: async (question: Question, api) => once(apiAddress(at(api), question), question.kind),
    address: (question: Question, api) => pageAddress(at(api), question),
  }
}

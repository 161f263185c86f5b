import { createApp } from '@pottle/api'
import type { Operation, Promised } from './document.js'
import { askWrong } from './problems.js'
import { initOf, lineByLine, type Request, requestsOf } from './requests.js'

/** A request, and the promise of the document that its answer has to keep. */
export interface Trial {
  readonly says: string
  readonly promised: Promised
  ask(): Promise<Response>
}

const app = createApp()

/** A promise in words, by which it is known. */
export const say = ({ method, path }: Operation, { status, media, kind }: Promised): string =>
  [method, path, status, kind, media].filter(Boolean).join(' ')

async function askKnown(operation: Operation, request: Request): Promise<Response> {
  const init = initOf(operation, request, '*/*')
  const first = await app.request(request.address, init)
  return app.request(request.address, { ...init, headers: { ...init.headers, 'if-none-match': first.headers.get('etag') ?? '' } })
}

function triesOf(operation: Operation, request: Request, { status, media, kind }: Promised): Trial['ask'] | undefined {
  if (kind) return askWrong(operation, request, kind, media!)
  // Lines are answered with lines alone, which no document can say.
  if (request.type === lineByLine && media !== lineByLine) return undefined
  if (status === 200) return async () => app.request(request.address, initOf(operation, request, media!))
  return status === 304 ? () => askKnown(operation, request) : undefined
}

/** Every request that tries a promise: of answers each example, of problems the first. */
export function trialsOf(operation: Operation): readonly Trial[] {
  const requests = requestsOf(operation)
  return operation.promises.flatMap((promised) =>
    (promised.kind ? requests.slice(0, 1) : requests).flatMap((request) => {
      const ask = triesOf(operation, request, promised)
      return ask ? [{ says: `${say(operation, promised)}: ${request.type ?? ''} ${request.shows}`, promised, ask }] : []
    }),
  )
}

import type { Context } from 'hono'

const known = 'requestId' as never

/** The caller's own id for the request where it is short and plain, so that logs can be joined; else a new one. */
function newId(context: Context): string {
  const given = context.req.header('x-request-id')
  return given !== undefined && /^[\w.-]{1,64}$/.test(given) ? given : crypto.randomUUID()
}

/** The id of the request. It is kept only where `keepRequestId` asked for it, since few ask twice. */
export function requestId(context: Context): string {
  return context.get(known) ?? newId(context)
}

/** Settles the id of the request for all who ask after. */
export function keepRequestId(context: Context): string {
  const id = requestId(context)
  context.set(known, id as never)
  return id
}

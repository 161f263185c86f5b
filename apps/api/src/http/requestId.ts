import type { Context } from 'hono'
import { once } from '../once.js'

const known = 'requestId' as never

/** Tells one server from another, and from what it was before it was started again. Hosts give random numbers only once a request is there. */
const own = once(() => crypto.randomUUID().slice(0, 13))
let made = 0

/** The caller's own id for the request where it is short and plain, so that logs can be joined; else a new one. */
function newId(context: Context): string {
  const given = context.req.header('x-request-id')
  return given !== undefined && /^[\w.-]{1,64}$/.test(given) ? given : `${own()}-${(++made).toString(36)}`
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

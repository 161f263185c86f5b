import type { Context, Hono } from 'hono'
import { TrieRouter } from 'hono/router/trie-router'
import { problem } from './problem.js'
import { respond, type Tell } from './respond.js'

/** A preflight's answer may be kept for a day: what the API allows does not change between releases. */
const preflightSeconds = '86400'

/** What a route of the app answers: where GET is, HEAD is too. */
const methodsOf = (method: string): readonly string[] => (method === 'GET' ? ['GET', 'HEAD'] : method === 'ALL' ? [] : [method])

/** An Allow header. */
const allowed = (methods: readonly string[]): string => [...new Set(methods), 'OPTIONS'].join(', ')

/** The Allow header of the app as a whole: what any address of it answers. */
export const allowedAnywhere = (app: Hono): string => allowed(app.routes.flatMap(({ method }) => methodsOf(method)))

/** Every address of the app with the methods that it answers. */
function methodsByPath(app: Hono): (path: string) => readonly string[] {
  const paths = new Map<string, string[]>()
  for (const { path, method } of app.routes) {
    if (method !== 'ALL') paths.set(path, [...(paths.get(path) ?? []), ...methodsOf(method)])
  }
  const router = new TrieRouter<readonly string[]>()
  for (const [path, methods] of paths) router.add('ALL', path, methods)
  return (path) => router.match('ALL', path)[0].flatMap(([methods]) => methods)
}

function preflight(context: Context, allow: string): Response {
  const own = {
    allow,
    'access-control-allow-methods': allow,
    'access-control-allow-headers': 'Accept, Content-Type, If-None-Match, X-Request-Id',
    'access-control-max-age': preflightSeconds,
  }
  return respond(context, null, 204, own)
}

/**
 * Answers what no route answered: OPTIONS and CORS preflights (Fetch Standard, section 3.2.2) with what the address allows, other methods with
 * 405 and `Allow`, and an address that is none with 404.
 */
export function answerUnrouted(app: Hono, tell: Tell): (context: Context) => Response {
  let methodsAt: ((path: string) => readonly string[]) | undefined
  return (context) => {
    methodsAt ??= methodsByPath(app)
    const { path, method } = context.req
    const methods = methodsAt(path)
    const shown = path.slice(0, 200)
    if (methods.length === 0) return tell(context, problem('not-found', `there is nothing at ${shown}`))
    const allow = allowed(methods)
    if (method === 'OPTIONS') return preflight(context, allow)
    return tell(context, problem('method-not-allowed', `${shown} answers ${allow}`), { allow })
  }
}

import type { Route } from '../http/route.js'

/** A request of the reference and what really came of it. */
export interface Tried {
  readonly command: string
  readonly answer: string
}

/** Longer lists, and texts, are cut in what is shown. */
const mostItems = 2
const mostCharacters = 1200

/** The same value with its long lists cut, so that its form can be seen. */
function pruned(value: unknown): unknown {
  if (Array.isArray(value)) {
    const shown = value.slice(0, mostItems).map(pruned)
    return value.length > mostItems ? [...shown, `… and ${value.length - mostItems} more`] : shown
  }
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(Object.entries(value).map(([name, field]) => [name, pruned(field)]))
}

function shown(text: string, type: string): string {
  if (/json/.test(type)) return JSON.stringify(pruned(JSON.parse(text)), null, 2)
  return text.length > mostCharacters ? `${text.slice(0, mostCharacters)} …` : text
}

/** The address and the body of a route's example. */
export function exampleOf({ path, example, body }: Route): { readonly address: string; readonly body: unknown } {
  const address = path.includes('{') ? path.replace(/\{\w+\}/, example) : path + example
  const [medium] = Object.values(body?.media ?? {})
  return { address, body: Object.values(medium?.examples ?? {})[0] }
}

function commandFor(route: Route, origin: string): string {
  const { address, body } = exampleOf(route)
  const url = `'${origin}${address}'`
  if (route.method === 'get') return `curl ${url}`
  return `curl ${url} \\\n  -H 'Content-Type: application/json' \\\n  -d '${JSON.stringify(body, null, 2).replaceAll("'", "'\\''")}'`
}

/** Asks an app. */
export type Ask = (address: string, init: RequestInit) => Response | Promise<Response>

/** Makes the request of a route's example. */
export async function tryRoute(route: Route, origin: string, ask: Ask): Promise<Tried> {
  const { address, body } = exampleOf(route)
  const post = { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
  const response = await ask(address, route.method === 'post' ? post : {})
  return { command: commandFor(route, origin), answer: shown(await response.text(), response.headers.get('content-type') ?? '') }
}

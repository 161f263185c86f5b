import { type Context, Hono } from 'hono'
import type { Route } from '../http/route.js'
import { respondWithPage } from '../pages/frame/index.js'
import { DocsPage, type Document } from './DocsPage.js'
import { type Tried, tryRoute } from './examples.js'

export { problemRoutes } from './problems.js'
export { tellProblem } from './tell.js'

/** The page's own origin, so that its commands can be copied and run. */
const originOf = (context: Context): string => new URL(context.req.url).origin

async function tryAll(app: Hono, routes: readonly Route[], origin: string): Promise<ReadonlyMap<Route, Tried>> {
  const tried = routes.map(async (route) => [route, await tryRoute(route, origin, (address, init) => app.request(address, init))] as const)
  return new Map(await Promise.all(tried))
}

/** The Host header is the caller's word: no more pages are kept than a server has names. */
const mostOrigins = 8

/**
 * `GET /docs`: the reference as a page, made of the OpenAPI document. Its examples are requests that the app answers when the page is first asked
 * for; nothing on it comes from another host, and it needs no script.
 */
export function docsFor(app: Hono, routes: readonly Route[], describe: () => Promise<object>): Hono {
  const pages = new Map<string, string>()
  const made = async (origin: string): Promise<string> => {
    const known = pages.get(origin)
    if (known !== undefined) return known
    const [document, tried] = await Promise.all([describe(), tryAll(app, routes, origin)])
    const page = String(<DocsPage routes={routes} document={document as Document} tried={tried} origin={origin} />)
    if (pages.size >= mostOrigins) pages.clear()
    pages.set(origin, page)
    return page
  }
  return new Hono().get('/docs', async (context) => respondWithPage(context, await made(originOf(context))))
}

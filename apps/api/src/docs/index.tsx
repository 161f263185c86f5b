import { Hono } from 'hono'
import { originOf } from '../embed/index.js'
import type { Route } from '../http/route.js'
import { once } from '../once.js'
import { respondWithPage } from '../pages/frame/index.js'
import { DocsPage, type Document } from './DocsPage.js'
import { type Ask, type Tried, tryRoute } from './examples.js'

export { problemRoutes } from './problems.js'
export { tellProblem } from './tell.js'

/** Stands in the page for the server's own origin, which is known when the page is asked for (RFC 6761 keeps the name free). */
const standIn = 'http://origin.invalid'

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll("'", '&#39;')

async function tryAll(ask: Ask, routes: readonly Route[]): Promise<ReadonlyMap<Route, Tried>> {
  return new Map(await Promise.all(routes.map(async (route) => [route, await tryRoute(route, standIn, ask)] as const)))
}

/**
 * `GET /docs`: the reference as a page, made of the OpenAPI document. Its examples are requests that were really answered when the page was first
 * asked for; its commands name the origin that was asked, so that they can be copied and run. Nothing on it comes from another host, and it needs
 * no script.
 */
export function docsFor(ask: Ask, routes: readonly Route[], describe: () => Promise<object>): Hono {
  const page = once(async () => {
    const [document, tried] = await Promise.all([describe(), tryAll(ask, routes)])
    return String(<DocsPage routes={routes} document={document as Document} tried={tried} origin={standIn} />)
  })
  return new Hono().get('/docs', async (context) => {
    const origin = escaped(originOf(context))
    const made = await page()
    return respondWithPage(
      context,
      made.replaceAll(standIn, () => origin),
    )
  })
}

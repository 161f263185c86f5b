import { PottleError } from '@pottle/core'
import { type Context, Hono } from 'hono'
import { docsFor, problemRoutes, tellProblem } from './docs/index.js'
import { embeds } from './embed/index.js'
import { holdForm } from './http/body.js'
import { keptForRelease, notModified } from './http/cache.js'
import { limitRate } from './http/limit.js'
import { type FaultEntry, faultEntry, type LogEntry, logRequests } from './http/log.js'
import { answerUnrouted } from './http/methods.js'
import { mount } from './http/mount.js'
import { ProblemError, problem, problemFrom } from './http/problem.js'
import { keepRecent } from './http/recent.js'
import { respond, setCommonHeaders } from './http/respond.js'
import type { Route } from './http/route.js'
import { once } from './once.js'
import { pages } from './pages/index.js'
import { apiRoutes } from './routes/index.js'
import { version } from './version.js'

/** Every route of the document, in the order of the reference. */
export function routesFor(ready: () => boolean = () => true): readonly Route[] {
  return [...apiRoutes(ready), ...problemRoutes]
}

/** What a host may ask of the app. */
export interface AppOptions {
  /** Where each answered request is told; nowhere if absent. */
  readonly log?: (entry: LogEntry) => void
  /** Where a fault of ours is told; the console's error stream if absent. */
  readonly logFault?: (entry: FaultEntry) => void
  /** Requests a minute from one address; unlimited if absent or 0. */
  readonly requestsPerMinute?: number
  /** How many proxies stand before the app, for the limit to know its clients by; none if absent. */
  readonly proxies?: number
  /** By when a body that is read as a whole has to be there; 30 seconds if absent. */
  readonly bodySeconds?: number
  /** Whether new requests are welcome; always if absent. */
  readonly ready?: () => boolean
}

/** Only the pages' own addresses go through their middleware: a route of the API answers at once where nothing stands before it. */
function addPages(app: Hono, pages: Hono, bodySeconds: number): void {
  for (const path of new Set(pages.routes.map((one) => one.path))) app.use(path, setCommonHeaders())
  for (const { path, method } of pages.routes) if (method === 'POST') app.post(path, holdForm(bodySeconds))
  app.route('/', pages)
}

/** The app by itself, without a server: any host that speaks fetch can serve it. */
export function createApp({
  log,
  logFault = ({ id, fault }) => console.error(`Request ${id}: ${fault}`),
  requestsPerMinute,
  proxies = 0,
  bodySeconds = 30,
  ready,
}: AppOptions = {}): Hono {
  const app = new Hono()
  const routes = routesFor(ready)
  const recent = keepRecent()
  const tellFault = (context: Context, error: unknown) => {
    logFault(faultEntry(context, error))
    return problem('internal', 'the fault is ours and has been logged')
  }
  const describe = once(async () => (await import('./openapi/index.js')).describeRoutes(routes, version))
  const document = once(async () => JSON.stringify(await describe()))

  if (log) app.use(logRequests(log))
  if (requestsPerMinute) app.use(limitRate(requestsPerMinute, proxies, tellProblem))
  for (const route of routes) mount(app, route, { bodySeconds, recent, tellFault })
  const kept = { ...keptForRelease(), 'content-type': 'application/json' }
  app.get('/openapi.json', async (context) => notModified(context, kept) ?? respond(context, await document(), 200, kept))
  app.route('/', embeds)
  // The examples of the reference are neither limited nor logged: nobody asked them.
  const ownApp = once(() => createApp({ logFault }))
  const docs = docsFor((address, init) => ownApp().request(address, init), routes, describe)
  for (const part of [docs, pages]) addPages(app, part, bodySeconds)

  app.notFound(answerUnrouted(app, tellProblem))
  app.onError((error, context) => {
    if (error instanceof ProblemError) return tellProblem(context, error.problem)
    if (error instanceof PottleError) return tellProblem(context, problemFrom(error, context.req.method === 'POST' ? 'body' : 'query'))
    return tellProblem(context, tellFault(context, error))
  })
  return app
}

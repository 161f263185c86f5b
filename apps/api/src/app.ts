import { dataset, PottleError } from '@pottle/core'
import { Hono } from 'hono'
import { describeRoutes } from './contract/openapi.js'
import { ProblemError, problem, problemFrom, problemResponse } from './http/problem.js'
import { mount, type Route } from './http/route.js'
import { convertManyRoute, convertRoute } from './routes/convert.js'
import { healthRoute } from './routes/health.js'
import { measureRoute, measuresRoute } from './routes/measures.js'
import { sourceRoute, sourcesRoute } from './routes/sources.js'
import { version } from './version.js'

export const routes: readonly Route[] = [
  convertRoute,
  convertManyRoute,
  measuresRoute,
  measureRoute,
  sourcesRoute,
  sourceRoute,
  healthRoute,
]

/** One strong tag for all answers: they change only with the dataset or the application, so nothing need be computed to compare them. */
const tag = `"${dataset}-${version}"`

/** The app by itself, without a server: any host that speaks fetch can serve it. */
export function createApp(): Hono {
  const app = new Hono({ strict: false })
  const document = JSON.stringify(describeRoutes(routes, version))

  app.use('/v1/*', async (context, next) => {
    if (context.req.header('if-none-match')?.includes(tag)) return context.body(null, 304, { etag: tag })
    await next()
    if (context.res.status === 200) {
      context.header('ETag', tag)
      context.header('Cache-Control', 'public, max-age=86400')
    }
    return undefined
  })
  for (const route of routes) mount(app, route)
  app.get('/openapi.json', (context) => context.body(document, 200, { 'content-type': 'application/json' }))

  app.notFound((context) => problemResponse(problem('not-found', `there is nothing at ${context.req.path.slice(0, 200)}`)))
  app.onError((error) => {
    if (error instanceof ProblemError) return problemResponse(error.problem)
    if (error instanceof PottleError) return problemResponse(problemFrom(error))
    console.error(error)
    return problemResponse(problem('internal', 'the fault is ours and has been logged'))
  })
  return app
}

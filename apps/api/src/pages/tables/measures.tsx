import { describeMeasure } from '@pottle/core'
import { Hono } from 'hono'
import { respondWithPage } from '../frame/index.js'
import { NotFound } from '../parts/NotFound.js'
import { MeasureList } from './MeasureList.js'
import { MeasurePage } from './MeasurePage.js'

const at = '/measures'

/** `GET /measures`, `GET /measures/pottle` */
export const measurePages: Hono = new Hono()
measurePages.get(at, (context) => respondWithPage(context, <MeasureList />))
measurePages.get(`${at}/:id`, (context) => {
  const id = context.req.param('id')
  const measure = describeMeasure(id.toLowerCase())
  if (!measure) return respondWithPage(context, <NotFound what="measure" name={id} list="All measures" at={at} />, 404)
  if (measure.id !== id) return context.redirect(`${at}/${encodeURIComponent(measure.id)}`, 301)
  return respondWithPage(context, <MeasurePage measure={measure} />)
})

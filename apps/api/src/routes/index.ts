import type { Route } from '../http/route.js'
import { bakePlansRoute } from './bake-plans.js'
import { brickOvenPictureRoute, brickOvenRoute } from './brick-oven.js'
import { convertManyRoute, convertRoute } from './convert.js'
import { healthRoute, readyRoute } from './health.js'
import { liquidHeatsRoute } from './liquid-heats.js'
import { loavesPictureRoute, loavesRoute } from './loaves.js'
import { measureRoute, measuresRoute } from './measures.js'
import { ovenHeatRoute, ovenHeatsPictureRoute, ovenHeatsRoute } from './oven-heats.js'
import { readingsRoute } from './readings.js'
import { sheetsRoute } from './sheets.js'
import { sourceRoute, sourcesRoute } from './sources.js'
import { sugarHeightsRoute } from './sugar-heights.js'
import { valueRoute, valuesRoute } from './values.js'

/** Every route of the API, in the order of the reference. */
export function apiRoutes(ready: () => boolean): readonly Route[] {
  return [
    convertRoute,
    convertManyRoute,
    valueRoute,
    valuesRoute,
    readingsRoute,
    sheetsRoute,
    measuresRoute,
    measureRoute,
    ovenHeatsRoute,
    ovenHeatsPictureRoute,
    ovenHeatRoute,
    sugarHeightsRoute,
    liquidHeatsRoute,
    brickOvenRoute,
    brickOvenPictureRoute,
    bakePlansRoute,
    loavesRoute,
    loavesPictureRoute,
    sourcesRoute,
    sourceRoute,
    healthRoute,
    readyRoute(ready),
  ]
}

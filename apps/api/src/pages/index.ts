import { Hono } from 'hono'
import { assetRoutes } from './assets/index.js'
import { heatPage } from './heat/index.js'
import { homePage } from './home/index.js'
import { measurePage } from './measure/index.js'
import { loafPage, ovenPage } from './pictures/index.js'
import { sheetPage } from './sheet/index.js'
import { contentsPage, heatPages, shelfPages, sourcePages, unsurePages } from './tables/index.js'

/** The pages for people. */
export const pages: Hono = new Hono()
for (const part of [
  assetRoutes,
  homePage,
  measurePage,
  heatPage,
  sheetPage,
  loafPage,
  ovenPage,
  contentsPage,
  shelfPages,
  heatPages,
  sourcePages,
  unsurePages,
])
  pages.route('/', part)

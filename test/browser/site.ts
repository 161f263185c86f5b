/** The site as a reader meets it: a server of its own on a free port, and pages of a real browser. */
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { createAdaptorServer } from '@hono/node-server'
import { createApp } from '@pottle/api'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { openBrowser } from './browser.js'

export interface Site {
  readonly origin: string
  readonly browser: Browser
  /** A fresh page of a fresh reader. What the browser complains of, and what it asks of other servers, is gathered in `complaints`. */
  open(path: string, reader?: BrowserContextOptions): Promise<Page>
  readonly complaints: string[]
  close(): Promise<void>
}

/** What the browser says of a page that was answered with a fault is no complaint about the page. */
const expected = /the server responded with a status of 4\d\d/

function watch(page: Page, origin: string, complaints: string[]): void {
  page.on('console', (message) => {
    if (message.type() === 'error' && !expected.test(message.text())) complaints.push(`${page.url()}: ${message.text()}`)
  })
  page.on('pageerror', (error) => complaints.push(`${page.url()}: ${error}`))
  page.on('request', (request) => {
    if (!request.url().startsWith(origin) && !request.url().startsWith('data:')) complaints.push(`asks ${request.url()}`)
  })
}

/** @param settings what the reader has set in the browser, as its own flags */
export async function openSite(settings: readonly string[] = []): Promise<Site> {
  const server = createAdaptorServer({ fetch: createApp().fetch }) as Server
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  const browser = await openBrowser(settings)
  const complaints: string[] = []
  return {
    origin,
    browser,
    complaints,
    async open(path, reader = {}) {
      const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...reader })
      const page = await context.newPage()
      page.setDefaultTimeout(10_000)
      watch(page, origin, complaints)
      await page.goto(origin + path)
      return page
    },
    async close() {
      await browser.close()
      server.closeAllConnections()
      await new Promise((done) => server.close(done))
    },
  }
}

/** An invented receipt of Saltmarsh Hall. */
export const receipt =
  'Take a pint of good Creame, ten eggs leaving out four of the whites, a penny white loaf grated and half a pound of fine sugar; bake it in a quick oven.'

const sheet = `/sheet?${new URLSearchParams({ text: receipt, year: '1690', title: 'A pudding of the Hall' })}`

/** Every page that the site has, one of each kind, the faulty ones too. */
export const everyPage: readonly (readonly [name: string, path: string])[] = [
  ['home', '/'],
  ['the form for measures', '/measure'],
  ['a measure', '/measure?phrase=a+pottle+of+cream&year=1690&place=london'],
  ['a measure without a doubt', '/measure?phrase=an+inch+thick'],
  ['a measure with words not understood', '/measure?phrase=a+pint+of+zorble&year=1750'],
  ['words that are none', '/measure?phrase=a+glorph+of+cream&year=1690'],
  ['options that are wrong', '/measure?phrase=a+pint+of+cream&year=3000&place=atlantis'],
  ['the form for heats', '/heat'],
  ['a heat', '/heat?phrase=a+slack+oven&year=1690'],
  ['two heats', '/heat?phrase=quick+at+first+then+slow&year=1750'],
  ['a heat that is none', '/heat?phrase=a+blorp+oven'],
  ['the form for receipts', '/sheet'],
  ['a sheet', sheet],
  ['a receipt that is none', '/sheet?text=+'],
  ['loaves', '/loaves'],
  ['a loaf', '/loaves?coin=penny&kind=white&year=1690'],
  ['loaves that are none', '/loaves?from=abc'],
  ['an oven', '/oven'],
  ['an oven that is none', '/oven?start=a+blorp+oven&hours=900'],
  ['all measures', '/measures'],
  ['one measure', '/measures/pint'],
  ['no measure', '/measures/glorph'],
  ['the tables', '/tables'],
  ['spoons, cups and hands', '/measures/vessels'],
  ['a spoon', '/measures/vessels/teaspoonful'],
  ['a vessel that nobody sized', '/measures/vessels/basket'],
  ['a coin', '/measures/coins/sixpence'],
  ['loaves by name', '/measures/loaves'],
  ['all things', '/goods'],
  ['a thing', '/goods/butter'],
  ['heights of sugar', '/heats/sugar'],
  ['a height of sugar', '/heats/sugar/pearl'],
  ['oven tests', '/heats/tests'],
  ['all heats', '/heats'],
  ['one heat', '/heats/slow'],
  ['all sources', '/sources'],
  ['one source', '/sources/digby-1669'],
  ['what is unsure', '/unsure'],
  ['what is unsure of vessels', '/unsure/vessels'],
]

/** Two servers on two origins, as in life: Pottle, and a blog that embeds it. */
import { createServer, type RequestListener, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { getRequestListener } from '@hono/node-server'
import { createApp } from '@pottle/api'
import type { BrowserContextOptions, Locator, Page } from 'playwright-core'
import { bundle } from '../../packages/embed/tools/bundle.mjs'
import { buildBlog } from '../blog/build.mjs'
import { openBrowser } from './browser.js'

export interface Site {
  readonly origin: string
  close(): Promise<void>
}

/** Listens on a free port. `host` tells origins apart even where a browser would take two ports for one site. */
export function serve(listener: RequestListener, host: 'localhost' | '127.0.0.1'): Promise<Site> {
  const server: Server = createServer(listener)
  return new Promise((done) =>
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo
      const close = (): Promise<void> => new Promise((closed) => server.close(() => closed()).closeAllConnections())
      done({ origin: `http://${host}:${port}`, close })
    }),
  )
}

export const servePottle = (): Promise<Site> => serve(getRequestListener(createApp().fetch), '127.0.0.1')

/** What a careful blog allows: its own style, and of Pottle exactly what the page uses. No inline style, no inline script. */
export const strictPolicy = (api: string): string =>
  `default-src 'none'; style-src 'self'; script-src 'self' ${api}; connect-src ${api}; img-src ${api}; frame-src ${api}; base-uri 'none'; require-trusted-types-for 'script'`

/** The same without leave to ask anybody: scripts run, and what they fetch is refused. */
const mutePolicy = (api: string): string => strictPolicy(api).replace(/connect-src [^;]+; /, '')

/** The example blog, built against a running API and served under a strict policy; with `?mute` under one that allows no asking. */
export async function serveBlog(api: string): Promise<Site & { readonly messages: readonly string[] }> {
  const { pages, css, messages } = await buildBlog(api)
  const offline = await bundle('offline/index.ts')
  const site = await serve((request, response) => {
    const [path = '/', query] = (request.url ?? '/').split('?')
    response.setHeader('content-security-policy', query === 'mute' ? mutePolicy(api) : strictPolicy(api))
    const [type, body] =
      path === '/blog.css'
        ? ['text/css', css]
        : path === '/pottle-offline.js'
          ? ['text/javascript', offline]
          : ['text/html; charset=utf-8', pages[path]]
    response.writeHead(body === undefined ? 404 : 200, { 'content-type': type! }).end(body)
  }, 'localhost')
  return { ...site, messages }
}

/** The text of a page's own nodes that is shown, that in the slots of an element too, but not what the element adds; spaces are made plain. */
export async function seen(locator: Locator): Promise<string> {
  const texts = await locator.allInnerTexts()
  return texts.join(' ').replace(/\s+/g, ' ')
}

/** The two servers and a browser. */
export interface Street {
  readonly api: Site
  readonly blog: Site & { readonly messages: readonly string[] }
  /** A page of a fresh reader; what it asks of servers and what the browser refuses is gathered. */
  open(reader?: BrowserContextOptions): Promise<Visit>
  close(): Promise<void>
}

export interface Visit {
  readonly page: Page
  readonly asked: readonly string[]
  readonly refused: readonly string[]
}

/** Opens both servers and a browser to read them with. */
export async function openStreet(): Promise<Street> {
  const api = await servePottle()
  const blog = await serveBlog(api.origin)
  const browser = await openBrowser()
  return {
    api,
    blog,
    async open(reader = {}) {
      const context = await browser.newContext({ viewport: { width: 900, height: 900 }, ...reader })
      const page = await context.newPage()
      const asked: string[] = []
      const refused: string[] = []
      page.on('request', (request) => asked.push(request.url()))
      page.on('pageerror', (error) => refused.push(String(error)))
      page.on('console', (message) => {
        if (/policy|TrustedHTML/i.test(message.text())) refused.push(message.text())
      })
      return { page, asked, refused }
    },
    async close() {
      await browser.close()
      await blog.close()
      await api.close()
    },
  }
}

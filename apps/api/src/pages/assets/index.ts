import { Hono } from 'hono'
import { ProblemError, problem } from '../../http/problem.js'
import { respond } from '../../http/respond.js'
import { enhance } from './enhance.js'
import { markPicture } from './mark.js'
import { stylesheet } from './style/index.js'

interface Asset {
  readonly type: string
  readonly text: string
  readonly tag: string
}

/** A short name for a text that changes with it: FNV-1a, 32 bits (Fowler, Noll and Vo). */
function tagOf(text: string): string {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193)
  return (hash >>> 0).toString(16).padStart(8, '0')
}

const asset = (type: string, text: string): Asset => ({ type, text, tag: tagOf(text) })

const assets: Readonly<Record<string, Asset>> = {
  'pottle.css': asset('text/css; charset=utf-8', stylesheet),
  'pottle.js': asset('text/javascript; charset=utf-8', `(${enhance})()\n`),
  'pottle.svg': asset('image/svg+xml', markPicture),
}

/** The address of an asset: it changes with the text, so that a browser may keep what it has for ever. */
export const assetAddress = (name: keyof typeof assets): string => `/assets/${assets[name]!.tag}/${name}`

/** `GET /assets/{tag}/{name}`; an old tag is answered with what there is now, for pages that a cache has kept. */
export const assetRoutes: Hono = new Hono()
assetRoutes.get('/assets/:tag/:name', (context) => {
  const { tag, name } = context.req.param()
  const found = Object.hasOwn(assets, name) ? assets[name] : undefined
  if (!found) throw new ProblemError(problem('not-found', `there is no file "${name.slice(0, 40)}"`))
  const cache = tag === found.tag ? 'public, max-age=31536000, immutable' : 'no-cache'
  return respond(context, found.text, 200, { 'content-type': found.type, 'cache-control': cache })
})

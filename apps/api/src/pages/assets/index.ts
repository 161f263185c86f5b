import { Hono } from 'hono'
import { ProblemError, problem } from '../../http/problem.js'
import { respond } from '../../http/respond.js'
import { once } from '../../once.js'
import { enhance } from './enhance.js'
import { bytesOf, faceRules, faces } from './faces.js'
import { markPicture } from './mark.js'
import { stylesheet } from './style/index.js'

interface Asset {
  readonly type: string
  readonly body: string | Uint8Array<ArrayBuffer>
  readonly tag: string
}

/** A short name for a text that changes with it: FNV-1a, 32 bits (Fowler, Noll and Vo). */
function tagOf(text: string): string {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193)
  return (hash >>> 0).toString(16).padStart(8, '0')
}

const asset = (type: string, text: string): Asset => ({ type, body: text, tag: tagOf(text) })
const face = (base64: string): Asset => ({ type: 'font/woff2', body: bytesOf(base64), tag: tagOf(base64) })

const addressIn = (name: string, { tag }: Asset): string => `/assets/${tag}/${name}`

/** The assets by their names; the faces are large, so that they are made when the first page is. */
const assets = once(() => {
  const cut = { 'caslon.woff2': face(faces['caslon.woff2']), 'caslon-italic.woff2': face(faces['caslon-italic.woff2']) }
  return {
    ...cut,
    'pottle.css': asset('text/css; charset=utf-8', faceRules((name) => addressIn(name, cut[name])) + stylesheet),
    'pottle.js': asset('text/javascript; charset=utf-8', `(${enhance})()\n`),
    'pottle.svg': asset('image/svg+xml', markPicture),
  } satisfies Readonly<Record<string, Asset>>
})

type AssetName = keyof ReturnType<typeof assets>

/** The address of an asset: it changes with the content, so that a browser may keep what it has for ever. */
export const assetAddress = (name: AssetName): string => addressIn(name, assets()[name])

/** `GET /assets/{tag}/{name}`; an old tag is answered with what there is now, for pages that a cache has kept. */
export const assetRoutes: Hono = new Hono()
assetRoutes.get('/assets/:tag/:name', (context) => {
  const { tag, name } = context.req.param()
  if (!Object.hasOwn(assets(), name)) throw new ProblemError(problem('not-found', `there is no file "${name.slice(0, 40)}"`))
  const { type, body, tag: current } = assets()[name as AssetName]
  const cache = tag === current ? 'public, max-age=31536000, immutable' : 'no-cache'
  return respond(context, body, 200, { 'content-type': type, 'cache-control': cache })
})

import { type Context, Hono } from 'hono'
import { keptForRelease, notModified } from '../http/cache.js'
import { respond } from '../http/respond.js'
import { originOf, replyFor, statusOf } from './asked.js'
import { oembed } from './oembed.js'
import { pageFor, pageStyle } from './page.js'
import { pictureFor, pictureStyle } from './picture.js'
import { policyFor } from './policy.js'
import { script } from './script.js'

export { originOf, replyTo } from './asked.js'
export { discoveryAddress } from './page.js'

/** Small pages, pictures and the script for other people's sites, and the oEmbed route that names them. */
export const embeds: Hono = new Hono()

const kept = keptForRelease()

/** Hangs an address on the app whose answer holds until the next release. */
function serve(path: string, answer: (context: Context) => Response | Promise<Response>): void {
  embeds.get(path, (context) => notModified(context, kept) ?? answer(context))
}

const html = (policy: string) => ({ ...kept, 'content-type': 'text/html; charset=utf-8', 'content-security-policy': policy })

for (const kind of ['measure', 'heat', 'loaf'] as const) {
  serve(`/embed/${kind}`, async (context) => {
    const reply = replyFor(context, kind)
    const origin = originOf(context)
    return respond(context, pageFor(reply, origin), statusOf(reply), html(await policyFor(pageStyle)))
  })
  serve(`/embed/${kind}.svg`, async (context) => {
    const reply = replyFor(context, kind)
    const policy = await policyFor(pictureStyle)
    return respond(context, pictureFor(reply), statusOf(reply), {
      ...kept,
      'content-type': 'image/svg+xml',
      'content-security-policy': policy,
    })
  })
}

serve('/embed/pottle.js', (context) => respond(context, script, 200, { ...kept, 'content-type': 'text/javascript; charset=utf-8' }))
serve('/oembed', (context) => respond(context, JSON.stringify(oembed(context)), 200, { ...kept, 'content-type': 'application/json' }))

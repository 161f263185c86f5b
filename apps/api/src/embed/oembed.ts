import { embedAddress, h, print, questionAt } from '@pottle/embed/view'
import type { Context } from 'hono'
import { badParameter, type Problem, ProblemError, problem } from '../http/problem.js'
import { originOf, replyTo } from './asked.js'
import { heightFor } from './height.js'
import { titleOf } from './page.js'

/** The frame is as wide as a card reads well, in pixels, where its host leaves it room. */
const widest = 560

function pixels(context: Context, name: string): number {
  const text = context.req.query(name)
  if (text === undefined) return Number.POSITIVE_INFINITY
  if (/^\d{1,6}$/.test(text) && Number(text) > 0) return Number(text)
  throw badParameter(name, 'give a whole number of pixels above 0')
}

function addressIn(context: Context): URL {
  const text = context.req.query('url')
  if (!text) throw badParameter('url', 'give the address of a page of ours')
  if (!URL.canParse(text)) throw badParameter('url', 'give a whole address, with its https://')
  return new URL(text)
}

/** Section 2.3.3 of oEmbed asks for the bare status here. */
const notJson: Problem = { type: 'about:blank', title: 'Not Implemented', status: 501, detail: 'only format=json is given' }

const nothing = (detail: string): ProblemError => new ProblemError(problem('not-found', detail))

/** What an address of ours shows. Whether it begins with http or https is the proxy's affair; the host must be this one. */
function shownAt(address: URL, host: string) {
  const found = address.host === host && /^https?:$/.test(address.protocol) ? questionAt(address) : undefined
  if (!found) throw nothing(`${address.href.slice(0, 200)} is not a page of ours that can be embedded`)
  const { entry, fault } = replyTo(found.question)
  if (!entry) throw nothing(fault!.message)
  return { ...found, entry }
}

/** The frame as HTML. `frameborder` is old, but a style would be refused where the host's policy forbids it. */
function frame(src: string, title: string, width: number, height: number): string {
  const size = { width: String(width), height: String(height) }
  const sandbox = 'allow-popups allow-popups-to-escape-sandbox'
  return print(h('iframe', { src, title, ...size, frameborder: '0', loading: 'lazy', sandbox }))
}

/**
 * `GET /oembed?url=https://…/measure%3Fphrase%3D…`: oEmbed 1.0, section 2.3.4.4, the rich type.
 *
 * @throws ProblemError 400 without an address, 404 for one that is not ours or has no answer, 501 for a format other than JSON
 */
export function oembed(context: Context): object {
  const format = context.req.query('format') ?? 'json'
  if (format !== 'json') throw new ProblemError(notJson)
  const origin = originOf(context)
  const [mostWidth, mostHeight] = [pixels(context, 'maxwidth'), pixels(context, 'maxheight')]
  const { base, question, entry } = shownAt(addressIn(context), new URL(origin).host)
  const width = Math.min(widest, mostWidth)
  const height = Math.min(heightFor(entry, width), mostHeight)
  const title = titleOf(entry)
  return {
    version: '1.0',
    type: 'rich',
    provider_name: 'Pottle',
    provider_url: `${origin}/`,
    title,
    cache_age: 86_400,
    html: frame(embedAddress(base, question), title, width, height),
    width,
    height,
  }
}

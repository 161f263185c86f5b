import { embedAddress, type Kind, pageAddress, questionOf, snippet } from '@pottle/embed/view'
import type { Context } from 'hono'
import { discoveryAddress, originOf, replyTo } from '../../embed/index.js'
import type { Asked } from './asked.js'
import { Copyable } from './Copyable.js'

/** What a page needs to say how its answer can be shown elsewhere. */
export interface Elsewhere {
  /** The element with its script, to be pasted. */
  readonly markup: string
  /** The small page for hosts that take no script, and the picture. */
  readonly frame: string
  readonly picture: string
  /** Where other programs learn that the page can be embedded (oEmbed 1.0, section 4). */
  readonly discovery: string
  /** The page's own address, without what does not change the answer. */
  readonly canonical: string
}

/** How an answer of ours can be shown on other people's pages; undefined where it has none. */
export function elsewhere(context: Context, kind: Kind, asked: Asked): Elsewhere | undefined {
  const question = questionOf(kind, (name) => asked[name])
  const { entry } = replyTo(question)
  if (!entry) return undefined
  const origin = originOf(context)
  return {
    markup: `<script type="module" src="${origin}/embed/pottle.js"></script>\n${snippet(question, entry)}`,
    frame: embedAddress(origin, question),
    picture: embedAddress(origin, question, '.svg'),
    discovery: discoveryAddress(origin, question),
    canonical: pageAddress(origin, question),
  }
}

/** The lines to paste, and what to do where no script may run. */
export function ForOwnPage({ markup, frame, picture }: Elsewhere) {
  return (
    <div class="body-gap screen">
      <Copyable title="For your own web page" text={markup} />
      <p class="small">
        Add <code>display="card"</code> to show the band and the meanings too. Where a site takes no script, use{' '}
        <a href={frame}>the small page</a> in a frame or <a href={picture}>the picture</a>.
      </p>
    </div>
  )
}

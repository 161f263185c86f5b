import { raw } from 'hono/html'
import type { Child } from 'hono/jsx'

/** A picture that the library draws, as a print laid on the page. On a narrow page it is moved sideways inside its own frame. */
export function Plate({ svg, name, children }: { svg: string; name: string; children?: Child }) {
  return (
    <figure class="plate">
      <section class="sheet" tabindex={0} aria-label={`Picture: ${name}`}>
        {raw(svg)}
      </section>
      <figcaption>
        <span class="sideways">The picture can be moved sideways. </span>
        {children}
      </figcaption>
    </figure>
  )
}

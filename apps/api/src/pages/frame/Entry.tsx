import type { Child } from 'hono/jsx'

/** One entry of the ledger: what it is about, left of the margin line, and the entry right of it. */
export function Entry({
  title,
  about,
  children,
  id,
  lead,
  screen,
}: {
  title: Child
  about?: Child
  children?: Child
  id?: string
  lead?: boolean
  /** Of no use on paper. */
  screen?: boolean
}) {
  const Title = lead ? 'h1' : 'h2'
  return (
    <section class={`entry${lead ? ' lead' : ''}${screen ? ' screen' : ''}`} id={id}>
      <header>
        <Title>{title}</Title>
        {about}
      </header>
      <div class="body">{children}</div>
    </section>
  )
}

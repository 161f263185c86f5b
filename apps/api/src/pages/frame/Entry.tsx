import type { Child } from 'hono/jsx'

/** One entry of the ledger: what it is about, left of the margin line, and the entry right of it. */
export function Entry({
  title,
  about,
  children,
  id,
  lead,
}: {
  title: Child
  about?: Child
  children?: Child
  id?: string
  lead?: boolean
}) {
  const Title = lead ? 'h1' : 'h2'
  return (
    <section class={lead ? 'entry lead' : 'entry'} id={id}>
      <header>
        <Title>{title}</Title>
        {about}
      </header>
      <div class="body">{children}</div>
    </section>
  )
}

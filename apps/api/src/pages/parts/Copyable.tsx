/** Something to copy: one press selects all of it, and where scripts run there is a button. */
export function Copyable({ title, text, prose = false }: { title: string; text: string; prose?: boolean }) {
  return (
    <figure class="copyable">
      <figcaption>
        <span>{title}</span>
      </figcaption>
      <pre class={prose ? 'prose' : undefined}>{text}</pre>
    </figure>
  )
}

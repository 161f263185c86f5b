/** Something to copy and try, or what came of it. */
export function Sample({ title, text }: { title: string; text: string }) {
  return (
    <figure class="copyable">
      <figcaption>
        <span>{title}</span>
      </figcaption>
      <pre>{text}</pre>
    </figure>
  )
}

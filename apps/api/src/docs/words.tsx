import type { Child } from 'hono/jsx'

/** Plain text with code between backticks, as the contract's descriptions have it. */
export function Words({ text }: { text: string | undefined }) {
  const parts = (text ?? '').split('`')
  return <>{parts.map((part, i): Child => (i % 2 === 1 ? <code>{part}</code> : part))}</>
}

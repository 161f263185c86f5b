import type { Tag } from '../http/route.js'

/** The chapters of the reference. */
export const tags: readonly { readonly name: Tag; readonly description: string }[] = [
  { name: 'Phrases', description: 'One measure, or a stream of them.' },
  { name: 'Receipts', description: 'Whole receipts in running prose.' },
  { name: 'Heats', description: 'Ovens, fires, boiling sugar and the warmth of liquids.' },
  { name: 'Loaves', description: 'What a penny loaf weighed.' },
  { name: 'Tables', description: 'The measures and the sources behind every answer.' },
  { name: 'Service', description: 'Whether the server is well, and what its problems mean.' },
]

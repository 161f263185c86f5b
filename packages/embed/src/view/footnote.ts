import { sentence } from './card.js'
import type { Entry, EntryStep } from './entry.js'

/** An answer as a footnote: sentences, then the steps with their sources, then where they come from. */
export interface Footnote {
  readonly text: string
  readonly steps: readonly { readonly text: string; readonly source: string }[]
  readonly imprint: string
}

/** *half a wine gallon, 1.89 litres (78 in 100); half an ale gallon, …* */
function meaningsText({ senses }: Entry): string | undefined {
  if (senses.length === 0) return undefined
  return `Meanings: ${senses.map(({ label, text, share }) => `${label}, ${text} (${share})`).join('; ')}`
}

const stepOf = ({ text, factor, grade, sources }: EntryStep): Footnote['steps'][number] => ({
  text: `${text}: ${factor}.`,
  source: [...sources, grade].join('; '),
})

/**
 * The setting, the answer with its band, the meanings and the notes of an entry, and each step with who says so.
 *
 * @example footnote(entryOfMeasure(convert('half an hour'))).text   // 'England, no year given. 30 min, exactly.'
 */
export function footnote(entry: Entry): Footnote {
  const { setting, short, also, band, notes, steps, dataset } = entry
  const answer = [short, ...also].join(', ')
  const sentences = [setting, `${answer}${band ? `; ${band.text}` : ', exactly'}`, meaningsText(entry), ...notes]
  const ended = sentences.filter((text) => text !== undefined).map((text) => sentence(text.replace(/\.$/, '')))
  return { text: ended.join(' '), steps: steps.map(stepOf), imprint: `Pottle, tables ${dataset}.` }
}

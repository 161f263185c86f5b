import { sentence } from './card.js'
import type { Entry, EntryStep } from './entry.js'

function stepText({ text, factor, grade, sources }: EntryStep): string {
  return `${text}: ${factor} (${[...sources, grade].join('; ')})`
}

/** *half a wine gallon, 1.89 litres (78 in 100); half an ale gallon, …* */
function meaningsText({ senses }: Entry): string | undefined {
  if (senses.length === 0) return undefined
  return `Meanings: ${senses.map(({ label, text, share }) => `${label}, ${text} (${share})`).join('; ')}`
}

/**
 * An answer as the sentences of a footnote: the setting, the band, the meanings, the notes, each step with its sources, the tables.
 */
export function footnote(entry: Entry): string {
  const { setting, short, also, band, notes, steps, dataset } = entry
  const answer = [short, ...also].join(', ')
  const sentences = [setting, `${answer}${band ? `; ${band.text}` : ', exactly'}`, meaningsText(entry), ...notes, ...steps.map(stepText)]
  const ended = sentences.filter((text) => text !== undefined).map((text) => sentence(text.replace(/\.$/, '')))
  return [...ended, `Pottle, tables ${dataset}.`].join(' ')
}

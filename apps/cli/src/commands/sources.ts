import { citeBibtex, citeFull, findSource, type SourceRow, sayNearest, sources } from '@pottle/core'
import { command } from '../command.js'
import { NoAnswer } from '../fault.js'
import { formatFrom } from '../options.js'
import { showSource, showSources } from '../views/sources.js'
import { jsonOption, phraseOf, toJson } from './shared.js'

const formats = ['text', 'bibtex', 'csl'] as const

/** Sources that hold every word, in their id, their footnote form or their whole reference. */
function search(words: string): readonly SourceRow[] {
  const sought = words.toLowerCase().split(/\s+/)
  return sources.filter((source) => {
    const text = `${source.id} ${source.custom.short} ${citeFull(source)}`.toLowerCase()
    return sought.every((word) => text.includes(word))
  })
}

/** The sources that are meant: all, the one of that id, or those that hold the words. */
function meant(words: string): readonly SourceRow[] {
  if (words === '') return sources
  const one = findSource(words)
  const found = one ? [one] : search(words)
  if (found.length > 0) return found
  const near = sayNearest(
    words,
    sources.map(({ id }) => id),
  )
  throw new NoAnswer(`"${words.slice(0, 40)}" is in none of the ${sources.length} sources${near}`)
}

/** `pottle sources digby-1669`, or `pottle sources --format bibtex` for a bibliography */
export const sourcesCommand = command({
  name: 'sources',
  takes: '[ID or words]',
  summary: 'List the sources, describe one, or search them; as text, BibTeX or CSL-JSON.',
  about: ['A source is found by its id, or by words of its author, title or year.'],
  options: {
    format: { value: 'FORMAT', short: 'f', says: `${formats.join(', ')}; text where none is given.` },
    json: { ...jsonOption.json, says: 'The same as --format csl.' },
  },
  examples: [
    { says: 'One source', line: 'pottle sources digby-1669' },
    { says: 'Every source that names Nicholson', line: 'pottle sources nicholson' },
    { says: 'A bibliography', line: 'pottle sources --format bibtex > pottle.bib' },
  ],
  run({ words, given, page }) {
    const format = formatFrom(given, formats, 'csl') ?? 'text'
    const name = phraseOf(words)
    const found = meant(name)
    if (format === 'csl') return toJson(findSource(name) ?? found)
    if (format === 'bibtex') return found.map(citeBibtex).join('\n')
    return found.length === 1 ? showSource(found[0]!, page) : showSources(found, page)
  },
})

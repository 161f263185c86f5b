// Lists every figure that rests on memory, common practice or judgement, for readers who can do better: `npm run data:unsure` prints it.
import { fileURLToPath } from 'node:url'
import { citeShort, dataset, listUnsure } from '../../packages/core/dist/index.js'

const checkedWords = { memory: 'from memory, not looked up', read: '', none: '' }

function line({ row, part, label, says, years, place, grade, checked, sources, because }) {
  const when = [place, years && `${years[0]} to ${years[1]}`].filter(Boolean).join(', ')
  const name = `\`${part && part !== row ? `${row} / ${part}` : row}\``
  const who = sources.map(citeShort).join('; ')
  const attested = [grade, checkedWords[checked]].filter(Boolean).join(', ')
  const title = label === row ? name : `${name} ${label}`
  return `- ${title}${when && ` (${when})`}: ${says || 'no figure'}. ${attested}; ${who}.${because ? ` ${because}` : ''}`
}

/** The list as Markdown: what was recalled first, because it only wants looking up. */
export function unsureAsMarkdown() {
  const figures = listUnsure()
  const section = (title, rows) => {
    const tables = [...new Set(rows.map(({ table }) => table))]
    const lists = tables.flatMap((table) => [`### ${table}.json`, '', ...rows.filter((row) => row.table === table).map(line), ''])
    return [`## ${title}`, '', ...lists]
  }
  const recalled = figures.filter(({ checked }) => checked === 'memory')
  const judged = figures.filter(({ checked }) => checked !== 'memory')
  return [
    `# What the tables are unsure of, version ${dataset}`,
    '',
    `${recalled.length} figures were recalled and not looked up; ${judged.length} rest on common practice or the editors' judgement. If you can find one of`,
    'them in a source, or measure it, that is the most useful thing that you can send: the figure, the source, and the page.',
    '',
    ...section('Recalled: look these up', recalled),
    ...section('Practice and judgement: find a source, or measure', judged),
  ].join('\n')
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(unsureAsMarkdown())

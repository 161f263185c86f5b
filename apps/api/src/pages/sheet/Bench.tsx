import type { Sheet, SheetLine } from '@pottle/core'
import { bare, inScale, scaleFor, unbroken } from '../parts/figures.js'

/** Numbers that follow one another, as one run: 1–3, 7. */
function runsOf(numbers: readonly number[]): readonly { first: number; last: number }[] {
  const runs: { first: number; last: number }[] = []
  for (const number of numbers) {
    const run = runs.at(-1)
    if (run && number === run.last + 1) run.last = number
    else runs.push({ first: number, last: number })
  }
  return runs
}

/** Numbers of footnotes, raised and in brackets: behind a figure they would be read as part of it. */
export function FootnoteMarks({ numbers }: { numbers: readonly number[] }) {
  if (numbers.length === 0) return null
  return (
    <sup>
      [
      {runsOf(numbers).map(({ first, last }, i) => {
        const text = first === last ? String(first) : `${first}–${last}`
        return (
          <>
            {i > 0 && ', '}
            <a href={`#source-${first}`} aria-label={`source ${text}`}>
              {text}
            </a>
          </>
        )
      })}
      ]
    </sup>
  )
}

function ends({ working }: SheetLine): string {
  if (!working) return ''
  const { value } = working
  const scale = scaleFor(value.quantity, value.best)
  return value.low === value.high ? 'exactly' : `${bare(value.low, scale)} to ${inScale(value.high, scale)}`
}

function Row({ line }: { line: SheetLine }) {
  const { number, thing, part, phrase, working, chosen, note, estimate, sources } = line
  return (
    <tr id={`line-${number}`}>
      <td>
        <a href={`#said-${number}`} aria-label={`line ${number}, in the words of the receipt`}>
          {number}
        </a>
      </td>
      <th scope="row">
        <span class="off">{working?.text ?? 'as you judge'}</span>
        {working?.metric && <span class="quiet"> {working.metric}</span>}
        <br />
        {[thing, part && `the ${part}`].filter(Boolean).join(', ')}
        {estimate && <span class="quiet"> (worked out from the rest)</span>}
      </th>
      <td data-head="Between">{ends(line)}</td>
      <td data-head="The book says">
        <span class="words">{phrase}</span>
        <FootnoteMarks numbers={sources} />
        {chosen && <span class="small quiet meaning">{chosen.label}</span>}
        {note && <span class="small meaning">{unbroken(note)}</span>}
      </td>
    </tr>
  )
}

/** What to measure off, line by line: what a cook has on the bench. */
export function Bench({ sheet }: { sheet: Sheet }) {
  return (
    <table class="ruled stack bench">
      <thead>
        <tr>
          <th scope="col">
            <span class="visually-hidden">Line</span>
          </th>
          <th scope="col">Measure off</th>
          <th scope="col">Between</th>
          <th scope="col">The book says</th>
        </tr>
      </thead>
      <tbody>
        {sheet.lines.map((line) => (
          <Row line={line} />
        ))}
      </tbody>
    </table>
  )
}

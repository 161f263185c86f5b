import { type Sheet, stretchesOf } from '@pottle/core'
import { Entry } from '../frame/index.js'
import { sourceAddress } from '../parts/sources.js'
import { FootnoteMarks } from './Bench.js'

/** What to set the oven to, and how long for each dish. */
export function Oven({ sheet }: { sheet: Sheet }) {
  const { oven, bake } = sheet
  if (oven.length === 0 && bake.length === 0) return null
  return (
    <Entry title="The oven">
      {oven.map(({ phrase, label, set, text, note, sources }) => (
        <div class="two-lines">
          <p class="off">{set}</p>
          <p>
            {phrase ? <q>{phrase}</q> : label} {phrase && `(${label})`}: {text}
            <FootnoteMarks numbers={sources} />
          </p>
          {note && <p class="small">{note}</p>}
        </div>
      ))}
      {bake.map(({ dish, text, core, signs, note, sources }) => (
        <div class="two-lines">
          <p>
            <strong>{dish}</strong>: {text}
            <FootnoteMarks numbers={sources} />
          </p>
          {core && <p>{core}</p>}
          {signs.length > 0 && <p>It is done when: {signs.join('; ')}.</p>}
          {note && <p class="small">{note}</p>}
        </div>
      ))}
    </Entry>
  )
}

/** What to do, one thing after another. */
export function Order({ sheet }: { sheet: Sheet }) {
  if (sheet.order.length === 0) return null
  return (
    <Entry title="Order of work" about={<p>In the words of the book.</p>}>
      <ol class="work">
        {sheet.order.map(({ text, lines }) => (
          <li>
            {text}
            {lines.length > 0 && (
              <span class="quiet small">
                {' '}
                {lines.length === 1 ? 'line' : 'lines'}&nbsp;{lines.join(', ')}
              </span>
            )}
          </li>
        ))}
      </ol>
    </Entry>
  )
}

/** The receipt to the last character, with its measures numbered and its heats set off. */
export function Words({ sheet }: { sheet: Sheet }) {
  return (
    <Entry title="As the book has it" about={<p>Underlined: read as a measure; the number is its line above.</p>}>
      <p class="receipt">
        {stretchesOf(sheet).map(({ text, numbers, heat }) => {
          if (heat) return <em>{text}</em>
          if (numbers.length === 0) return text
          return (
            <>
              <mark>{text}</mark>
              <sup>
                {numbers.map((number) => (
                  <a href={`#line-${number}`} id={`said-${number}`} aria-label={`line ${number}`}>
                    {number}
                  </a>
                ))}
              </sup>
            </>
          )
        })}
      </p>
    </Entry>
  )
}

/** The footnotes of the sheet, by their numbers. */
export function Sources({ sheet }: { sheet: Sheet }) {
  if (sheet.sources.length === 0) return null
  return (
    <Entry title="Sources">
      <ol class="footnotes">
        {sheet.sources.map(({ number, id, citation }) => (
          <li id={`source-${number}`}>
            <a href={sourceAddress(id)}>{citation}</a>
          </li>
        ))}
      </ol>
    </Entry>
  )
}

import { type Sheet, stretchesOf, type Value } from '@pottle/core'
import { Entry } from '../frame/index.js'
import { type Asked, addressOf, saySetting } from '../parts/asked.js'
import { Copyable } from '../parts/Copyable.js'
import { Citations, keyFor } from '../parts/citing.js'
import { inScale, sayEnds, scaleFor } from '../parts/figures.js'
import { Cautions, Notes } from '../parts/remarks.js'
import { sourceAddress } from '../parts/sources.js'
import { Bench, FootnoteMarks } from './Bench.js'
import { SheetForm } from './SheetForm.js'

interface SheetProps {
  readonly sheet: Sheet
  readonly asked: Asked
  /** Where the same sheet can be had again; null where the receipt is too long for an address. */
  readonly address: string | null
}

const sourcesOf = ({ sources }: Sheet) => sources.map(({ id, citation }) => ({ id, citation }))

function Lead({ sheet }: SheetProps) {
  const { title, scale, lines, notes, unmeasured } = sheet
  const things = [...new Set(unmeasured.map(({ thing }) => thing))]
  return (
    <Entry
      lead
      title={
        <>
          <small>Working sheet</small> {title}
        </>
      }
      about={
        <>
          <p>{saySetting(sheet.setting)}</p>
          <p>{scale.text}</p>
          {sheet.lines.some(({ senses }) => senses.length > 1) && (
            <p class="screen">
              <a href="#meanings">Choose other meanings</a>
            </p>
          )}
        </>
      }
    >
      <section data-answer tabindex={-1} aria-label="To measure off">
        {lines.length > 0 ? <Bench sheet={sheet} /> : <p class="answer">Nothing to measure off</p>}
      </section>
      {things.length > 0 && (
        <p>
          Named without an amount: <span class="words">{things.join(', ')}</span>.
        </p>
      )}
      <Notes notes={notes} />
      <Cautions cautions={sheet.cautions} sources={sourcesOf(sheet)} />
    </Entry>
  )
}

/** The receipt to the last character, with its measures numbered and its heats set off. */
function Words({ sheet }: SheetProps) {
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

/** A sum with its ends. */
function sayTotal(total: Value): string {
  return `About ${inScale(total.best, scaleFor(total.quantity, total.best))}; ${sayEnds(total)}.`
}

function Batch({ sheet }: SheetProps) {
  const { totals, dishes, eggs, rounding, fixed } = sheet
  const { mass, volume } = totals
  const without = mass && mass.without.length > 0 ? ` Without line ${mass.without.join(', ')}.` : ''
  return (
    <Entry title="The batch">
      <dl class="totals">
        {mass && (
          <>
            <dt>Weight</dt>
            <dd>
              {sayTotal(mass)}
              {without}
            </dd>
          </>
        )}
        {volume && (
          <>
            <dt>Room it takes</dt>
            <dd>{sayTotal(volume)} The air in dry things is left out.</dd>
          </>
        )}
        {dishes.text && (
          <>
            <dt>Fills</dt>
            <dd>{dishes.text}</dd>
          </>
        )}
        {eggs && (
          <>
            <dt>Eggs</dt>
            <dd>{eggs.text}</dd>
          </>
        )}
        {rounding && (
          <>
            <dt>Rounding</dt>
            <dd>{rounding}</dd>
          </>
        )}
        {fixed.map(({ what, value }) => (
          <>
            <dt>Fixed by you</dt>
            <dd>
              {what}: {value}
            </dd>
          </>
        ))}
      </dl>
    </Entry>
  )
}

function Oven({ sheet }: SheetProps) {
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

function Order({ sheet }: SheetProps) {
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
                {lines.length === 1 ? 'line' : 'lines'} {lines.join(', ')}
              </span>
            )}
          </li>
        ))}
      </ol>
    </Entry>
  )
}

function Sources({ sheet }: SheetProps) {
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

/** A longer address than this is no use in a footnote. */
const longestCited = 300

/** The forms in which a sheet can be kept, by the `as` of their address. */
const files = [
  ['html', 'a page to print or post'],
  ['markdown', 'Markdown'],
  ['csv', 'a table (CSV)'],
  ['jsonld', 'a recipe for search engines (JSON-LD)'],
] as const

function Keep({ sheet, asked, address }: SheetProps) {
  const question = `${sheet.title}, ${saySetting(sheet.setting)}`
  return (
    <Entry title="To cite and keep" about={<p>The page prints as a sheet for the bench.</p>}>
      {address ? (
        <>
          <p class="screen">
            Keep it as{' '}
            {files.map(([as, name], i) => (
              <>
                {i > 0 && ', '}
                <a href={addressOf('/sheet', { ...asked, as })} download={as !== 'html'}>
                  {name}
                </a>
              </>
            ))}
            .
          </p>
          <Citations
            question={question}
            answer={`worked for ${sheet.scale.text}`}
            address={address.length <= longestCited ? address : address.slice(0, address.indexOf('?'))}
            slug={keyFor(sheet.title, sheet.setting.year)}
            sources={sourcesOf(sheet)}
          />
          <details>
            <summary>A link to this sheet</summary>
            <Copyable title="Link" text={address} />
          </details>
        </>
      ) : (
        <p>The receipt is too long for a link: print the sheet to keep it.</p>
      )}
    </Entry>
  )
}

/** The working sheet: what to measure off first, then all that a scholar would ask. */
export function SheetPage(props: SheetProps) {
  const { sheet, asked } = props
  return (
    <>
      <Lead {...props} />
      <Oven {...props} />
      <Batch {...props} />
      <Order {...props} />
      <Words {...props} />
      <Sources {...props} />
      <Entry title="Change it" id="change" screen>
        <SheetForm form="sheet" asked={asked} sheet={sheet} short />
      </Entry>
      <Keep {...props} />
    </>
  )
}

import type { Sheet } from '@pottle/core'
import { Entry } from '../frame/index.js'
import { type Asked, addressOf, saySetting } from '../parts/asked.js'
import { Copyable } from '../parts/Copyable.js'
import { Citations, keyFor } from '../parts/citing.js'

/** A sheet, what was asked for it, and where it can be had again. */
export interface SheetProps {
  readonly sheet: Sheet
  readonly asked: Asked
  /** Null where the receipt is too long for an address. */
  readonly address: string | null
}

const sourcesOf = ({ sources }: Sheet): readonly { readonly id: string; readonly citation: string }[] =>
  sources.map(({ id, citation }) => ({ id, citation }))

/** A longer address than this is no use in a footnote. */
const longestCited = 300

/** The forms in which a sheet can be kept, by the `as` of their address. */
const files = [
  ['html', 'a page to print or post'],
  ['markdown', 'Markdown'],
  ['csv', 'a table (CSV)'],
  ['jsonld', 'a recipe for search engines (JSON-LD)'],
] as const

/** Files, citations and a link. */
export function Keep({ sheet, asked, address }: SheetProps) {
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

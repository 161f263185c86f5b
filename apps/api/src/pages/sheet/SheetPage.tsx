import { Entry } from '../frame/index.js'
import { saySetting } from '../parts/asked.js'
import { Cautions, Notes } from '../parts/remarks.js'
import { Batch } from './Batch.js'
import { Bench } from './Bench.js'
import { Keep, type SheetProps } from './Keep.js'
import { SheetForm } from './SheetForm.js'
import { SheetTries } from './SheetTries.js'
import { Order, Oven, Sources, Words } from './Work.js'

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
      <Cautions cautions={sheet.cautions} />
    </Entry>
  )
}

/** The receipt and its plan, to be worked again; before all else where nothing was found in it. */
function Change({ sheet, asked }: SheetProps) {
  return (
    <Entry title="Change it" id="change" screen>
      <SheetForm form="sheet" asked={asked} sheet={sheet} short />
      {sheet.lines.length === 0 && <SheetTries />}
    </Entry>
  )
}

/** The working sheet: what to measure off first, then all that a scholar would ask. */
export function SheetPage(props: SheetProps) {
  const found = props.sheet.lines.length > 0
  return (
    <>
      <Lead {...props} />
      {!found && <Change {...props} />}
      <Oven {...props} />
      {found && <Batch {...props} />}
      <Order {...props} />
      <Words {...props} />
      <Sources {...props} />
      {found && <Change {...props} />}
      {found && <Keep {...props} />}
    </>
  )
}

import { citeShort, type HeatReading } from '@pottle/core'
import { Entry } from '../frame/index.js'
import { type Asked, addressOf, quoted, saySetting } from '../parts/asked.js'
import { Copyable } from '../parts/Copyable.js'
import { Citations, keyFor } from '../parts/citing.js'
import { type Elsewhere, ForOwnPage } from '../parts/ForOwnPage.js'
import { WordsRead } from '../parts/faults.js'
import { sayShare } from '../parts/figures.js'
import { HeatForm } from '../parts/forms.js'
import { Cautions, Notes } from '../parts/remarks.js'
import { Steps } from '../parts/Steps.js'
import { SourceList } from '../parts/sources.js'
import { Dials, HeatEvidence } from './HeatParts.js'
import { dialsFor, type HeatAnswer } from './read.js'

interface HeatProps {
  readonly answer: HeatAnswer
  readonly asked: Asked
  readonly address: string
  readonly shown: Elsewhere | undefined
}

const short = ({ value, modern }: HeatReading): string => {
  const [celsius, fan, fahrenheit, gas] = dialsFor(value, modern)
  return `about ${celsius!.set}, ${fahrenheit!.set}, gas ${gas!.set}, ${fan!.set} with a fan`
}

const cautionsOf = ({ cautions }: HeatAnswer) =>
  cautions.map(({ id, title, text, source }) => ({ id, title, text, sources: source.map(citeShort) }))

function Lead({ answer }: HeatProps) {
  const { reading, place, notes } = answer
  const { phrase, heat, value, modern, then, setting, unread } = reading
  return (
    <Entry
      lead
      title={
        <>
          <small>The book says</small> {quoted(phrase)}
        </>
      }
      about={<p>{saySetting({ year: setting.year, place })}</p>}
    >
      <section data-answer tabindex={-1} aria-label={quoted(phrase)} class="body-gap">
        <p class="answer">
          {then ? 'first ' : ''}
          <a href={`/heats/${heat.id}`}>{heat.label}</a> {reading.of}, about {dialsFor(value, modern)[0]!.set}
        </p>
        <Dials band={value} modern={modern} />
        {then && (
          <>
            <p class="answer">
              then <a href={`/heats/${then.heat.id}`}>{then.heat.label}</a>, about {dialsFor(then.value, then.modern)[0]!.set}
            </p>
            <Dials band={then.value} modern={then.modern} />
          </>
        )}
      </section>
      {reading.relation?.falling && (
        <p>
          The oven is cooling while the food is in it: this is the heat that it goes into.{' '}
          <a href={addressOf('/oven', { start: phrase })}>See it fall.</a>
        </p>
      )}
      {unread.length > 0 && <WordsRead phrase={phrase} unread={unread} />}
      <Others reading={reading} />
      <Notes notes={notes} />
      <Cautions cautions={cautionsOf(answer)} />
    </Entry>
  )
}

function Others({ reading }: { reading: HeatReading }) {
  if (reading.others.length === 0) return null
  return (
    <p>
      The words may mean another heat too:{' '}
      {reading.others.map(({ id, label, likelihood }, i) => (
        <>
          {i > 0 && ', '}
          <a href={`/heats/${id}`}>{label}</a> ({sayShare(likelihood)})
        </>
      ))}
      .
    </p>
  )
}

function TakeWith({ answer, asked, address, shown }: HeatProps) {
  const { reading, place, sources } = answer
  const { phrase, setting } = reading
  const text = `${reading.heat.label} ${reading.of}, ${short(reading)}`
  return (
    <Entry title="To cite and keep">
      <Citations
        question={`${quoted(phrase)}, ${saySetting({ year: setting.year, place })}`}
        answer={text}
        address={address}
        slug={keyFor(phrase, setting.year)}
        sources={sources}
      />
      <div class="screen">
        <Copyable title="A link to this answer" text={address} />
      </div>
      {shown && <ForOwnPage {...shown} />}
      <p class="small screen">
        For programs: <a href={addressOf('/v1/oven-heats', { phrase, year: asked.year })}>the same answer as JSON</a>.
      </p>
    </Entry>
  )
}

/** All that there is to say of a heat phrase, the dials first. */
export function HeatPage(props: HeatProps) {
  const { reading, sources } = props.answer
  return (
    <>
      <Lead {...props} />
      <Entry title="Ask another" screen>
        <HeatForm form="heat" asked={props.asked} short />
      </Entry>
      <HeatEvidence
        name={quoted(reading.phrase)}
        band={reading.value}
        claims={reading.claims}
        tests={reading.tests}
        goods={reading.goods}
      />
      <Entry title="How it was reckoned" about={<p>Each link, and who says so.</p>}>
        <Steps steps={reading.steps.map((step) => ({ ...step, sources: step.sources.map(citeShort) }))} />
        <details>
          <summary>The method of the scale</summary>
          <p class="small">{reading.method}</p>
        </details>
      </Entry>
      <Entry title="Sources">
        <SourceList sources={sources} />
      </Entry>
      <TakeWith {...props} />
    </>
  )
}

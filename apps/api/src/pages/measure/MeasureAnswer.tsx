import type { Answer, ModernValue } from '@pottle/core'
import { Entry } from '../frame/index.js'
import { type Asked, addressOf, quoted, saySetting } from '../parts/asked.js'
import { BandPicture } from '../parts/BandPicture.js'
import { Copyable } from '../parts/Copyable.js'
import { Citations, keyFor } from '../parts/citing.js'
import { type Elsewhere, ForOwnPage } from '../parts/ForOwnPage.js'
import { WordsRead } from '../parts/faults.js'
import { between, sayBand, sayEnds, scaleFor } from '../parts/figures.js'
import { MeasureForm } from '../parts/forms.js'
import { letterOf } from '../parts/letters.js'
import { Cautions, Notes } from '../parts/remarks.js'
import { Steps } from '../parts/Steps.js'
import { SourceList } from '../parts/sources.js'
import { Senses } from './Senses.js'
import { holdsMore, WholeReceipt } from './WholeReceipt.js'

interface AnswerProps {
  readonly answer: Answer
  readonly asked: Asked
  /** Where the same answer can be had again, with the server's own name. */
  readonly address: string
  readonly shown: Elsewhere | undefined
}

/** More meanings than this crowd the picture; the table has them all. */
const mostDrawn = 7

/** The answer as large as it is important: what stands behind a semicolon is the same again in another way. */
function Words({ text }: { text: string }) {
  const [first, ...rest] = text.split('; ')
  return (
    <p class="answer">
      {first}
      {rest.length > 0 && <span class="visually-hidden">; </span>}
      {rest.length > 0 && <small>{rest.join('; ')}</small>}
    </p>
  )
}

/** Says that one meaning was insisted on, and leads back to all of them. */
function AsAsked({ label, asked: { standard: _, ...without } }: { label: string; asked: Asked }) {
  return (
    <p>
      Reckoned as {label}, as you asked. <a href={addressOf('/measure', without)}>Weigh every meaning again.</a>
    </p>
  )
}

function Lead({ answer, asked }: AnswerProps) {
  const { phrase, value, text, notes, cautions, setting, reading } = answer
  return (
    <Entry
      lead
      title={
        <>
          <small>The book says</small> {quoted(phrase)}
        </>
      }
      about={<p>{saySetting(setting)}</p>}
    >
      <section data-answer tabindex={-1} aria-label={`${quoted(phrase)}, ${saySetting(setting)}`}>
        <Words text={text} />
        <p>{sayBand(value)}</p>
      </section>
      {asked.standard && <AsAsked label={answer.senses[0]!.label} asked={asked} />}
      {reading.unread.length > 0 &&
        (holdsMore(phrase) ? <WholeReceipt asked={{ ...asked, phrase }} /> : <WordsRead phrase={phrase} unread={reading.unread} />)}
      <Notes notes={notes} />
      <Cautions cautions={cautions} />
    </Entry>
  )
}

function HowSure({ answer }: AnswerProps) {
  const { value, senses, phrase } = answer
  if (value.low === value.high) return null
  const scale = scaleFor(value.quantity, value.best)
  const peaks = senses
    .slice(0, mostDrawn)
    .map(({ label, low, best, high, likelihood }, i) => ({ letter: letterOf(i), label, low, best, high, share: likelihood }))
  // A single meaning is the whole, and its rule would be drawn twice.
  const marks = peaks.length > 1 ? peaks : []
  return (
    <Entry
      title="How sure"
      about={
        <p>
          The hill stands where the true value probably lies. The heavy rule below it holds {between(value, scale)}
          {marks.length > 0 && '; each lettered rule is one meaning'}.
        </p>
      }
    >
      <BandPicture
        id="band"
        title={`Where the true value of ${quoted(phrase)} probably lies`}
        value={value}
        marks={marks}
        peaks={peaks}
        scale={scale}
      />
    </Entry>
  )
}

/** Units that are read off a scale or a jug at any size; more than a hundred of the others is no way to measure. */
const readOff = new Set(['g', 'ml', 'mm', 's', 'degF', 'degC-fan'])

function unitsIn(modern: readonly ModernValue[]): readonly ModernValue[] {
  return modern.filter(({ unit, best, text }) => (readOff.has(unit) || best < 100) && !text.startsWith('less than'))
}

function OtherUnits({ answer }: AnswerProps) {
  const units = unitsIn(answer.modern)
  if (units.length < 2) return null
  return (
    <Entry title="In other units" about={<p>Rounded as a kitchen can measure it.</p>}>
      <ul class="units">
        {units.map(({ text }) => (
          <li>{text}</li>
        ))}
      </ul>
    </Entry>
  )
}

function Reckoning({ answer }: AnswerProps) {
  const { senses } = answer
  return (
    <Entry title="How it was reckoned" about={<p>Each factor, and the statute, handbook or judgement that it rests on.</p>}>
      {senses.map(({ label, steps, exact, unit }, i) => (
        <details open={i === 0}>
          <summary>
            {senses.length > 1 && <span class="letter">{letterOf(i)}</span>} <strong>{label}</strong>
            {exact && <span class="quiet">{` · by law ${exact} ${unit}`}</span>}
          </summary>
          <Steps steps={steps} />
        </details>
      ))}
    </Entry>
  )
}

function TakeWith({ answer, asked, address, shown }: AnswerProps) {
  const { phrase, text, value, sources, setting } = answer
  const question = `${quoted(phrase)}, ${saySetting(setting)}`
  return (
    <Entry title="To cite and keep">
      <Citations
        question={question}
        answer={`${text}; ${sayEnds(value)}`}
        address={address}
        slug={keyFor(phrase, setting.year)}
        sources={sources}
      />
      <div class="screen">
        <Copyable title="A link to this answer" text={address} />
      </div>
      {shown && <ForOwnPage {...shown} />}
      <p class="small screen">
        For programs: <a href={addressOf('/v1/convert', { ...asked, phrase })}>the same answer as JSON</a>.
      </p>
    </Entry>
  )
}

/** All that there is to say of a phrase, the answer first. */
export function MeasureAnswer(props: AnswerProps) {
  const { answer, asked } = props
  return (
    <>
      <Lead {...props} />
      <Entry title="Ask another" screen>
        <MeasureForm form="measure" asked={asked} short />
      </Entry>
      <HowSure {...props} />
      {answer.senses.length > 1 && (
        <Entry title="Which one?" about={<p class="screen">Press a meaning to insist on it.</p>}>
          <Senses answer={answer} asked={asked} />
        </Entry>
      )}
      <OtherUnits {...props} />
      <Reckoning {...props} />
      <Entry title="Sources">
        <SourceList sources={answer.sources} />
      </Entry>
      <TakeWith {...props} />
    </>
  )
}

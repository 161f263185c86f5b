import { addressOf, saySetting } from './asked.js'
import { Field, type FieldProps, PlaceField, Press, YearField } from './fields.js'
import { heatTries, measureTries } from './tries.js'

interface FormProps extends FieldProps {
  /** Leaves out what a reader who has asked already knows. */
  readonly short?: boolean
}

/** Turn a measure into a modern one. */
export function MeasureForm({ short = false, ...props }: FormProps) {
  const { asked } = props
  return (
    <form class="ask" action="/measure" data-ask>
      <Field
        {...props}
        name="phrase"
        label="The words of the book"
        hint={short ? undefined : 'As the book has them, old spelling and all: “a pottle of cream”.'}
        control={(own) => <input {...own} value={asked.phrase} autocomplete="off" spellcheck={false} maxlength={4000} />}
      />
      <div class="row">
        <YearField {...props} short={short} />
        <PlaceField {...props} />
        <Press>Work it out</Press>
      </div>
    </form>
  )
}

/** Look up an oven heat. */
export function HeatForm({ short = false, ...props }: FormProps) {
  const { asked } = props
  return (
    <form class="ask" action="/heat" data-ask>
      <Field
        {...props}
        name="phrase"
        label="The words for the heat"
        hint={short ? undefined : '“a slack oven”, “as hot as for manchet”, “after the bread is drawn”.'}
        control={(own) => <input {...own} value={asked.phrase} autocomplete="off" spellcheck={false} maxlength={4000} />}
      />
      <div class="row">
        <YearField {...props} short={short} />
        <PlaceField {...props} hint="Kept with the answer; it alters no heat." />
        <Press>Look it up</Press>
      </div>
    </form>
  )
}

export function MeasureTries() {
  return (
    <ul class="tries small" aria-label="Measures to try">
      {measureTries.map((one) => (
        <li>
          <a href={addressOf('/measure', one)}>{one.phrase}</a> <span class="quiet">{saySetting(one)}</span>
        </li>
      ))}
    </ul>
  )
}

export function HeatTries() {
  return (
    <ul class="tries small" aria-label="Heats to try">
      {heatTries.map((one) => (
        <li>
          <a href={addressOf('/heat', one)}>{one.phrase}</a> <span class="quiet">{one.year}</span>
        </li>
      ))}
    </ul>
  )
}

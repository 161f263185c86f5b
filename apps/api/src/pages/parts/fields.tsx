import type { Fault } from '@pottle/core'
import type { Child } from 'hono/jsx'
import type { Asked } from './asked.js'
import { placeGroups, placeLabel } from './places.js'

/** What a field needs to know of the form that it stands in. */
export interface FieldProps {
  /** Begins the ids, so that several forms can stand on one page. */
  readonly form: string
  readonly asked: Asked
  readonly faults?: readonly Fault[] | undefined
}

interface Control {
  readonly id: string
  readonly name: string
  readonly 'aria-describedby': string | undefined
  readonly 'aria-invalid': 'true' | undefined
}

/** A label, a control, a hint, and what was wrong with what was typed. */
export function Field({
  name,
  label,
  hint,
  form,
  faults = [],
  control,
}: FieldProps & { name: string; label: string; hint?: Child; control: (own: Control) => Child }) {
  const id = `${form}-${name}`
  const own = faults.filter(({ parameter }) => parameter === name)
  const described = [hint ? `${id}-hint` : '', own.length > 0 ? `${id}-fault` : ''].filter(Boolean).join(' ')
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {control({ id, name, 'aria-describedby': described || undefined, 'aria-invalid': own.length > 0 ? 'true' : undefined })}
      {hint && (
        <span class="hint" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {own.length > 0 && (
        <span class="fault" id={`${id}-fault`}>
          {own.map(({ detail }) => detail).join('; ')}
        </span>
      )}
    </div>
  )
}

/** The year, or what is known of it. */
export function YearField({ asked, short, ...props }: FieldProps & { short?: boolean }) {
  return (
    <Field
      {...props}
      asked={asked}
      name="year"
      label="Year, if known"
      hint={short ? '1690, 1690~ or 169X' : '1690; 1690~ is about then, 169X that decade.'}
      control={(own) => <input {...own} value={asked.year} autocomplete="off" maxlength={60} />}
    />
  )
}

/** The place, out of those that the tables know. */
export function PlaceField({ asked, ...props }: FieldProps & { hint?: Child }) {
  const chosen = asked.place ?? 'england'
  const known = placeGroups.some(({ places }) => places.some(({ id }) => id === chosen))
  return (
    <Field
      {...props}
      asked={asked}
      name="place"
      label="Place"
      control={(own) => (
        <select {...own}>
          {!known && (
            <option value={chosen} selected>
              {placeLabel(chosen)}
            </option>
          )}
          {placeGroups.map(({ label, places }) => (
            <optgroup label={label}>
              {places.map((place) => (
                <option value={place.id} selected={place.id === chosen}>
                  {place.label}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      )}
    />
  )
}

/** One of a few choices. */
export function ChoiceField({
  choices,
  asked,
  name,
  ...props
}: FieldProps & { name: string; label: string; hint?: Child; choices: readonly (readonly [value: string, label: string])[] }) {
  return (
    <Field
      {...props}
      asked={asked}
      name={name}
      control={(own) => (
        <select {...own}>
          {choices.map(([value, label]) => (
            <option value={value} selected={value === (asked[name] ?? choices[0]![0])}>
              {label}
            </option>
          ))}
        </select>
      )}
    />
  )
}

/** A line to write on. */
export function LineField({
  asked,
  name,
  most = 100,
  ...props
}: FieldProps & { name: string; label: string; hint?: Child; most?: number }) {
  return (
    <Field
      {...props}
      asked={asked}
      name={name}
      control={(own) => <input {...own} value={asked[name]} autocomplete="off" maxlength={most} />}
    />
  )
}

/** The button, with a place beside it for what the script has to say. */
export function Press({ children }: { children: Child }) {
  return (
    <div class="press">
      <button type="submit">{children}</button>
      <p class="status" role="status" />
    </div>
  )
}

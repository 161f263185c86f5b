import { dishShapes, type Sheet, type SheetLine } from '@pottle/core'
import { ChoiceField, Field, type FieldProps, LineField, PlaceField, Press, YearField } from '../parts/fields.js'
import { sayShare } from '../parts/figures.js'
import { lineField } from './plan.js'

const dishes = [['', 'no dish in particular'] as const, ...dishShapes.map(({ id, label }) => [id, label] as const)]

const units = [
  ['metric', 'grams and millilitres'],
  ['us', 'American cups and ounces'],
  ['uk', 'British ounces and pints'],
] as const

const ovens = [
  ['conventional', 'an oven without a fan'],
  ['fan', 'a fan oven'],
  ['gas', 'a gas oven'],
] as const

const planned = ['scale', 'guests', 'dish', 'count', 'units', 'oven']

/** How much of it to make, and in what; shut until it is wanted, or until something in it was wrong. */
function PlanFields({ open, ...props }: FieldProps & { open: boolean }) {
  const { asked, faults = [] } = props
  const touched = planned.some((name) => asked[name] !== undefined || faults.some(({ parameter }) => parameter === name))
  return (
    <details open={open || touched}>
      <summary>How much to make, and in what</summary>
      <p class="hint">One of the first three rules; leave all of them empty to make what the receipt makes.</p>
      <div class="row">
        <LineField {...props} name="scale" label="So many times" hint="½, 2 or 1/3" most={12} />
        <LineField {...props} name="guests" label="or for people" hint="how many" most={6} />
        <ChoiceField {...props} name="dish" label="or to fill" choices={dishes} />
        <LineField {...props} name="count" label="of those dishes" hint="how many" most={4} />
      </div>
      <div class="row">
        <ChoiceField {...props} name="units" label="Measured in" choices={units} />
        <ChoiceField {...props} name="oven" label="Baked in" choices={ovens} />
      </div>
    </details>
  )
}

function MeaningField({ line, ...props }: FieldProps & { line: SheetLine }) {
  const { number, phrase, senses } = line
  const choices = [
    ['', 'as the tables judge'] as const,
    ...senses.map(({ id, label, likelihood }) => [id, `${label} (${sayShare(likelihood)})`] as const),
  ]
  return <ChoiceField {...props} name={`${lineField}${number}`} label={`${number}. ${phrase}`} choices={choices} />
}

/** Which pint, which loaf: a choice for every line whose words have more than one meaning. Fixed lines keep theirs, to be let go again. */
function Meanings({ sheet, ...props }: FieldProps & { sheet: Sheet }) {
  const open = sheet.lines.filter(({ number, senses }) => senses.length > 1 || props.asked[`${lineField}${number}`] !== undefined)
  if (open.length === 0) return null
  return (
    <fieldset id="meanings">
      <legend>Which meaning, line by line</legend>
      <div class="two">
        {open.map((line) => (
          <MeaningField {...props} line={line} />
        ))}
      </div>
    </fieldset>
  )
}

/** Make a working sheet from a whole receipt. */
export function SheetForm({ sheet, short = false, ...props }: FieldProps & { sheet?: Sheet; short?: boolean }) {
  const { asked } = props
  return (
    <form action="/sheet" method="post" data-ask>
      <Field
        {...props}
        name="text"
        label="The receipt"
        hint={short ? undefined : 'The whole of it, as the book has it: running prose and old spelling are no hindrance.'}
        control={(own) => (
          <textarea {...own} rows={short ? 7 : 9} spellcheck={false}>
            {asked.text}
          </textarea>
        )}
      />
      <div class="row receipt-of">
        <LineField {...props} name="title" label="Its title" most={300} />
        <YearField {...props} short={short} />
        <PlaceField {...props} />
      </div>
      <PlanFields {...props} open={sheet !== undefined} />
      {sheet && <Meanings {...props} sheet={sheet} />}
      <Press>{sheet ? 'Work it again' : 'Make the working sheet'}</Press>
    </form>
  )
}

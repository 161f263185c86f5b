import { type BrickOven, brickOven, drawCoolingCurve, drawHeatScale, type Fault, oneYear, PottleError } from '@pottle/core'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { type Asked, askedOf } from '../parts/asked.js'
import { Faults } from '../parts/faults.js'
import { LineField, Press, YearField } from '../parts/fields.js'
import { Plate } from '../parts/Plate.js'

const at = '/oven'
const fields = ['start', 'year', 'hours', 'batch']
const usual = { start: 'as hot as for bread', hours: '12' }

/** A number where it is one; else nothing that the library would take for one, so that it says what is wrong. */
const numberOf = (text: string): number => (/^\d{1,5}(\.\d{1,3})?$/.test(text) ? Number(text) : Number.NaN)

interface Cooled {
  readonly oven: BrickOven
  readonly hours: number
  readonly year: number | null
  readonly svg: string
}

function cool(asked: Asked): Cooled {
  const { start = usual.start, hours: asHours = usual.hours, batch } = asked
  const { year } = oneYear(asked.year)
  const degrees = numberOf(start)
  const hours = numberOf(asHours)
  const oven = brickOven({
    start: Number.isNaN(degrees) ? start : degrees,
    ...(year === null ? {} : { year }),
    ...(batch === undefined ? {} : { batchMinutes: numberOf(batch) }),
  })
  return { oven, hours, year, svg: drawCoolingCurve(oven, { hours }) }
}

/** The fields of the form that the library's parameters stand for. */
const fieldFor: Readonly<Record<string, string>> = { phrase: 'start', celsius: 'start', batchMinutes: 'batch' }

function coolOrFault(asked: Asked): Cooled | PottleError {
  try {
    return cool(asked)
  } catch (error) {
    if (!(error instanceof PottleError)) throw error
    return new PottleError(
      error.code,
      error.faults.map(({ parameter, detail }) => ({ parameter: fieldFor[parameter] ?? parameter, detail })),
      error.words,
    )
  }
}

function OvenForm({ asked, faults }: { asked: Asked; faults?: readonly Fault[] }) {
  const own = { form: 'oven', asked: { ...usual, ...asked }, faults }
  return (
    <form action={at} data-ask>
      <LineField
        {...own}
        name="start"
        label="When the clock starts, the oven is"
        hint="Words of a book, such as “as hot as for bread”, or degrees Celsius."
      />
      <div class="row">
        <YearField {...own} short />
        <LineField {...own} name="hours" label="Hours to draw" hint="1 to 72" most={4} />
        <LineField {...own} name="batch" label="Minutes with a full batch of dough in" hint="Empty if little is baked in it" most={4} />
        <Press>Draw it</Press>
      </div>
    </form>
  )
}

const dial = (celsius: number): number => Math.round(celsius / 5) * 5

function Hours({ oven, hours }: Cooled) {
  const every = hours <= 6 ? 0.5 : hours <= 14 ? 1 : hours <= 30 ? 2 : 4
  const times = Array.from({ length: Math.floor(hours / every) + 1 }, (_, i) => i * every)
  return (
    <table class="ruled">
      <caption>
        Between the ends nine times in ten. No oven of the time was measured: the cooling is that of three modern builders’ ovens.
      </caption>
      <thead>
        <tr>
          <th scope="col">After</th>
          <th scope="col" class="figure">
            About
          </th>
          <th scope="col" class="figure">
            Between
          </th>
          <th scope="col">An old cook’s word</th>
        </tr>
      </thead>
      <tbody>
        {times.map((time) => {
          const { value, heat } = oven.at(time)
          return (
            <tr>
              <th scope="row">{time === 1 ? '1 hour' : `${time} hours`}</th>
              <td class="figure">{dial(value.best)}&nbsp;°C</td>
              <td class="figure">
                {dial(value.low)} to {dial(value.high)}
              </td>
              <td>
                <a href={`/heats/${heat.id}`}>{heat.label}</a>
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}

function Drawing({ cooled }: { cooled: Cooled }) {
  const { year } = cooled
  return (
    <>
      <Entry title="As it cools" about={<p>What went in while the oven was hottest, and what could wait until it was slack.</p>}>
        <section data-answer tabindex={-1} aria-label="The oven as it cools">
          <Plate svg={cooled.svg} name="the oven as it cools" />
        </section>
      </Entry>
      <Entry title="Hour by hour">
        <Hours {...cooled} />
      </Entry>
      <Entry
        title="What the words meant"
        about={
          <p>
            Every heat on one scale; <a href="/heats">the same as a table</a>.
          </p>
        }
      >
        <Plate svg={drawHeatScale(year === null ? {} : { year })} name="the scale of oven heats" />
      </Entry>
    </>
  )
}

/** `GET /oven?start=as+hot+as+for+bread&hours=12` */
export const ovenPage: Hono = new Hono()
ovenPage.get(at, (context) => {
  const asked = askedOf(context)
  const cooled = coolOrFault(asked)
  const failed = cooled instanceof PottleError
  return respondWithPage(
    context,
    <Page title="A brick oven as it cools" at={at}>
      <div class="opening">
        <h1>A brick oven as it cools</h1>
        <p>Fired once, raked out, and used all day: bread first, pies after, and drying overnight.</p>
      </div>
      <Entry title="Which oven" screen>
        {failed && (
          <Faults
            error={cooled}
            asked={{ ...asked, phrase: asked.start }}
            path={at}
            form="oven"
            fields={fields}
            lacking=""
            answers={() => false}
            heading="h2"
          />
        )}
        <OvenForm asked={asked} {...(failed ? { faults: cooled.faults } : {})} />
      </Entry>
      {!failed && <Drawing cooled={cooled} />}
    </Page>,
    failed ? (cooled.code === 'bad-option' ? 400 : 422) : 200,
  )
})

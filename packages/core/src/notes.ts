import { type Band, mixtureBand } from './bands/index.js'
import type { Reading } from './reading/index.js'
import type { Resolved } from './resolved.js'
import { misprintsOf } from './senses/index.js'
import type { Setting } from './setting.js'

/** Senses further apart than this are a choice for the reader, not a band. Judgement. */
const farApart = 1.1
/** A sense less likely than this is not put before the reader as a choice. Judgement. */
const worthChoosing = 0.1

function choiceNote({ senses, assessment }: Resolved): string | undefined {
  const serious = senses.filter(({ sense }) => sense.likelihood >= worthChoosing)
  const bests = serious.map(({ band }) => band.best)
  const ratio = Math.max(...bests) / Math.min(...bests)
  if (assessment.quantity === 'temperature' || serious.length < 2 || ratio < farApart) return undefined
  const labels = serious.map(({ sense }) => `${sense.label} (${Math.round(sense.likelihood * 100)} in 100)`)
  return `The senses lie far apart, up to ${ratio.toFixed(1)} times: choose between ${labels.join(' and ')}.`
}

const widthOf = ({ low, high }: Band): number => (low > 0 ? high / low : Number.NaN)

function yearNote({ band, senses }: Resolved, setting: Setting): string | undefined {
  if (setting.year !== null) return undefined
  const likeliest = senses[0]!.sense
  const one = mixtureBand([{ weight: 1, value: likeliest.value }], band.coverage)
  const [whole, single] = [widthOf(band), widthOf(one)]
  // An hour was an hour in every century.
  if (senses.length === 1 && !(single < whole)) return undefined
  const narrower =
    single < whole * 0.99
      ? `; a year that settles the sense would narrow it from a factor of ${whole.toFixed(2)} to ${single.toFixed(2)}`
      : ''
  return `No year was given, so every period from ${setting.from} to ${setting.to} weighs in${narrower}.`
}

function apartNote({ assessment }: Resolved): string | undefined {
  if (assessment.apart.length === 0) return undefined
  const labels = assessment.apart.map(({ label }) => label).join('; ')
  return `Not in the band, since it can't be had as a ${assessment.quantity} without a density: ${labels}.`
}

/** Words that speak of several things, or of several parts of one, are answered for one of them. */
function oneOfNote({ each, things, thing, portions, part }: Reading): string | undefined {
  if (portions) return `The words name ${listed(portions)}: the figure is for the ${part}.`
  return each && things && things.length > 1 ? `The words name ${listed(things)}: the figure is for the ${thing}.` : undefined
}

const listed = (names: readonly string[]): string => `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

/** What a reader should know before using the figure. */
export function notesOn(resolved: Resolved, read: Reading, setting: Setting, unread: readonly string[]): readonly string[] {
  const unreadNote = unread.length > 0 ? `These words gave nothing: ${unread.join(' ')}.` : undefined
  const { good } = resolved.assessment
  const misprints = resolved.other && good ? misprintsOf(good, setting) : []
  const remarks = resolved.assessment.senses[0]!.remarks ?? []
  const own = [choiceNote(resolved), yearNote(resolved, setting), oneOfNote(read), apartNote(resolved)]
  return [...own, ...remarks, ...misprints, unreadNote].filter((note) => note !== undefined)
}

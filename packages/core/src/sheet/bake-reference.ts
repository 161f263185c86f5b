/** The dish that a receipt's own time is taken to be of: it seldom says. */
import { type KnownTime, nearby } from './bake-time.js'
import { commonPair, type Vessel } from './dish.js'
import type { SheetOven } from './sheet.js'
import type { Worked } from './worked.js'

/** What is baked, as far as it tells the dish. */
export interface Batch {
  readonly title: string
  readonly text: string
  readonly lines: readonly Worked[]
  /** The whole receipt in ml, unscaled; null where it can't be told. */
  readonly room: number | null
}

/** What may be baked in, or baked, small or large. */
const bakeable =
  '(?:ones?|pies?|tarts?|tins?|pans?|dish(?:es)?|mou?lds?|coff[iy]ns?|loa(?:f|ves)|cakes?|puddings?|pasties|custards?|biscuits?)'
/** Words that say the receipt bakes small things: *little pies*, *small round cakes*, but not *beat it small* with *a little salt*. */
const smallWords = new RegExp(
  String.raw`\b(?:(?:smalle?|smale?|litt?le|lytt?[ey]ll?)\s{1,3}(?:[a-z]{1,12}\s{1,3})?${bakeable}|patt(?:y|ies)|tartlets?|cups|buns?|wigg?s)\b`,
  'i',
)

/** Whether the receipt bakes small things, by its words outside its measures: a small cupful is none. */
function bakesSmall(title: string, text: string, lines: readonly Worked[]): boolean {
  let rest = `${title}. `
  let from = 0
  for (const { found } of lines) {
    rest += `${text.slice(from, Math.max(from, found.start))}·`
    from = Math.max(from, found.end)
  }
  return smallWords.test(rest + text.slice(from))
}

/** Words near the oven that say that several things stand in it. */
const several = /\b(?:them|'em|hem|theym?|[þy]em|these|loaves|pies|tarts|cakes|puddings|custards|tins|pans|dishes)\b/i

/** A batch in one round vessel is taken to be a third as deep as it is across. Judgement. */
const deepness = 1 / 3
/** More than this, in ml, was divided before it went into the oven. Judgement. */
const mostInOne = 20_000

/** What the receipt's own time is taken to be of. */
export interface Reference {
  readonly vessel: Vessel['filling']
  readonly said: string
}

const common = ({ label, filling }: Vessel): Reference => ({
  vessel: filling,
  said: `a ${label} filled ${Math.round(filling!.deep)} mm deep`,
})

/** The whole batch in one vessel. */
function wholeOf(volume: number): Reference {
  const across = 10 * Math.cbrt((4 * volume) / (Math.PI * deepness))
  const deep = across * deepness
  const said = `the whole of it in one round, ${Math.round(across / 10)} cm across and ${Math.round(deep / 10)} cm deep`
  return { vessel: { base: 'ellipse', length: across, width: across, deep }, said }
}

/** The words between the points before and behind a stretch of the text, as far as they are near. */
function clauseAround(text: string, start: number, end: number): string {
  const before = text
    .slice(Math.max(0, start - nearby), start)
    .split(/[.;:]/)
    .at(-1)!
  return before + text.slice(start, end) + text.slice(end, end + nearby).split(/[.;:]/, 1)[0]!
}

/** What the receipt bakes at once: small things, several things, or all of it as one. */
export function referenceFor({ title, text, lines, room }: Batch, { start, end }: SheetOven, known: KnownTime): Reference {
  const [small, large] = commonPair()
  if (bakesSmall(title, text, lines)) return common(small)
  const clause = start === null || end === null ? '' : clauseAround(text, start, end)
  const whole = known.own && room !== null && room <= mostInOne && !several.test(clause)
  return whole ? wholeOf(room) : common(large)
}

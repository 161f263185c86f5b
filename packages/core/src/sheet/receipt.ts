/** From the words of a receipt to its worked lines. */
import { badOption, PottleError } from '../error.js'
import type { Found, ReceiptReading } from '../reading/index.js'
import type { Workshop } from './chosen.js'
import { findOpen, type Open, workOpen } from './open.js'
import { type Rated, rated } from './rates.js'
import { type Earlier, type Settled, separate, settle } from './references.js'
import type { SheetThing } from './sheet.js'
import { type Met, type Worked, workLine } from './worked.js'

/** What the lines of a sheet are made of, in the order of the text: stated measures, and quantities left open. */
function statements(text: string, reading: ReceiptReading): readonly (Rated & { readonly open?: Open })[] {
  const sure = reading.measures.filter(({ kind }) => kind !== 'vague')
  const stated = rated(text, sure).flatMap(({ found, ...rate }) => separate(found).map((one) => ({ ...rate, found: one })))
  const open = findOpen(text, reading).map((one) => ({ found: one.found, per: null, open: one }))
  return [...stated, ...open].sort((a, b) => a.found.start - b.found.start)
}

function settled(found: Found, earlier: Earlier): Settled | PottleError {
  try {
    const one = settle(found, earlier)
    if (!earlier.has(found.start)) earlier.set(found.start, one)
    return one
  } catch (error) {
    if (error instanceof PottleError) return error
    throw error
  }
}

/**
 * Every line of a receipt, worked in the order of the text.
 *
 * @throws PottleError `bad-option` for a fix of a line that there is none of, and as `sensesFor`
 */
export function workLines(text: string, reading: ReceiptReading, shop: Workshop): readonly Worked[] {
  const earlier: Earlier = new Map()
  const lines: Worked[] = []
  const met: Met = new Map()
  for (const { found, per, made, open } of statements(text, reading)) {
    const number = lines.length + 1
    const line = open ? workOpen(open, number, lines, shop, met) : workLine(found, settled(found, earlier), number, shop, met)
    lines.push({ ...line, per, ...(made && { made }) })
  }
  const beyond = [...shop.fixed.lines.keys()].find((number) => number > lines.length)
  if (beyond !== undefined)
    throw badOption(`plan.fixed.lines.${beyond}`, `the receipt has ${lines.length} lines; there is no line ${beyond}`)
  return lines
}

/** What is named without an amount that could be worked: things alone, and vague quantities. */
export function unmeasuredOf({ measures, unmeasured }: ReceiptReading, lines: readonly Worked[]): readonly SheetThing[] {
  const open = lines.filter(({ found }) => found.kind === 'consistency').map(({ found }) => found)
  const vague = measures.filter(({ kind, thing }) => kind === 'vague' && thing !== null)
  const told = ({ start, end }: SheetThing): boolean => open.some((one) => one.start <= start && end <= one.end)
  return [...unmeasured.filter((thing) => !told(thing)), ...vague]
    .map(({ start, end, phrase, thing }) => ({ start, end, phrase, thing: thing! }))
    .sort((a, b) => a.start - b.start)
}

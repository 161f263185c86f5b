import type { AnswerCaution, AnswerStep, Value } from '@pottle/core'
import { type Column, clean, type Ends, hang, reachOf, ruler, table, widthOf, wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { endsOf, times } from './amount.js'

/** What is spoken of at the left, when and where at the right; one above the other where there is no room. */
export function heading(title: string, setting: string, { width, bold }: Page): readonly string[] {
  const blanks = width - widthOf(clean(title)) - widthOf(clean(setting))
  if (blanks >= 2) return [`${bold(clean(title))}${' '.repeat(blanks)}${clean(setting)}`]
  return [...wrap(title, width).map(bold), ...wrap(setting, width)]
}

/** A part with its title, and an empty line before it; nothing where there is nothing to say. */
export function section(title: string, lines: readonly string[], { width, bold }: Page): readonly string[] {
  return lines.length === 0 ? [] : ['', ...wrap(title, width).map(bold), ...lines]
}

/** A paragraph, set in from the margin. */
export const indented = (text: string, { width }: Page): readonly string[] => hang('  ', text, width)

/** A list of paragraphs. */
export function bullets(texts: readonly string[], { width }: Page): readonly string[] {
  return texts.flatMap((text) => hang('  - ', text, width))
}

const longestRuler = 48

/** A band as a drawing between its ends, and how often the truth lies there. */
export function bandLines(value: Omit<Value, 'quantity'>, { width, quiet }: Page): readonly string[] {
  const [low, high] = endsOf(value)
  if (value.low === value.high) return []
  const room = Math.min(width - low.length - high.length - 4, longestRuler)
  const drawn = room >= 8 ? [`  ${low} ${ruler(value, reachOf([value]), room)} ${high}`] : [`  ${low} to ${high}`]
  return [...drawn, ...hang('  ', `${times(value.coverage)} it lies between these ends`, width).map(quiet)]
}

/** In a narrower page than this rulers leave no room for words. */
const roomForRulers = 70
const shortRuler = 18

interface BandRow {
  readonly key: string
  /** What is drawn between key and text; null for nothing. */
  readonly band: Ends | null
  readonly text: string
}

/** Rows that are drawn on one scale, where the page has room for it, so that it is seen how far apart they lie. */
export function bandTable(rows: readonly BandRow[], { width }: Page): readonly string[] {
  const bands = rows.map(({ band }) => band).filter((band) => band !== null)
  const drawn = bands.length > 0 && width >= roomForRulers
  const reach = reachOf(bands)
  const columns: readonly Column[] = [{ align: 'right' }, ...(drawn ? [{ drawn: true } as const] : []), { wraps: true }]
  const cells = rows.map(({ key, band, text }) => [key, ...(drawn ? [band ? ruler(band, reach, shortRuler) : ''] : []), text])
  return table(columns, cells, width)
}

/** More sources than this are counted, not told, where not everything was asked for. */
const mostSources = 3

/** Who says so and how well: `statute; 5 Anne c. 27`; what was not looked up says so. */
export function attested({ grade, checked, sources }: Pick<AnswerStep, 'grade' | 'checked' | 'sources'>, full: boolean): string {
  const told =
    full || sources.length <= mostSources + 1 ? sources : [...sources.slice(0, mostSources), `and ${sources.length - mostSources} more`]
  return [checked === 'memory' ? `${grade}, from memory` : grade, ...told].join('; ')
}

/** The links of a derivation, each with who says so. */
export function stepLines(steps: readonly AnswerStep[], { width, quiet }: Page, full: boolean): readonly string[] {
  const digits = String(steps.length).length
  return steps.flatMap((step, i) => {
    const head = `  ${String(i + 1).padStart(digits)}. `
    const text = `${step.text.replace(/\.$/, '')}: ${step.factor}`
    return [...hang(head, text, width), ...hang(' '.repeat(head.length), attested(step, full), width).map(quiet)]
  })
}

export function cautionLines(cautions: readonly AnswerCaution[], page: Page): readonly string[] {
  return bullets(
    cautions.map(({ title, text, sources }) => `${title}. ${text} (${sources.join('; ')})`),
    page,
  )
}

export const joined = (lines: readonly string[]): string => `${lines.join('\n')}\n`

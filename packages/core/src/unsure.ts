import type { Attested, Checked, Citation, Dated, Grade, Spread } from './tables/index.js'
import * as tables from './tables/index.js'

/** A figure of the tables that was recalled and not looked up, or that rests on common practice or the editors' opinion. */
export interface UnsureFigure {
  /** The file of the dataset that it stands in, without `.json`. */
  readonly table: string
  /** The id of its row. */
  readonly row: string
  /** The part of the row, by its id or its name; null for the row itself. */
  readonly part: string | null
  readonly label: string
  /** What the tables say, field by field: `density 0.5 to 0.6, best 0.55`. */
  readonly says: string
  readonly years: readonly [number, number] | null
  readonly place: string | null
  readonly grade: Grade
  readonly checked: Checked
  readonly sources: readonly Citation[]
  /** The reason or the note that stands beside it. */
  readonly because: string | null
}

type Fields = Readonly<Record<string, unknown>>
type Claim = Fields &
  Attested &
  Dated & { readonly id?: string; readonly label?: string; readonly title?: string; readonly duty?: string; readonly reason?: string }

/** Rests on no text, so that a text would be better. */
const ungrounded: ReadonlySet<Grade> = new Set(['practice', 'judgement'])

/** Invented for examples: there is nothing to find out about them. */
const invented = 'demo-receipts'

/** Told in other words than those of the fields. */
const toldApart: ReadonlySet<string> = new Set([
  ...['id', 'label', 'title', 'plural', 'singular', 'names', 'years', 'place'],
  ...['source', 'grade', 'checked', 'note', 'reason', 'duty'],
])

const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null && !Array.isArray(value)
const isClaim = (value: Fields): value is Claim => Array.isArray(value.source) && 'grade' in value && 'checked' in value
const isUnsure = ({ grade, checked }: Claim): boolean => checked === 'memory' || ungrounded.has(grade)

const isSpread = (value: Fields): value is Fields & Spread => 'low' in value && 'best' in value && 'high' in value
const spread = ({ low, best, high }: Spread): string => (low === high ? String(best) : `${low} to ${high}, best ${best}`)

/** A value in a few words; undefined for what takes more. */
function inWords(value: unknown): string | undefined {
  if (typeof value === 'number' || typeof value === 'boolean') return String(value)
  if (typeof value === 'string') return value.length <= 60 ? value : undefined
  if (Array.isArray(value)) return value.length <= 6 && !value.some((item) => typeof item === 'object') ? value.join(', ') : undefined
  if (!isFields(value) || isClaim(value)) return undefined
  if (isSpread(value)) return spread(value)
  const parts = Object.entries(value).map(([key, part]) => [key, inWords(part)] as const)
  return parts.every(([, words]) => words !== undefined) ? parts.map(([key, words]) => `${key} ${words}`).join(', ') : undefined
}

/** What a claim says of its own, field by field. */
function says(claim: Claim): string {
  const { low: _low, best: _best, high: _high, ...rest } = claim as Fields
  const fields = Object.entries(isSpread(claim) ? rest : claim).flatMap(([key, value]) => {
    const words = toldApart.has(key) ? undefined : inWords(value)
    return words ? [`${key} ${words}`] : []
  })
  return [...(isSpread(claim) ? [spread(claim)] : []), ...fields].join('; ')
}

/** The claims of a row, its own and those of its parts, each with the name of its part. */
function claimsIn(value: unknown, part: string | null): { part: string | null; claim: Claim }[] {
  if (Array.isArray(value)) return value.flatMap((item) => claimsIn(item, (isFields(item) && (item.id as string | undefined)) || part))
  if (!isFields(value)) return []
  const own = isClaim(value) ? [{ part, claim: value }] : []
  return [...own, ...Object.entries(value).flatMap(([key, inner]) => claimsIn(inner, key))]
}

/** `wheatPrices` is the constant, `wheat-prices` the file. */
const fileOf = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

/**
 * Every figure of the tables that a reader could make surer: recalled and not looked up, common practice, or the editors' judgement.
 *
 * @example listUnsure().find(({ row }) => row === 'before-1800')?.says   // 'widen 75'
 */
export function listUnsure(): readonly UnsureFigure[] {
  return Object.entries<unknown>(tables)
    .filter((entry): entry is [string, Claim[]] => Array.isArray(entry[1]))
    .map(([name, rows]) => ({ table: fileOf(name), rows }))
    .filter(({ table }) => table !== invented)
    .flatMap(({ table, rows }) =>
      rows.flatMap((row) =>
        claimsIn(row, null)
          .filter(({ claim }) => isUnsure(claim))
          .map(({ part, claim }) => ({
            table,
            row: row.id!,
            part: part === row.id ? null : part,
            label: claim.label ?? claim.title ?? claim.duty ?? row.label ?? row.title ?? row.id!,
            says: says(claim),
            years: claim.years ?? null,
            place: claim.place ?? null,
            grade: claim.grade,
            checked: claim.checked,
            sources: claim.source,
            because: claim.reason ?? claim.note ?? null,
          })),
      ),
    )
}

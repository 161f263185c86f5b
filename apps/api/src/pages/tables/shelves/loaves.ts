import { type FixedLoafRow, fixedLoaves, type LoafCoinRow, type LoafKindRow, loafCoins, loafKinds } from '@pottle/core/tables'
import { addressOf } from '../../parts/asked.js'
import { inScale, scaleFor } from '../../parts/figures.js'
import { type Article, attestation, rangeOf, type Shelf, shelf } from '../article.js'

/** One avoirdupois ounce is exactly 28.349523125 g (International Yard and Pound Agreement, 1959). */
const gramsToOunce = 28.349523125
const grams = (ounces: string): number => Number(ounces) * gramsToOunce
const asWeight = (ounces: string): string => inScale(grams(ounces), scaleFor('mass', grams(ounces)))

const at = '/measures/loaves'
const byWheat = 'by the price of wheat'

function ofCoin({ id, label, names, ...row }: LoafCoinRow): Article {
  return {
    id,
    address: `${at}/${id}`,
    label,
    names,
    comes: byWheat,
    asks: [`${/^[aeiou]/.test(label) ? 'an' : 'a'} ${label}`],
    group: 'By their price',
    findings: [{ label, best: byWheat, computed: addressOf('/loaves', { coin: id }), ...attestation(row), things: null }],
  }
}

function ofKind({ id, label, names, as, piece, ...row }: LoafKindRow): Article {
  const rule = loafKinds.find((one) => one.id === as)
  const comes = rule ? `by the rule of ${rule.label}` : piece ? 'by its piece' : 'by a rule of its own'
  return {
    id,
    address: `${at}/${id}`,
    label,
    names,
    comes,
    group: 'By their bread',
    findings: [{ label, best: comes, computed: addressOf('/loaves', { kind: id }), ...attestation(row), things: null }],
  }
}

function ofWeight(loaf: string, rows: readonly FixedLoafRow[]): Article {
  return {
    id: loaf,
    address: `${at}/${loaf}`,
    // Rolls and manchets are named by what the table says of them, measured loaves by their measure.
    label: /\bloaf\b/.test(rows[0]!.label) ? `${loaf.replaceAll('-', ' ')} loaf` : rows[0]!.label,
    names: [...new Set(rows.flatMap(({ names }) => names))],
    comes: rangeOf(
      rows.map(({ ounces }) => grams(ounces)),
      'mass',
    ),
    group: 'Of a fixed weight',
    findings: rows.map(({ id, label, ounces, ends, ...row }) => ({
      id,
      label,
      best: asWeight(ounces),
      ends: ends && `${asWeight(ends[0])} to ${asWeight(ends[1])}`,
      ...attestation(row),
      things: null,
    })),
  }
}

function fixed(): readonly Article[] {
  const loaves = [...new Set(fixedLoaves.map(({ loaf }) => loaf))]
  return loaves.map((loaf) =>
    ofWeight(
      loaf,
      fixedLoaves.filter((row) => row.loaf === loaf),
    ),
  )
}

export const loafShelf: Shelf = shelf(
  { address: at, title: 'Loaves', about: 'Named by their price, by their bread, or by their weight.' },
  () => [...loafCoins.map(ofCoin), ...loafKinds.map(ofKind), ...fixed()],
)

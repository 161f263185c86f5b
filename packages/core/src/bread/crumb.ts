import { spread, unknown } from '../bands/index.js'
import { crumbShares } from '../tables/index.js'
import type { Baked } from './baked.js'

/** The same loaf without its crust. */
export function crumbOf(baked: Baked): Baked {
  const row = crumbShares.find(({ kind }) => kind === baked.kind) ?? crumbShares.find(({ kind }) => !kind)!
  const { low, best, high } = row.share
  const step = {
    text: row.note ?? row.label,
    factor: `${best} (${low} to ${high})`,
    grade: row.grade,
    checked: row.checked,
    sources: row.source,
  }
  const { exact: _, ...rest } = baked
  return {
    ...rest,
    label: `crumb of ${/^[aeiou]/.test(baked.label) ? 'an' : 'a'} ${baked.label}`,
    doubts: [...baked.doubts, unknown(`crumb:${row.id}`, spread(row.share))],
    steps: [...baked.steps, step],
  }
}

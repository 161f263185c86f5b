/** The cook's own egg, and all that a sheet has cracked of it. */
import { type EggCount, eggOf, type OwnEgg, sayEggs, sayParts, some } from '../modern/index.js'
import type { CheckedPlan } from './plan.js'
import type { SheetEggs } from './sheet.js'

/** The egg of the plan: of its class, or of the weight that the cook fixed. */
export function ownEgg({ eggClass, fixed }: CheckedPlan): OwnEgg {
  const { egg } = fixed
  return egg === null ? eggOf(eggClass.best, eggClass) : eggOf(egg, { id: 'each', label: `egg of ${egg} g`, plural: `eggs of ${egg} g` })
}

/** What all lines of eggs come to at the bowl; null where there are none. */
export function sumEggs(lines: readonly EggCount[], egg: OwnEgg): SheetEggs | null {
  if (lines.length === 0) return null
  const add = (part: keyof EggCount): number => lines.reduce((sum, line) => sum + line[part], 0)
  const [whole, yolks, whites] = [add('whole'), add('yolks'), add('whites')]
  const cracked = whole + Math.max(yolks, whites)
  const left = { yolks: Math.max(0, whites - yolks), whites: Math.max(0, yolks - whites) }
  const over = sayParts(left.yolks, left.whites)
  const tail = over ? `; ${over} left over` : ''
  const parts = cracked > whole ? `: ${sayEggs({ whole, yolks, whites }, egg)}${tail}` : ''
  const text = `crack ${some(cracked, egg.label, egg.plural)}${parts}`
  return {
    unit: egg.unit,
    label: egg.label,
    whole,
    yolks,
    whites,
    cracked,
    left,
    text: cracked > 0 ? text : 'less than half an egg: beat one and weigh it',
  }
}

import { bakeFoods, dishShapes, eggClasses, fanRules, fixedLoaves, loafCoins, loafKinds, modernUnits, places } from '@pottle/core/tables'

/** A name that a request may give, and what it stands for. */
export interface Name {
  readonly id: string
  readonly label: string
}

/** Names of one sort, all of them. */
export interface NameList {
  readonly title: string
  /** Where requests give them. */
  readonly fields: readonly string[]
  readonly names: readonly Name[]
}

/** Loaves of a fixed size have a row for each of their weights, and one name. */
const fixedSizes: readonly Name[] = [...new Set(fixedLoaves.map(({ loaf }) => loaf))].map((id) => ({ id, label: `${id} loaf` }))

/** What requests call things by, from the tables that they are looked up in. */
export const nameLists: readonly NameList[] = [
  { title: 'Places', fields: ['place'], names: places },
  {
    title: 'Modern units',
    fields: ['to', 'plan.limit.unit'],
    names: modernUnits,
  },
  { title: 'Classes of egg', fields: ['plan.eggClass'], names: eggClasses },
  { title: 'Dishes', fields: ['plan.dish'], names: dishShapes },
  { title: 'Loaves by their price or size', fields: ['coin'], names: [...loafCoins, ...fixedSizes] },
  { title: 'Kinds of bread', fields: ['kind'], names: loafKinds },
  { title: 'Foods of a bake plan', fields: ['food'], names: bakeFoods },
  { title: 'Rules for an oven with a fan', fields: ['fanRule'], names: fanRules },
]

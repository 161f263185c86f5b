import { Role } from './word.js'

const qualifiers = new Set(['about', 'above', 'below', 'good', 'large', 'small', 'heaped', 'rounded', 'level'])

const roleOf: Readonly<Record<string, number>> = {
  article: Role.Article,
  each: Role.Each,
  determiner: Role.Determiner,
  about: Role.Qualifier,
  above: Role.Qualifier,
  below: Role.Qualifier,
  good: Role.Qualifier | Role.Describing,
  large: Role.Qualifier | Role.Describing,
  small: Role.Qualifier | Role.Describing,
  heaped: Role.Qualifier | Role.Describing,
  rounded: Role.Qualifier | Role.Describing,
  level: Role.Qualifier | Role.Describing,
  describing: Role.Describing,
  adverb: Role.Adverb,
  weight: Role.Weight,
  quantity: Role.Quantity,
  alike: Role.Alike,
  twice: Role.Twice,
  size: Role.Size,
  yolk: Role.Yolk,
  white: Role.White | Role.Describing,
  without: Role.Without,
  removing: Role.Without | Role.Removing,
  keeping: Role.Without | Role.Keeping,
  part: Role.PartOf,
  oven: Role.Oven,
  heat: Role.Heat,
  degree: Role.Degree,
  standard: Role.Standard,
  dimension: Role.Dimension,
  vague: Role.Vague,
  plain: Role.Plain,
}

/** The qualifiers as readings name them: *above* is what a good measure does, *below* what a scant one does. */
const nameOfQualifier: Readonly<Record<string, string>> = { above: 'good', below: 'scant' }

/** What the words of a group of particles can do. */
export const rolesOf = (group: string): number => roleOf[group] ?? 0

/** The qualifier that the words of a group stand for. */
export const qualifierOf = (group: string): string | null => (qualifiers.has(group) ? (nameOfQualifier[group] ?? group) : null)

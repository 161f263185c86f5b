import { type Expression, product, spread, sum, type Unknown, unknown } from '../bands/index.js'
import type { EggParts } from '../reading/index.js'
import { type EggPartsRow, eggParts, eggs, type SizedRow, type SpellRow } from '../tables/index.js'
import { byKey, keyOf } from './name.js'

const birds = byKey(eggs)
const [hen] = eggs

/** The egg of a bird by the name of the thing; undefined for what is not an egg. */
export function findEgg(thing: string): SizedRow | undefined {
  const key = keyOf(thing)
  return key.endsWith('egg') ? birds().get(key) : undefined
}

/** The egg that a thing's name means, a hen's where it names none. */
export function eggOf(thing: string | null): SizedRow {
  return (thing ? findEgg(thing) : undefined) ?? hen!
}

/** The egg of a bird by the bird's id. */
export function eggOfBird(bird: string): SizedRow {
  return birds().get(keyOf(bird)) ?? hen!
}

/** The weight of one egg in its shell, in g: the same unknown wherever eggs of that bird and date are meant. */
export function eggInShell(bird: SizedRow, spell: SpellRow): Unknown {
  return unknown(`egg:${bird.id}:${spell.id}`, spread(spell))
}

/** How white and yolk share this bird's egg. */
export function partsOf(bird: SizedRow): EggPartsRow {
  return eggParts.find((row) => row.birds.includes(bird.id)) ?? eggParts[0]!
}

/**
 * Eggs whole and in parts, in g without the shell.
 *
 * m (w (whole + whites) + y (whole + yolks)): m the weight in the shell, w and y the parts of it that are white and yolk.
 */
export function contentsOf(bird: SizedRow, spell: SpellRow, { whole, yolks, whites }: EggParts): Expression {
  const m = eggInShell(bird, spell)
  const row = partsOf(bird)
  const share = (part: 'white' | 'yolk') => unknown(`egg-${part}:${row.id}`, spread(row[part]))
  return sum(product(whole + whites, m, share('white')), product(whole + yolks, m, share('yolk')))
}

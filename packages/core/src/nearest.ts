type Pairs = ReadonlyMap<string, number>

/** Pairs of neighbouring letters, the ends of the word among them. */
function pairsOf(word: string): Pairs {
  const framed = ` ${word.toLowerCase().slice(0, 40)} `
  const pairs = new Map<string, number>()
  for (let i = 1; i < framed.length; i++) {
    const pair = framed.slice(i - 1, i + 1)
    pairs.set(pair, (pairs.get(pair) ?? 0) + 1)
  }
  return pairs
}

/** Names of tables are asked about again and again. */
const remembered = new Map<string, Pairs>()

function pairsOfName(name: string): Pairs {
  const known = remembered.get(name)
  if (known) return known
  const pairs = pairsOf(name)
  remembered.set(name, pairs)
  return pairs
}

const sizeOf = (pairs: Pairs): number => [...pairs.values()].reduce((sum, count) => sum + count, 0)

/** Twice the shared pairs of letters over all of them: Dice 1945. It sees a name in a part of it, where a count of edits sees a longer word. */
function likeness(a: Pairs, b: Pairs): number {
  let shared = 0
  for (const [pair, count] of a) shared += Math.min(count, b.get(pair) ?? 0)
  return (2 * shared) / (sizeOf(a) + sizeOf(b))
}

/**
 * Names that a mistyped word may stand for, the likest first; none where none is like it.
 *
 * @example nearestTo('londn', ['london', 'leeds', 'kent'], 1)   // ['london']
 */
export function nearestTo(word: string, names: readonly string[], count = 3): string[] {
  const sought = pairsOf(word)
  return names
    .map((name) => ({ name, like: likeness(sought, pairsOfName(name)) }))
    .filter(({ like }) => like > 0)
    .sort((a, b) => b.like - a.like || (a.name < b.name ? -1 : 1))
    .slice(0, count)
    .map(({ name }) => name)
}

/**
 * What would be right in place of a word, as the end of a sentence that says what is wrong with it.
 *
 * @param before what stands before each name where it is written: `--`
 * @example `there is no such place${sayNearest('londn', ['london', 'kent'])}`   // 'there is no such place; the nearest is london'
 */
export function sayNearest(word: string, names: readonly string[], count = 3, before = ''): string {
  const near = nearestTo(word, names, count).map((name) => before + name)
  if (near.length > 0) return `; the nearest ${near.length > 1 ? 'are' : 'is'} ${near.join(', ')}`
  const some = names.slice(0, count).map((name) => before + name)
  const more = names.length - some.length
  return some.length > 0 ? `; there are ${some.join(', ')}${more > 0 ? ` and ${more} more` : ''}` : ''
}

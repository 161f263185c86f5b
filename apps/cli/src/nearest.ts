/** Pairs of neighbouring letters, the ends of the word among them. */
function pairsOf(word: string): Map<string, number> {
  const framed = ` ${word.toLowerCase().slice(0, 40)} `
  const pairs = new Map<string, number>()
  for (let i = 1; i < framed.length; i++) {
    const pair = framed.slice(i - 1, i + 1)
    pairs.set(pair, (pairs.get(pair) ?? 0) + 1)
  }
  return pairs
}

const sizeOf = (pairs: ReadonlyMap<string, number>): number => [...pairs.values()].reduce((sum, count) => sum + count, 0)

/** Twice the shared pairs of letters over all of them: Dice 1945. */
function likeness(a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): number {
  let shared = 0
  for (const [pair, count] of a) shared += Math.min(count, b.get(pair) ?? 0)
  return (2 * shared) / (sizeOf(a) + sizeOf(b))
}

/** Names that a mistyped word may stand for, the likest first. */
export function nearestTo(word: string, names: readonly string[], count = 3): readonly string[] {
  const sought = pairsOf(word)
  return names
    .map((name) => ({ name, like: likeness(sought, pairsOf(name)) }))
    .filter(({ like }) => like > 0)
    .sort((a, b) => b.like - a.like || (a.name < b.name ? -1 : 1))
    .slice(0, count)
    .map(({ name }) => name)
}

/** `; the nearest are a, b`, or nothing where nothing is like it. */
export function sayNearest(word: string, names: readonly string[], before = ''): string {
  const near = nearestTo(word, names).map((name) => before + name)
  return near.length > 0 ? `; the nearest ${near.length > 1 ? 'are' : 'is'} ${near.join(', ')}` : ''
}

/** Edits (a letter added, dropped, changed or swapped with its neighbour) that turn one word into another: Damerau 1964, restricted form. */
function editsBetween(a: string, b: string): number {
  let older: number[] = []
  let old = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      row[j] = Math.min(old[j]! + 1, row[j - 1]! + 1, old[j - 1]! + same, swapped ? older[j - 2]! + 1 : Number.POSITIVE_INFINITY)
    }
    older = old
    old = row
  }
  return old[b.length]!
}

/**
 * The candidates most like a word, the likest first.
 *
 * @example nearestTo('londn', ['london', 'leeds', 'kent'], 1)   // ['london']
 */
export function nearestTo(word: string, candidates: readonly string[], count = 3): string[] {
  const sought = word.slice(0, 40).toLowerCase()
  return candidates
    .map((candidate) => ({ candidate, edits: editsBetween(sought, candidate) }))
    .sort((a, b) => a.edits - b.edits || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, count)
    .map(({ candidate }) => candidate)
}

/** Groups items that share a key, directly or through others: the parts of a sum that are independent of each other. */
export function cluster<Item>(items: readonly Item[], keysOf: (item: Item) => Iterable<unknown>): Item[][] {
  const parent = items.map((_, i) => i)
  const root = (i: number): number => {
    while (parent[i] !== i) i = parent[i] = parent[parent[i]!]!
    return i
  }
  const holders = new Map<unknown, number>()
  items.forEach((item, i) => {
    for (const key of keysOf(item)) {
      const holder = holders.get(key)
      if (holder === undefined) holders.set(key, i)
      else parent[root(i)] = root(holder)
    }
  })
  const groups = new Map<number, Item[]>()
  items.forEach((item, i) => {
    const group = groups.get(root(i))
    if (group) group.push(item)
    else groups.set(root(i), [item])
  })
  return [...groups.values()]
}

import { byName } from './index-rows.js'
import { goods } from './rows/goods.js'
import type { GoodRow } from './schema/index.js'

const index = byName(goods)

function goodNamed(name: string): GoodRow | undefined {
  const id = name.replaceAll(' ', '-')
  return index().get(name) ?? index().get(id) ?? index().get(`${name}s`) ?? index().get(`${id}s`)
}

/**
 * A thing by its id, its modern name or a listed spelling, in the singular or the plural: first with a word that describes it (*brown sugar*),
 * the nearest to its name before the others (*white granulated sugar*), then as it stands, then by its last word (*sweet cream* is cream).
 *
 * @example findGood('sugar', ['brown'])?.id   // 'muscovado'
 */
export function findGood(name: string, describing: readonly string[] = []): GoodRow | undefined {
  const lower = name.toLowerCase()
  for (const word of [...describing].reverse()) {
    const described = goodNamed(`${word} ${lower}`)
    if (described) return described
  }
  return goodNamed(lower) ?? goodNamed(lower.slice(lower.lastIndexOf(' ') + 1))
}

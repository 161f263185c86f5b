/** One quantity on the tools of one kitchen: scales, jugs, cups and spoons. */
import type { Band } from '../bands/index.js'
import { toDigits } from '../digits.js'
import { findUnit, inFractions } from '../modern/index.js'
import { exactValue } from '../tables/index.js'
import { reachOf, roundWithin } from './rounding.js'

/** An amount measured off, and what it comes to in the base unit. */
export interface Measured {
  readonly amount: number
  readonly unit: string
  readonly text: string
  readonly quantity: 'mass' | 'volume'
  /** In g or ml. */
  readonly base: number
}

const tidy = (x: number): number => toDigits(x, 5)
const inBase = (unit: string): number => exactValue(findUnit(unit)!.value!).value.toNumber()

/** What a scale or jug is read to, from coarse to fine. */
const metricSteps = [100, 50, 25, 10, 5, 1, 0.5, 0.1]
const fineSteps = [...metricSteps, 0.05, 0.01]
/** From here on a cook speaks of kilograms and litres. */
const large = 2000
/** Less than this is better taken with a spoon than weighed. */
const spoonGrams = 10
const spoonMillilitres = 60

function metricMass(band: Band): Measured {
  const g = roundWithin(band.best, band.best < 1 ? fineSteps : metricSteps, reachOf(band))
  if (g >= large) return { amount: g / 1000, unit: 'kg', text: `${g / 1000} kg`, quantity: 'mass', base: g }
  return { amount: g, unit: 'g', text: `${g} g`, quantity: 'mass', base: g }
}

function metricVolume(band: Band): Measured {
  const ml = roundWithin(band.best, band.best < 1 ? fineSteps : metricSteps, reachOf(band))
  if (ml >= large) return { amount: ml / 1000, unit: 'l', text: `${ml / 1000} litres`, quantity: 'volume', base: ml }
  return { amount: ml, unit: 'ml', text: `${ml} ml`, quantity: 'volume', base: ml }
}

/** `1 cup, 2 tbsp and 1 tsp`. */
function joined(parts: readonly string[]): string {
  const said = parts.filter(Boolean)
  return said.length < 3 ? said.join(' and ') : `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`
}
const many = (value: number, one: string, more: string): string => `${inFractions(value)} ${value > 1 ? more : one}`

/** Tea-spoons to the table-spoon and to the US cup. */
const inTable = 3
const inCup = 48

/** Tea-spoons as a cook says them: table-spoons first; a half of one only where nothing is over. */
function saySpoons(spoons: number): readonly string[] {
  const table = Math.floor(spoons / inTable + 1e-9)
  const tea = spoons - inTable * table
  if (table > 0 && Math.abs(tea - inTable / 2) < 1e-9) return [`${inFractions(table + 0.5)} tbsp`]
  return [table > 0 ? `${table} tbsp` : '', tea > 1e-9 ? `${inFractions(tea)} tsp` : '']
}

/** Cups in quarters, or in thirds where they come out even; the rest in spoons. */
function sayCups(spoons: number): readonly string[] {
  if (spoons < inCup / 4) return saySpoons(spoons)
  const part = spoons % (inCup / 3) === 0 ? inCup / 3 : inCup / 4
  const cups = Math.floor(spoons / part + 1e-9) * part
  return [many(cups / inCup, 'cup', 'cups'), ...saySpoons(spoons - cups)]
}

const cupSteps = [48, 24, 16, 12, 3, 1, 0.5, 0.25]
const spoonSteps = [3, 1.5, 1, 0.5, 0.25]
/** Below one tea-spoon its eighths are measured too. */
const finest = 1 / 8
/** Less than half of the smallest spoon. */
const pinch = 1 / 16
/** Spoons that stand beside a weight are said more roundly than those that stand alone. */
const besideReach = 1 / 12

function bySpoons(band: Band, tea: string, table: string, cup: string | null, reach: number = reachOf(band)): Measured {
  const spoon = inBase(tea)
  const exact = band.best / spoon
  if (exact < pinch) return { amount: exact, unit: tea, text: 'a pinch', quantity: 'volume', base: band.best }
  const steps = cup ? cupSteps : spoonSteps
  const spoons = roundWithin(exact, exact < 1 ? [...steps, finest] : steps, reach)
  const unit = cup && spoons >= inCup / 4 ? { id: cup, of: inCup } : spoons >= inTable ? { id: table, of: inTable } : { id: tea, of: 1 }
  const text = joined(cup ? sayCups(spoons) : saySpoons(spoons))
  return { amount: tidy(spoons / unit.of), unit: unit.id, text, quantity: 'volume', base: spoons * spoon }
}

/** US cups of 48 tea-spoons, and spoons. */
function usVolume(band: Band): Measured {
  return bySpoons(band, 'tsp-us', 'tbsp-us', 'cup-us')
}

/** Halves of a pound, and quarters of the first one, are said as such: `1½ lb`, `¼ lb`, `1 lb and 4 oz`. */
function sayPounds(ounces: number): string {
  if (ounces % 8 === 0 || (ounces < 16 && ounces % 4 === 0)) return `${inFractions(ounces / 16)} lb`
  const pounds = Math.floor(ounces / 16)
  return joined([pounds > 0 ? `${pounds} lb` : '', `${inFractions(ounces - 16 * pounds)} oz`])
}

const ounceSteps = [16, 8, 4, 2, 1, 0.5, 0.25]

function poundsAndOunces(band: Band): Measured {
  const ounce = inBase('oz')
  const ounces = roundWithin(band.best / ounce, band.best < ounce ? [...ounceSteps, finest] : ounceSteps, reachOf(band))
  const unit = ounces >= 16 ? { id: 'lb', of: 16 } : { id: 'oz', of: 1 }
  return { amount: tidy(ounces / unit.of), unit: unit.id, text: sayPounds(ounces), quantity: 'mass', base: ounces * ounce }
}

function sayPints(ounces: number): string {
  if (ounces % 5 === 0 && ounces >= 5) return many(ounces / 20, 'pint', 'pints')
  const pints = Math.floor(ounces / 20 + 1e-9)
  return joined([pints > 0 ? many(pints, 'pint', 'pints') : '', `${inFractions(ounces - 20 * pints)} fl oz`])
}

/** Imperial pints and fluid ounces; metric spoons for what is less than an ounce and a half. */
function ukVolume(band: Band): Measured {
  const ounce = inBase('fl-oz-imp')
  if (band.best < 1.5 * ounce) return bySpoons(band, 'tsp-metric', 'tbsp-metric', null)
  const ounces = roundWithin(band.best / ounce, [20, 10, 5, 1, 0.5, 0.25], reachOf(band))
  const unit = ounces >= 5 ? { id: 'pint-imp', of: 20 } : { id: 'fl-oz-imp', of: 1 }
  return { amount: tidy(ounces / unit.of), unit: unit.id, text: sayPints(ounces), quantity: 'volume', base: ounces * ounce }
}

/** What spoons a small amount comes to, to be said beside its grams or millilitres. */
function metricSpoons(volume: Band | undefined): string {
  if (!volume || volume.best > spoonMillilitres) return ''
  return ` (${bySpoons(volume, 'tsp-metric', 'tbsp-metric', null, besideReach).text})`
}

/** What is known of a line: its band by weight, by measure, or both, and whether it pours or is measured by the cup. */
export interface Known {
  readonly mass: Band | undefined
  readonly volume: Band | undefined
  readonly liquid: boolean
  readonly cups: boolean
}

/** On metric scales and jugs: liquids in ml, all else in g. */
export function onScales({ mass, volume, liquid }: Known): Measured | undefined {
  if (volume && (liquid || !mass)) return metricVolume(volume)
  return mass && metricMass(mass)
}

/** On metric tools: as on scales and jugs, small amounts with their spoons. */
export function onMetric(known: Known): Measured | undefined {
  const measured = onScales(known)
  const few = measured?.quantity === 'volume' || (known.mass?.best ?? 0) < spoonGrams
  return measured && few ? { ...measured, text: `${measured.text}${metricSpoons(known.volume)}` } : measured
}

/** On US tools: cups and spoons for what is measured by them, pounds and ounces for the rest. */
export function onUs({ mass, volume, liquid, cups }: Known): Measured | undefined {
  if (volume && (liquid || cups || !mass)) return usVolume(volume)
  return mass && poundsAndOunces(mass)
}

/** On British tools: pints and fluid ounces for liquids, pounds and ounces for the rest, spoons for what is less than half an ounce. */
export function onUk({ mass, volume, liquid }: Known): Measured | undefined {
  if (volume && (liquid || !mass)) return ukVolume(volume)
  if (!mass) return undefined
  return volume && mass.best < inBase('oz') / 2 ? bySpoons(volume, 'tsp-metric', 'tbsp-metric', null) : poundsAndOunces(mass)
}

import type { Band } from '../bands/index.js'
import { findUnit, type ModernValue } from '../modern/index.js'
import { requireOvenHeat, tidy, toFahrenheit } from './degrees.js'
import { fanSetting, usualFanRule } from './fan.js'
import { type GasMark, gasMarkExact, gasMarkNearest, markSigns } from './gas.js'

/** A gas mark as a dial has it and as the rule has it. */
export interface GasSetting extends ModernValue {
  /** The dial's nearest mark for the best value; null above mark 9 and below mark 1/4. */
  readonly nearest: GasMark | null
  /** The mark by the rule, with its fraction. */
  readonly exact: number
}

/** What to set a modern oven to. */
export interface OvenSettings {
  readonly degC: ModernValue
  readonly degF: ModernValue
  readonly gasMark: GasSetting
  readonly degCFan: ModernValue
}

const dialStep = 5

function setting(unit: string, { low, best, high }: Band, sign: string, step: number = dialStep): ModernValue {
  const set = Math.round(best / step) * step
  const ends = [Math.round(low / step) * step, Math.round(high / step) * step]
  const around = ends[0] === ends[1] ? '' : ` (${ends[0]} to ${ends[1]})`
  const rounding = best === 0 ? 0 : Number((set / best - 1).toFixed(4))
  return {
    unit,
    ucum: findUnit(unit)?.ucum ?? null,
    low: tidy(low),
    best: tidy(best),
    high: tidy(high),
    text: `${set} ${sign}${around}`,
    rounding,
  }
}

const throughBand = (band: Band, change: (celsius: number) => number): Band => ({
  low: change(band.low),
  best: change(band.best),
  high: change(band.high),
  coverage: band.coverage,
})

function markText(nearest: GasMark | null, celsius: number): string {
  if (nearest) return `gas mark ${markSigns[nearest.mark] ?? nearest.mark}`
  return toFahrenheit(celsius) < 275 ? 'below gas mark ¼' : 'above gas mark 9'
}

function gasSetting(band: Band): GasSetting {
  const { low, best, high } = throughBand(band, gasMarkExact)
  const nearest = gasMarkNearest(band.best)
  const value = nearest ? gasMarkExact(nearest.degC) : best
  return {
    unit: 'gas-mark',
    ucum: null,
    low: tidy(low),
    best: tidy(best),
    high: tidy(high),
    text: markText(nearest, band.best),
    rounding: Number((value / best - 1).toFixed(4)),
    nearest,
    exact: tidy(best),
  }
}

/**
 * What to set a modern oven to for a band of temperatures.
 *
 * @param band in degC, for an oven without a fan
 * @param fanRule one of `allFanRules()`; 20 degC less where none is named
 * @throws PottleError `bad-option` for a temperature that no oven has, and for an unknown rule
 * @example ovenSettings({ low: 165, best: 176.7, high: 190, coverage: 0.9 }).gasMark.text   // 'gas mark 4'
 */
export function ovenSettings(band: Band, fanRule: string = usualFanRule): OvenSettings {
  for (const end of [band.low, band.best, band.high]) requireOvenHeat('celsius', end)
  return {
    degC: setting('degC', band, '°C'),
    degF: setting('degF', throughBand(band, toFahrenheit), '°F'),
    gasMark: gasSetting(band),
    degCFan: setting(
      'degC-fan',
      throughBand(band, (celsius) => fanSetting(celsius, fanRule)),
      '°C fan',
    ),
  }
}

/** Degrees of a thermometer in a liquid: no oven, so neither a mark nor a fan. */
export function liquidSettings(band: Band): readonly ModernValue[] {
  return [setting('degF', throughBand(band, toFahrenheit), '°F', 1)]
}

/** What a thermometer in a liquid shows, in both scales. */
export function thermometerSettings(band: Band): readonly ModernValue[] {
  return [setting('degC', band, '°C', 1), ...liquidSettings(band)]
}

/** The settings beside the base unit, as an answer lists them. */
export function modernSettings(band: Band, fanRule?: string): readonly ModernValue[] {
  const { degF, gasMark, degCFan } = ovenSettings(band, fanRule)
  return [degF, gasMark, degCFan]
}

import type { Band } from '../bands/index.js'
import { PottleError } from '../error.js'
import { findHeat, type HeatReading, ovenSettings } from '../heat/index.js'
import type { FoundHeat, ReceiptReading } from '../reading/index.js'
import type { Setting } from '../setting.js'
import type { Footnotes } from './footnotes.js'
import type { CheckedPlan } from './plan.js'
import type { SheetOven } from './sheet.js'

/** So many of the nearest dated claims stand behind a heat on the sheet; the rest are in the answer to the heat itself. */
const claimsCited = 3

function settingFor(band: Band, oven: CheckedPlan['oven']): { set: string; text: string } {
  const { degC, degF, gasMark, degCFan } = ovenSettings(band)
  const own = { conventional: degC, fan: degCFan, gas: gasMark }[oven]
  const text = [degC, degCFan, degF, gasMark].map((setting) => setting.text).join('; ')
  return { set: own.text.replace(/ \(.{1,40}\)$/, ''), text }
}

/** The year that heat words are read in: the middle of the setting's; none where none was given. */
export function yearOf({ year, from, to }: Setting): { year?: number } {
  return year === null ? {} : { year: Math.round((from + to) / 2) }
}

/** A heat's own words where they can be read; else those of its class. */
function readHeat({ phrase, words }: FoundHeat, setting: Setting): HeatReading | undefined {
  for (const said of [phrase, words]) {
    try {
      return findHeat(said, yearOf(setting))
    } catch (error) {
      if (!(error instanceof PottleError)) throw error
    }
  }
  return undefined
}

function fixedHeat(celsius: number, oven: CheckedPlan['oven'], phrase: string, span: { start: number; end: number } | null): SheetOven {
  const band = { low: celsius, best: celsius, high: celsius, coverage: 0.9 }
  return {
    start: span?.start ?? null,
    end: span?.end ?? null,
    phrase,
    heat: 'fixed',
    label: 'fixed by the user',
    value: { quantity: 'temperature', unit: 'degC', ...band },
    ...settingFor(band, oven),
    note: null,
    sources: [],
  }
}

function ovenOf(found: FoundHeat, reading: HeatReading, oven: CheckedPlan['oven'], footnotes: Footnotes): SheetOven {
  const { value, heat, claims, steps, notes, relation } = reading
  const { quantity, unit, low, best, high, coverage } = value
  const last = relation ? steps : steps.slice(-1)
  const sources = [...claims.slice(0, claimsCited).flatMap((claim) => claim.sources), ...last.flatMap((step) => step.sources)]
  return {
    start: found.start,
    end: found.end,
    phrase: found.phrase,
    heat: heat.id,
    label: relation?.label ?? heat.label,
    value: { quantity, unit, low, best, high, coverage },
    ...settingFor({ low, best, high, coverage }, oven),
    note: [...notes, ...(relation?.falling ? ['The oven cools while the dish is in it.'] : [])].join(' ') || null,
    sources: footnotes.cite(sources),
  }
}

/** The heats that a receipt asks for, each on the cook's oven; a heat that the user fixed stands for all of them. */
export function ovensOf({ heats }: ReceiptReading, setting: Setting, plan: CheckedPlan, footnotes: Footnotes): readonly SheetOven[] {
  const { oven, fixed } = plan
  if (fixed.oven !== null) return [fixedHeat(fixed.oven, oven, heats[0]?.phrase ?? '', heats[0] ?? null)]
  const seen = new Set<string>()
  return heats.flatMap((found) => {
    const reading = readHeat(found, setting)
    if (!reading || seen.has(reading.heat.id)) return []
    seen.add(reading.heat.id)
    return [ovenOf(found, reading, oven, footnotes)]
  })
}

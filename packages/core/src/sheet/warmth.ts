import { liquidHeat, sugarHeight, thermometerSettings } from '../heat/index.js'
import type { FoundWarmth, ReceiptReading } from '../reading/index.js'
import type { Setting } from '../setting.js'
import type { Footnotes } from './footnotes.js'
import { yearOf } from './oven.js'
import type { SheetWarmth } from './sheet.js'

function warmthOf({ start, end, phrase, of, words }: FoundWarmth, setting: Setting, footnotes: Footnotes): SheetWarmth {
  const year = yearOf(setting).year ?? null
  const { id, label, value, sources, ...rest } = of === 'sugar' ? sugarHeight(words, year) : liquidHeat(words, year)
  const { low, best, high, coverage } = value
  return {
    start,
    end,
    phrase,
    of,
    heat: id,
    label,
    value: { quantity: 'temperature', unit: 'degC', low, best, high, coverage },
    text: thermometerSettings(value)
      .map((setting) => setting.text)
      .join('; '),
    test: 'test' in rest ? rest.test : null,
    sources: footnotes.cite(sources),
  }
}

/** The heights of sugar and the warmths of liquids that a receipt asks for, each once, as a thermometer shows them. */
export function warmthsOf({ warmths }: ReceiptReading, setting: Setting, footnotes: Footnotes): readonly SheetWarmth[] {
  const seen = new Set<string>()
  return warmths
    .map((found) => warmthOf(found, setting, footnotes))
    .filter(({ of, heat, text }) => {
      const key = `${of}.${heat}.${text}`
      return !seen.has(key) && seen.add(key)
    })
}

import { saySetting, sayThing, sayUnmeasured, sayWorking } from './say.js'
import type { Sheet, SheetLine } from './sheet.js'

/** A thing of schema.org, as JSON-LD has it. */
export interface JsonLd {
  readonly [field: string]: string | number | JsonLd | readonly (string | JsonLd)[]
}

function ingredient(line: SheetLine): string {
  const { working, eggs, phrase } = line
  const named = eggs && working ? '' : ` ${sayThing(line)}`
  return `${working ? sayWorking(line) : ''}${named} (“${phrase}”)`.trim()
}

/** Minutes as a duration of ISO 8601. */
function duration(minutes: number): string {
  const whole = Math.round(minutes)
  const hours = Math.floor(whole / 60)
  return `PT${hours > 0 ? `${hours}H` : ''}${whole % 60 > 0 || hours === 0 ? `${whole % 60}M` : ''}`
}

function yieldOf({ dishes, totals }: Sheet): string | undefined {
  if (dishes.text) return dishes.text
  return totals.mass ? `${Math.round(totals.mass.best)} g` : undefined
}

/** The receipt itself, which the sheet is made from. */
function original(sheet: Sheet): JsonLd {
  const { title, text, setting } = sheet
  return { '@type': 'CreativeWork', name: title, text, ...(setting.year === null ? {} : { temporal: String(setting.year) }) }
}

/**
 * A sheet as a schema.org Recipe in JSON-LD: ingredients with their modern amounts and period words, the steps in the words of the text,
 * and the sources that the amounts rest on.
 *
 * @example sheetToJsonLd(workSheet('Take a pint of cream', { year: 1690 })).recipeIngredient   // ['475 ml cream (“a pint of cream”)']
 */
export function sheetToJsonLd(sheet: Sheet): JsonLd {
  const { title, lines, order, bake, sources, dataset } = sheet
  const made = yieldOf(sheet)
  const [first] = bake
  return {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: title,
    description: `A working version of a receipt of ${saySetting(sheet)}: ${sheet.scale.text}.`,
    inLanguage: 'en',
    recipeIngredient: [...lines.map(ingredient), ...sayUnmeasured(sheet).map((thing) => `${thing}, no amount given`)],
    recipeInstructions: order.map(({ number, text }) => ({ '@type': 'HowToStep', position: number, text })),
    ...(made ? { recipeYield: made } : {}),
    ...(first ? { cookTime: duration(first.minutes.best), cookingMethod: 'baking' } : {}),
    isBasedOn: original(sheet),
    citation: sources.map(({ citation }) => citation),
    version: dataset,
  }
}

import { citeShort, type LiquidHeat, liquidHeats, type SugarHeight, sugarHeights } from '@pottle/core'
import { figure } from '../../parts/figures.js'
import { type Article, type Finding, type Shelf, shelf } from '../article.js'

const fahrenheit = (celsius: number): number => Math.round((celsius * 9) / 5 + 32)

/** `102 °C (215 °F)`: sugar and liquids are tried with a thermometer, to the degree. */
const degrees = (celsius: number): string => `${Math.round(celsius)}\u00a0°C (${fahrenheit(celsius)}\u00a0°F)`

function findingOf({ label, value, grade, checked, sources }: SugarHeight | LiquidHeat): Finding {
  return {
    label,
    best: degrees(value.best),
    ends: `${figure(Math.round(value.low))} to ${figure(Math.round(value.high))}\u00a0°C`,
    years: null,
    place: null,
    things: null,
    grade,
    checked,
    sources: sources.map(citeShort),
  }
}

type Named = { readonly words: string; readonly years?: readonly [number, number] | null }

/** The words, each once, with the years that they are confined to. */
function wordsOf(names: readonly Named[], label: string): readonly string[] {
  const words = names
    .filter(({ words: one }) => one !== label)
    .map(({ words: one, years }) => (years ? `${one} (${years[0]} to ${years[1]})` : one))
  return [...new Set(words)]
}

/** What a book prints, where one does: the figure above is the tables' own. */
const printedIn = (low: number, high: number, year: number, source: string): string =>
  `${low === high ? low : `${low} to ${high}`}\u00a0°F is printed in ${year}: ${source}.`

function sugar(height: SugarHeight): Article {
  const { id, label, value, names, test, note, printed } = height
  const book = printed && printedIn(printed.degF, printed.degF, printed.year, printed.source)
  return {
    id,
    address: `/heats/sugar/${id}`,
    label,
    names: wordsOf(names, label),
    comes: degrees(value.best),
    findings: [{ ...findingOf(height), label: test, note: [note, book].filter(Boolean).join(' ') || undefined }],
  }
}

function liquid(heat: LiquidHeat): Article {
  const { id, label, value, printed, notes } = heat
  const books = printed.map(({ low, high, year, source, note }) => [printedIn(low, high, year, source), note].filter(Boolean).join(' '))
  return {
    id,
    address: `/heats/liquids/${id}`,
    label,
    names: [],
    comes: degrees(value.best),
    findings: [{ ...findingOf(heat), note: [...notes, ...books].join(' ') || undefined }],
  }
}

export const sugarShelf: Shelf = shelf(
  {
    address: '/heats/sugar',
    title: 'Heights of sugar',
    about: 'How far a syrup is boiled, from the small thread to caramel, and how a confectioner tried it.',
    says: 'How hot it is',
    column: 'At sea level',
  },
  () => sugarHeights().map(sugar),
)

export const liquidShelf: Shelf = shelf(
  {
    address: '/heats/liquids',
    title: 'Heats of liquids',
    about: 'Blood-warm, new-milk warm, scalding, and what lies between.',
    says: 'How hot it is',
    column: 'At sea level',
  },
  () => liquidHeats().map(liquid),
)

import { type CatalogueMeasure, type CatalogueSense, dataset } from '@pottle/core'
import { hang, wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { sayBest } from './amount.js'
import { attested, heading, indented, joined, section } from './parts.js'
import { labelOfPlace } from './place.js'

const many = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** The names of measures by their kinds. */
export function showMeasures(measures: readonly CatalogueMeasure[], page: Page): string {
  const kinds = [...new Set(measures.map(({ kind }) => kind))]
  const named = (kind: string): string =>
    measures
      .filter((one) => one.kind === kind)
      .map(({ label }) => label.replaceAll(' ', '\u00a0'))
      .join(', ')
  return joined([
    ...heading(many(measures.length, 'measure'), `tables ${dataset}`, page),
    ...kinds.flatMap((kind) => section(`By ${kind}`, indented(named(kind), page), page)),
    '',
    ...wrap('pottle measures NAME describes one.', page.width).map(page.quiet),
  ])
}

const years = (span: readonly [number, number] | null): string => (span ? `${span[0]} to ${span[1]}` : 'any year')

function senseLines(
  { label, value, unit, place, things, grade, checked, sources, ...sense }: CatalogueSense,
  page: Page,
): readonly string[] {
  const when = [years(sense.years), place === null ? '' : labelOfPlace(place), things ? `of ${things.join(', ')}` : ''].filter(Boolean)
  const said = attested({ grade, checked, sources: [...new Set(sources)] }, true)
  return [
    ...hang('  ', `${label}: ${sayBest({ low: value, best: value, high: value, unit })}`, page.width),
    ...hang('      ', when.join('; '), page.width),
    ...hang('      ', said, page.width).map(page.quiet),
  ]
}

/** One measure with everything that it meant, by date and place. */
export function showMeasure({ label, kind, names, senses }: CatalogueMeasure, page: Page): string {
  return joined([
    ...heading(label, `a measure of ${kind}`, page),
    ...section('Also written', names.length > 0 ? indented(names.join(', '), page) : [], page),
    ...section(
      `What it was: ${many(senses.length, 'sense')}`,
      senses.flatMap((sense) => senseLines(sense, page)),
      page,
    ),
    '',
    ...wrap(`Tables ${dataset}.`, page.width).map(page.quiet),
  ])
}

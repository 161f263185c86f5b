import { type ComparisonForm, type ComparisonRow, comparisons, eggs, type Spread } from '@pottle/core/tables'
import { figure } from '../../parts/figures.js'
import { type Article, attestation, type Finding, type Shelf, shelf, sizeOf } from '../article.js'

const birds = new Map(eggs.map(({ id, label }) => [id, label]))

const ends = ({ low, high }: Spread): string => `${figure(low)} to ${figure(high)}`

function sizeOfForm({ length, width, bird, mass }: ComparisonForm): Pick<Finding, 'best' | 'ends' | 'computed'> {
  if (bird) return { best: `as a ${birds.get(bird) ?? bird}`, computed: `/measures/eggs/${bird}` }
  if (length && width)
    return { best: `${figure(length.best)} by ${figure(width.best)}\u00a0mm`, ends: `${ends(length)} by ${ends(width)}\u00a0mm` }
  return sizeOf(mass!, 'mass')
}

function findingOf(form: ComparisonForm): Finding {
  const { id, label, things = null } = form
  return { id, label, ...sizeOfForm(form), ...attestation(form), things }
}

const at = '/measures/sizes'

function articleOf({ id, label, names, forms }: ComparisonRow): Article {
  const findings = forms.map(findingOf)
  const comes = [...new Set(findings.map(({ best }) => best))].join('; ')
  return {
    id,
    address: `${at}/${id}`,
    label,
    names,
    comes,
    asks: [`butter the size of ${label.split(',')[0]}`, `butter the size of ${names[0] ?? label}`],
    findings,
  }
}

export const comparisonShelf: Shelf = shelf(
  { address: at, title: 'The bigness of things', about: 'A walnut, a nutmeg, a ball: as long and as broad as they commonly are.' },
  () => comparisons.map(articleOf),
)

import { type CoinIssueRow, type CoinRow, coins } from '@pottle/core/tables'
import { figure } from '../../parts/figures.js'
import { type Article, attestation, type Finding, rangeOf, type Shelf, shelf } from '../article.js'

function findingOf({ id, label, diameter, mass, ...row }: CoinIssueRow): Finding {
  const [across, weight] = [diameter, mass].map(({ low, high }) => `${figure(low)} to ${figure(high)}`)
  return {
    id,
    label,
    best: `${figure(diameter.best)}\u00a0mm across, ${figure(mass.best)}\u00a0g`,
    ends: `${across}\u00a0mm, ${weight}\u00a0g`,
    ...attestation(row),
    things: null,
  }
}

const at = '/measures/coins'

function articleOf({ id, label, names, issues }: CoinRow): Article {
  return {
    id,
    address: `${at}/${id}`,
    label,
    names,
    comes: rangeOf(
      issues.map(({ diameter }) => diameter.best),
      'length',
    ),
    asks: [`as much mace as will lie on a ${names[0] ?? label}`],
    findings: issues.map(findingOf),
  }
}

export const coinShelf: Shelf = shelf(
  {
    address: at,
    title: 'Coins',
    about: 'As much as will lie on a sixpence, or as thick as a crown: each coin as it was in the hands of its time.',
    column: 'Across',
  },
  () => coins.map(articleOf),
)

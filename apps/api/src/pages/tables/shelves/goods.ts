import { citeShort } from '@pottle/core'
import { type GoodRow, goods, type Spread } from '@pottle/core/tables'
import { figure } from '../../parts/figures.js'
import { type Article, attestation, type Finding, type Shelf, shelf } from '../article.js'

/** What a thing stands under: the first of its classes that has a heading. */
const headings: readonly (readonly [kind: string, heading: string])[] = [
  ['egg', 'Eggs'],
  ['dairy', 'Milk, cream, butter and cheese'],
  ['wine', 'Wine, ale and spirits'],
  ['spirit', 'Wine, ale and spirits'],
  ['ale', 'Wine, ale and spirits'],
  ['beer', 'Wine, ale and spirits'],
  ['cider', 'Wine, ale and spirits'],
  ['mead', 'Wine, ale and spirits'],
  ['spice', 'Spices'],
  ['herb', 'Herbs'],
  ['nut', 'Nuts'],
  ['fruit', 'Fruit'],
  ['vegetable', 'Vegetables'],
  ['meat', 'Meat'],
  ['fish', 'Fish'],
  ['crumb', 'Bread'],
  ['bread', 'Bread'],
  ['sweet', 'Sugar and sweets'],
  ['meal', 'Meal and flour'],
  ['corn', 'Corn and pulse'],
  ['fat', 'Fats and oils'],
  ['tallow', 'Fats and oils'],
  ['drug', 'Drugs'],
  ['liquid', 'Other liquids'],
]

const headingFor = ({ classes }: GoodRow): string => headings.find(([kind]) => classes.includes(kind))?.[1] ?? 'Other things'

/** Ends that are the same to three figures tell nothing. */
function inGrams({ low, best, high }: Spread): Pick<Finding, 'best' | 'ends'> {
  const [from, to] = [figure(low), figure(high)]
  return { best: figure(best), ends: from === to ? undefined : `${from} to ${to}` }
}

function findingsOf({ label, density, printed = [], ...row }: GoodRow): readonly Finding[] {
  const own = density ? [{ label, ...inGrams(density), ...attestation(row), things: null }] : []
  const books = printed.map((one) => ({
    label: 'as books of the time print it',
    best: figure(one.density),
    ...attestation(one),
    note: [one.note, one.fault && `Not used: ${one.fault}.`].filter(Boolean).join(' ') || undefined,
    things: null,
  }))
  return [...own, ...books]
}

/** A density, where there is one, is in the row itself; else the row only names the thing. */
function articleOf(row: GoodRow): Article {
  const { id, label, names, density, source } = row
  const findings = findingsOf(row)
  const silent: Finding = { label, best: 'no density', ...attestation(row), sources: source.map(citeShort), things: null }
  return {
    id,
    address: `/goods/${id}`,
    label,
    names,
    comes: density ? figure(density.best) : '',
    asks: [`a ${density ? 'pint' : 'pound'} of ${label.split(',')[0]}`],
    group: headingFor(row),
    findings: findings.length > 0 ? findings : [silent],
  }
}

function inOrder(): readonly Article[] {
  const order = [...new Set(headings.map(([, heading]) => heading)), 'Other things']
  const articles = goods.map(articleOf)
  return order.flatMap((heading) => articles.filter(({ group }) => group === heading))
}

export const goodsShelf: Shelf = shelf(
  {
    address: '/goods',
    title: 'Things measured',
    about: 'How heavy a thing is as a kitchen fills a measure with it: grams to a millilitre.',
    says: 'How heavy it is',
    column: 'g to a ml',
  },
  inOrder,
)

import type { Step } from '../cite/index.js'
import { type Citation, type Grade, heatWitnesses, ovenTests } from '../tables/index.js'
import { claimsOf, type Ends, votes, wideningFor } from './consensus.js'
import { tidy } from './degrees.js'
import type { Found } from './found.js'
import { coreOfHeat, heatRow } from './scale.js'

const order: readonly Grade[] = ['statute', 'standard', 'measured', 'handbook', 'scholarship', 'practice', 'judgement']

/** The weakest grade of a derivation: no chain is stronger. */
export function weakestOf(steps: readonly { readonly grade: Grade }[]): Grade {
  return order[Math.max(...steps.map(({ grade }) => order.indexOf(grade)))]!
}

const distinct = (citations: readonly Citation[]): readonly Citation[] => [
  ...new Map(citations.map((citation) => [`${citation.id}|${citation.at ?? ''}`, citation])).values(),
]

const degrees = ({ low, high }: Ends): string => (low === high ? `${tidy(low)} degF` : `${tidy(low)} to ${tidy(high)} degF`)

/** How the words led to the heat. */
function namingStep({ heat, relation, goods, via }: Found): Step {
  if (relation)
    return {
      text: relation.label,
      factor: degrees(relation.degF),
      grade: relation.grade,
      checked: relation.checked,
      sources: relation.source,
    }
  if (goods)
    return {
      text: `by the goods: ${goods.label}`,
      factor: `${goods.degF.join(' to ')} degF`,
      grade: 'judgement',
      checked: goods.checked,
      sources: goods.source,
    }
  if (via === 'degrees') return { text: 'the phrase states the temperature', factor: '1', grade: 'standard', checked: 'none', sources: [] }
  if (via === 'test')
    return {
      text: `a test that stands for a ${heatRow(heat).label} oven`,
      factor: `rank ${heatRow(heat).rank}`,
      grade: 'judgement',
      checked: 'none',
      sources: distinct(ovenTests.filter((row) => row.heat === heat).flatMap(({ source }) => source)),
    }
  const seen = heatWitnesses.filter((row) => row.heat === heat)
  const sources = distinct(seen.flatMap(({ source }) => source))
  const { label, rank, source, grade, checked } = heatRow(heat)
  const text = `the words name the ${label} oven, ${rank} on the scale of 0 to 11`
  return sources.length > 0
    ? { text, factor: `rank ${rank}`, grade: 'handbook', checked: 'read', sources }
    : { text, factor: `rank ${rank}`, grade, checked, sources: source }
}

function degreeSteps({ heat, via, relation, core: { best } }: Found, year: number | null): readonly Step[] {
  if (relation || via === 'goods' || via === 'degrees' || (via === 'test' && best !== undefined)) return []
  const row = heatRow(heat)
  const core = coreOfHeat(heat)
  const by = wideningFor(year)
  const voting = claimsOf(heat).filter(votes)
  const consensus: Step = core.byVote
    ? {
        text: `the middle of ${voting.length} claims that vote`,
        factor: degrees(core),
        grade: 'handbook',
        checked: 'read',
        sources: distinct(voting.flatMap(({ source }) => source)),
      }
    : {
        text: 'too few books vote; ends set by the editors beside the claims',
        factor: degrees(core),
        grade: row.grade,
        checked: row.checked,
        sources: distinct([...row.source, ...voting.flatMap(({ source }) => source)]),
      }
  if (by === 0) return [consensus]
  const when = year === null ? 'words without a year' : `the words of ${year}`
  return [
    consensus,
    {
      text: `moved out to either side for ${when}`,
      factor: `${by} degF`,
      grade: 'judgement',
      checked: 'none',
      sources: [{ id: 'pottle-judgement' }],
    },
  ]
}

/** The links from the words to the degrees. */
export function stepsOf(found: Found, year: number | null): readonly Step[] {
  return [namingStep(found), ...degreeSteps(found, year)]
}

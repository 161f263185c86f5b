import type { HeatReading } from '@pottle/core'
import type { Mark } from '../parts/BandPicture.js'
import { letterOf } from '../parts/letters.js'
import { sayGrade, sourceAddress } from '../parts/sources.js'

type Claim = HeatReading['claims'][number]

const toCelsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9

/** More books than this crowd the picture; the table has them all. */
const mostDrawn = 9

/** The books' own figures as marks of a picture, in degC; those that vote for the ends are drawn heavier. */
export function claimMarks(claims: readonly Claim[]): readonly Mark[] {
  return claims.slice(0, mostDrawn).map(({ duty, year, low, high, unit, votes }, i) => {
    const [from, to] = [low, high ?? low].map((value) => (unit === 'degF' ? toCelsius(value) : value)) as [number, number]
    return { letter: letterOf(i), label: `${duty}, ${year}`, low: from, best: (from + to) / 2, high: to, share: votes ? 1 : 0 }
  })
}

const signs = { degC: '°C', degF: '°F' } as const

function printed({ low, high, unit }: Claim): string {
  const sign = signs[unit]
  if (high === null) return `${low} ${sign} and more`
  return low === high ? `${low} ${sign}` : `${low} to ${high} ${sign}`
}

/** What dated books print. */
export function Claims({ claims }: { claims: readonly Claim[] }) {
  return (
    <table class="ruled stack">
      <thead>
        <tr>
          <th scope="col">The book’s case</th>
          <th scope="col" class="figure">
            Prints
          </th>
          <th scope="col">Year and source</th>
        </tr>
      </thead>
      <tbody>
        {claims.map((claim, i) => (
          <tr>
            <th scope="row">
              {i < mostDrawn && <span class="letter">{letterOf(i)}</span>}
              <span>{claim.duty}</span>
              {!claim.votes && <span class="quiet"> (no vote)</span>}
            </th>
            <td class="figure">{printed(claim)}</td>
            <td>
              {claim.year}, <a href={sourceAddress(claim.sources[0]!.id)}>{claim.source}</a>
              <span class="quiet small"> {sayGrade(claim.grade, claim.checked)}</span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** How cooks without a thermometer tried an oven for it. */
export function Tests({ tests }: { tests: HeatReading['tests'] }) {
  return (
    <>
      <ul class="plain">
        {tests.map(({ observation, meaning, year, source, sources, degF }) => (
          <li>
            {observation}: {meaning}
            {degF && ` (${degF[0] === degF[1] ? degF[0] : degF.join(' to ')} °F)`}.{' '}
            <span class="small quiet">
              {year}, <a href={sourceAddress(sources[0]!.id)}>{source}</a>
            </span>
          </li>
        ))}
      </ul>
      <p class="small">An oven thermometer replaces these tests. Never try an oven with the bare hand or with burning paper.</p>
    </>
  )
}

/** What dated books baked at it. */
export function Goods({ goods }: { goods: HeatReading['goods'] }) {
  return (
    <ul class="plain">
      {goods.map(({ phrase, goods: baked, year, source, sources }) => (
        <li>
          <span class="words">{phrase}</span>: {baked}.{' '}
          <span class="small quiet">
            {year}, <a href={sourceAddress(sources[0]!.id)}>{source}</a>
          </span>
        </li>
      ))}
    </ul>
  )
}

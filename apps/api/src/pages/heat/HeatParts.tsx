import type { Band, HeatReading } from '@pottle/core'
import { Entry } from '../frame/index.js'
import { BandPicture } from '../parts/BandPicture.js'
import { Claims, claimMarks, Goods, Tests } from './Evidence.js'
import { dialsFor } from './read.js'

/** What to set the oven to, one dial beside another. */
export function Dials({ band, modern }: { band: Band; modern: HeatReading['modern'] }) {
  return (
    <dl class="settings">
      {dialsFor(band, modern).map(({ oven, set, ends }) => (
        <div>
          <dt>{oven}</dt>
          <dd>
            {set}
            {ends && <small>{ends}</small>}
          </dd>
        </div>
      ))}
    </dl>
  )
}

/** Told to the nearest five, as a dial is set. */
const degrees = { size: 1, name: '°C', step: 5 }

/** The picture, and under it the dated books that it rests on. */
export function HeatEvidence({
  name,
  band,
  claims,
  tests,
  goods,
}: { name: string; band: Band } & Pick<HeatReading, 'claims' | 'tests' | 'goods'>) {
  return (
    <>
      <Entry
        title="How sure"
        about={
          <p>
            The hill stands where the true heat probably lies, the heavy rule under it holds nine times in ten. Each letter is what one book
            prints; bold rules have a vote.
          </p>
        }
      >
        <BandPicture
          id="band"
          title={`Where the heat of ${name} probably lies`}
          value={band}
          marks={claimMarks(claims)}
          peaks={[{ ...band, share: 1 }]}
          scale={degrees}
        />
        {claims.length > 0 && <Claims claims={claims} />}
      </Entry>
      {tests.length > 0 && (
        <Entry title="How a cook tried it" about={<p>Without a thermometer.</p>}>
          <Tests tests={tests} />
        </Entry>
      )}
      {goods.length > 0 && (
        <Entry title="What was baked at it">
          <Goods goods={goods} />
        </Entry>
      )}
    </>
  )
}

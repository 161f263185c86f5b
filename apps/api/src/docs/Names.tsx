import { Entry } from '../pages/frame/index.js'
import { nameLists } from './nameLists.js'

/** Every name that a request may give and no route lists. */
export function Names() {
  return (
    <Entry id="names" title="Names" about={<p>What requests call things by.</p>}>
      <p>
        Measures, their senses and the standards that they go by are listed by <a href="#listMeasures">/v1/measures</a>, heats by{' '}
        <a href="#readOvenHeat">/v1/oven-heats</a>, <a href="#readSugarHeight">/v1/sugar-heights</a> and{' '}
        <a href="#readLiquidHeat">/v1/liquid-heats</a>, sources by <a href="#listSources">/v1/sources</a>. A release may add names; those
        that there are stay.
      </p>
      {nameLists.map(({ title, fields, names }) => (
        <details>
          <summary>
            {title}: {names.length}, as{' '}
            {fields.map((field, i) => (
              <>
                {i === 0 ? '' : ', '}
                <code>{field}</code>
              </>
            ))}
          </summary>
          <ul class="plain">
            {names.map(({ id, label }) => (
              <li>
                <code>{id}</code>: {label}
              </li>
            ))}
          </ul>
        </details>
      ))}
    </Entry>
  )
}

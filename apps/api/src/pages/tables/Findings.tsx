import { letterOf } from '../parts/letters.js'
import { placeLabel } from '../parts/places.js'
import { ShortSources, sayGrade } from '../parts/sources.js'
import { YearsPicture } from '../parts/YearsPicture.js'
import type { Article, Finding } from './article.js'

/** The years that the tables cover. */
const whole = [1266, 1914] as const

const yearsOf = ({ years }: Finding): string => {
  if (!years) return 'at all times'
  return years[0] === years[1] ? String(years[0]) : `${years[0]}–${years[1]}`
}

/** Where and for what it holds, where it does not everywhere and for all. */
const confined = ({ place, things }: Finding): string =>
  [place && placeLabel(place), things && `for ${things.join(', ').replaceAll('-', ' ')}`].filter(Boolean).join('; ')

function Row({ finding, letter, dated }: { finding: Finding; letter: string | undefined; dated: boolean }) {
  const { id, label, best, ends, computed, note, grade, checked, sources } = finding
  const where = confined(finding)
  return (
    <tr id={id}>
      <th scope="row">
        {letter && <span class="letter">{letter}</span>}
        <span>{label}</span>
        {where && <span class="small quiet meaning">{where}</span>}
      </th>
      <td class="figure" data-head="Comes to">
        {computed ? <a href={computed}>{best}</a> : best}
        {ends && <span class="small quiet meaning">{ends}</span>}
      </td>
      {dated && (
        <td data-head="Years" class="years">
          {yearsOf(finding)}
        </td>
      )}
      <td data-head="Who says so" class="small">
        <span class="quiet">
          {sayGrade(grade, checked)}
          {sources.length > 0 && ': '}
        </span>
        <ShortSources texts={sources} />
        {note && <span class="meaning">{note}</span>}
      </td>
    </tr>
  )
}

/** When each meaning held, drawn where there is more than one and they are dated. */
function Held({ label, findings }: Article) {
  const reigns = findings.map(({ label: name, years }, i) => {
    const [from, to] = years ?? whole
    return { letter: letterOf(i), label: name, from, to }
  })
  return <YearsPicture id="years" title={`When each meaning of ${label} held`} reigns={reigns} />
}

/** All that the tables say of one article: what it came to, when, where, for what, and who says so. */
export function Findings({ article }: { article: Article }) {
  const { findings } = article
  const dated = findings.some(({ years }) => years !== null)
  const many = findings.length > 1
  return (
    <>
      {dated && many && <Held {...article} />}
      <table class="ruled stack findings">
        <thead>
          <tr>
            <th scope="col">Meaning</th>
            <th scope="col" class="figure">
              Comes to
            </th>
            {dated && <th scope="col">Years</th>}
            <th scope="col">Who says so</th>
          </tr>
        </thead>
        <tbody>
          {findings.map((finding, i) => (
            <Row finding={finding} letter={many ? letterOf(i) : undefined} dated={dated} />
          ))}
        </tbody>
      </table>
    </>
  )
}

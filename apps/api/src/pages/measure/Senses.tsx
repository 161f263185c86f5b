import type { Answer, AnswerSense } from '@pottle/core'
import { type Asked, addressOf } from '../parts/asked.js'
import { between, inScale, sayShare, scaleFor } from '../parts/figures.js'
import { letterOf } from '../parts/letters.js'

function Row({ sense, index, answer, asked }: { sense: AnswerSense; index: number; answer: Answer; asked: Asked }) {
  const scale = scaleFor(answer.value.quantity, sense.best)
  // Two standards may have one name: then the id tells them apart.
  const ambiguous = answer.senses.filter(({ label }) => label === sense.label).length > 1
  return (
    <tr>
      <th scope="row">
        <span class="letter">{letterOf(index)}</span>
        <a href={addressOf('/measure', { ...asked, standard: sense.id })}>{sense.label}</a>
        {ambiguous && <code class="quiet"> {sense.id}</code>}
      </th>
      <td class="figure" data-head="Comes to">
        {inScale(sense.best, scale)}
      </td>
      <td class="figure" data-head="Between">
        {between(sense, scale)}
      </td>
      <td class="figure" data-head="Likelihood">
        {asked.standard ? 'as you asked' : sayShare(sense.likelihood)}
      </td>
    </tr>
  )
}

/** Every meaning that the measure may have had, to choose from. */
export function Senses({ answer, asked }: { answer: Answer; asked: Asked }) {
  return (
    <table class="ruled stack">
      <thead>
        <tr>
          <th scope="col">Meaning</th>
          <th scope="col" class="figure">
            Comes to
          </th>
          <th scope="col" class="figure">
            Between
          </th>
          <th scope="col" class="figure">
            Likelihood
          </th>
        </tr>
      </thead>
      <tbody>
        {answer.senses.map((sense, index) => (
          <Row sense={sense} index={index} answer={answer} asked={asked} />
        ))}
      </tbody>
    </table>
  )
}

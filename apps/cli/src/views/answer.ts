import type { Answer, AnswerSense } from '@pottle/core'
import { wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { chance, sayBest, sayEnds } from './amount.js'
import { bandLines, bandTable, bullets, cautionLines, heading, joined, section, stepLines } from './parts.js'
import { saySetting } from './place.js'

/** Each meaning with its chance; drawn on one scale, so that it is seen how far they lie apart. */
function senseLines(senses: readonly AnswerSense[], page: Page): readonly string[] {
  const alike = senses.every(({ unit }) => unit === senses[0]?.unit)
  return bandTable(
    senses.map((sense) => ({
      key: chance(sense.likelihood),
      band: senses.length > 1 && alike ? sense : null,
      text: `${sense.label}: ${sayBest(sense)} (${sayEnds(sense)})`,
    })),
    page,
  )
}

function reckoning({ label, steps, exact, unit, best }: AnswerSense, page: Page, full: boolean): readonly string[] {
  const digits = exact === null || Number(exact) === best ? [] : [`  Exactly ${exact} ${unit === 'each' ? '' : unit}`.trimEnd()]
  return section(`How ${label} is reckoned`, [...stepLines(steps, page, full), ...digits], page)
}

function allUnits({ modern }: Answer, { width }: Page): readonly string[] {
  return wrap(modern.map(({ text }) => text.replaceAll(' ', '\u00a0')).join('; '), width - 2).map((line) => `  ${line}`)
}

/** An answer for people. `full` adds every unit, the steps of every sense, and the sources in full. */
export function showAnswer(answer: Answer, page: Page, full: boolean): string {
  const { phrase, text, value, senses, notes, cautions, sources, dataset } = answer
  const told = full ? senses : senses.slice(0, 1)
  return joined([
    ...heading(phrase, saySetting(answer.setting), page),
    '',
    ...wrap(text, page.width - 2).map((line) => `  ${page.bold(line)}`),
    ...bandLines(value, page),
    ...section('Worth knowing', bullets(notes, page), page),
    ...section(senses.length > 1 ? 'What it may have meant' : 'What it meant', senseLines(senses, page), page),
    ...told.flatMap((sense) => reckoning(sense, page, full)),
    ...section('Care', cautionLines(cautions, page), page),
    ...(full ? section('In modern units', allUnits(answer, page), page) : []),
    ...(full
      ? section(
          'Sources',
          bullets(
            sources.map(({ citation }) => citation),
            page,
          ),
          page,
        )
      : []),
    '',
    ...wrap(`Tables ${dataset}.${full ? '' : ' --full tells every sense, unit and source.'}`, page.width).map(page.quiet),
  ])
}

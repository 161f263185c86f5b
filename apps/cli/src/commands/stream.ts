import { convert, sayNearest, workSheet } from '@pottle/core'
import { command } from '../command.js'
import { UsageError } from '../fault.js'
import { endOfInput } from '../read-text.js'
import { answerLines } from '../stream/answer-lines.js'
import { write } from '../write.js'
import { settingOptions } from './shared.js'

const largestLine = 1e15

function firstLineFrom(text: string | undefined): number {
  if (text === undefined) return 1
  const number = /^\d{1,15}$/.test(text) ? Number(text) : 0
  if (number >= 1 && number <= largestLine) return number
  throw new UsageError('--first-line', `"${text.slice(0, 40)}" is no number of a line; give a whole number from 1`)
}

/** The fields that an answer may have, as the library makes them. */
const knownFields = (): readonly string[] => [...new Set([...Object.keys(convert('a pint')), ...Object.keys(workSheet('a pint of cream'))])]

function fieldsFrom(text: string | undefined): readonly string[] | null {
  if (text === undefined) return null
  const names = text.split(',').map((name) => name.trim())
  const known = knownFields()
  const unknown = names.find((name) => !known.includes(name))
  if (unknown === undefined) return names
  throw new UsageError('--fields', `no answer has a field "${unknown.slice(0, 40)}"${sayNearest(unknown, known)}`)
}

const hint = `Type one question a line, such as {"phrase": "a pottle of cream", "year": 1690}; ${endOfInput} ends.`

/** `pottle stream < phrases.ndjson > answers.ndjson` */
export const streamCommand = command({
  name: 'stream',
  takes: '',
  summary: 'Answer a stream of questions, a line of JSON for a line of JSON (NDJSON).',
  about: [
    'Reads the standard input. A line with a phrase is converted; a line with the text of a receipt gives its sheet. Beside phrase a line may have year, place, thing, to, coverage and standard; beside text year, place, title, coverage and plan.',
    'Answers come in the order of the questions, one a line; empty lines are passed over, but counted. A line that fails is answered with a problem object (type, title, detail, errors) that has its line number, and the rest goes on. Memory stays flat whatever the length. A process spends its first second on getting ready: give each part some 100,000 lines. GNU parallel ends with the number of parts in which a line failed.',
    'Where the answers go to a file or a pipe, a terminal shows how far it is.',
  ],
  options: {
    ...settingOptions,
    fields: { value: 'NAMES', short: 'f', says: 'Only these fields of each answer, such as phrase,value,text.' },
    'first-line': { value: 'NUMBER', says: 'The number of the first line, where the input is part of a longer file.' },
    json: { says: 'Write errors as JSON too; answers always are.' },
  },
  examples: [
    {
      says: 'Every phrase of a file, taken as words of 1690 where it does not say',
      line: 'pottle stream --year 1690 < phrases.ndjson > answers.ndjson',
    },
    { says: 'The first three answers, in words only', line: 'pottle stream -f phrase,text < phrases.ndjson | head -n 3' },
    {
      says: 'On all cores, by GNU parallel: the same answers, in the same order, with the same line numbers',
      line: "parallel --keep-order --pipe --block 64M -N 100000 'pottle stream --first-line $(({#} * 100000 - 99999))' < phrases.ndjson > answers.ndjson",
    },
  ],
  async run({ words, given, terminal }) {
    if (words.length > 0)
      throw new UsageError(`"${words[0]!.slice(0, 40)}"`, 'the questions are read from the standard input: pottle stream < FILE')
    const { year, place, fields } = given
    const options = { defaults: { year, place }, fields: fieldsFrom(fields), firstLine: firstLineFrom(given['first-line']) }
    if (terminal.stdin.isTTY) await write(terminal.stderr, `${hint}\n`)
    return answerLines(terminal, options)
  },
})

/** An element that asks the API and one that carries the library show the same entry, to the last word. */
import { answerQuestion } from '@pottle/embed/library'
import { apiAddress, entryOfHeat, entryOfLoaf, entryOfMeasure, type Question } from '@pottle/embed/view'
import { expect, test } from 'vitest'
import { ask } from '../api/ask.js'

const readers = { measure: entryOfMeasure, heat: entryOfHeat, loaf: entryOfLoaf }

const questions: readonly Question[] = [
  { kind: 'measure', asked: { phrase: 'a pottle of cream', year: '1690', place: 'london' } },
  { kind: 'measure', asked: { phrase: 'a pottle', thing: 'cream', year: '169X', to: 'g' } },
  { kind: 'measure', asked: { phrase: 'half a pint of ale', standard: 'ale' } },
  { kind: 'measure', asked: { phrase: 'a slack oven', year: '1796' } },
  { kind: 'measure', asked: { phrase: 'half an hour' } },
  { kind: 'heat', asked: { phrase: 'a slack oven', year: '1796' } },
  { kind: 'heat', asked: { phrase: 'as hot as for manchet', year: '1650/1700' } },
  { kind: 'heat', asked: { phrase: 'after the bread is drawn' } },
  { kind: 'loaf', asked: { coin: 'penny', kind: 'white', year: '1680', place: 'london' } },
  { kind: 'loaf', asked: { coin: 'quartern', year: '1830' } },
  { kind: 'loaf', asked: { coin: 'penny', year: '1700/1720' } },
]

test.each(questions)('$kind $asked', async (question) => {
  const { status, body } = await ask(apiAddress('', question))
  expect(status).toBe(200)
  expect(readers[question.kind](body)).toEqual(answerQuestion(question))
})

test.each<Question>([
  { kind: 'measure', asked: { phrase: 'a snood of cream' } },
  { kind: 'heat', asked: { phrase: 'a pound of butter' } },
  { kind: 'loaf', asked: { coin: 'penny' } },
  { kind: 'loaf', asked: { coin: 'penny', year: '1100' } },
])('neither answers $kind $asked', async (question) => {
  expect((await ask(apiAddress('', question))).status).toBeGreaterThanOrEqual(400)
  expect(() => answerQuestion(question)).toThrow()
})

/** Runs every `@example` of the embeds' docstrings: `@example call(…)   // value`. */
import * as core from '@pottle/core'
import * as library from '@pottle/embed/library'
import * as view from '@pottle/embed/view'
import { expect, test } from 'vitest'
import { evaluate, examplesIn, markedIn, unshown } from '../docstrings.js'

const modules = import.meta.glob<Record<string, unknown>>('../../packages/embed/src/{view,library}/*.ts')
const texts = import.meta.glob<string>('../../packages/embed/src/**/*.ts', { query: '?raw', import: 'default', eager: true })

const examples = examplesIn(texts)

/** Figures are bound to their units by spaces that do not break; an example has plain ones. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value).replaceAll('\u00a0', ' '))

test.each(examples)('$call', async ({ file, call, expected }) => {
  const scope = { ...core, ...view, ...library, ...(await modules[file]!()) }
  expect(plain(evaluate(call, scope))).toEqual(evaluate(expected, scope))
})

test('no docstring has an example that is not run', () => {
  expect(examples.length).toBe(markedIn(texts))
})

test('every public function has an example', () => {
  expect(unshown({ ...view, ...library }, examples)).toEqual([])
})

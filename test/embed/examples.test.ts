/** Runs every `@example` of the embeds' docstrings: `@example call(…)   // value`. */
import * as core from '@pottle/core'
import * as library from '@pottle/embed/library'
import * as view from '@pottle/embed/view'
import { expect, test } from 'vitest'

const modules = import.meta.glob<Record<string, unknown>>('../../packages/embed/src/{view,library}/*.ts')
const texts = import.meta.glob<string>('../../packages/embed/src/**/*.ts', { query: '?raw', import: 'default', eager: true })

const line = /@example (.+?)\s{2,}\/\/ (.+)$/gm
const examples = Object.entries(texts).flatMap(([file, text]) =>
  [...text.matchAll(line)].map(([, call, expected]) => ({ file, call: call!, expected: expected! })),
)

/** Figures are bound to their units by spaces that do not break; an example has plain ones. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value).replaceAll('\u00a0', ' '))

test.each(examples)('$call', async ({ file, call, expected }) => {
  const scope = { ...core, ...view, ...library, ...(await modules[file]!()) }
  const evaluate = (code: string): unknown => new Function(...Object.keys(scope), `return (${code})`)(...Object.values(scope))
  expect(plain(evaluate(call))).toEqual(evaluate(expected))
})

test('no docstring has an example that is not run', () => {
  const marked = Object.values(texts).flatMap((text) => text.match(/@example/g) ?? []).length
  expect(examples.length).toBe(marked)
})

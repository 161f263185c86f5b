/**
 * Runs every `@example` of the library's docstrings and compares it with the value that stands behind its `//`.
 *
 * The examples of public functions need the public faces alone, as a reader of the reference has it; those of others may use what stands in
 * their file and in the rooms. An expected value that holds `…` is compared as text, each `…` standing for anything.
 */

import * as tables from '@core/tables'
import * as face from '@pottle/core'
import { afterAll, expect, test } from 'vitest'
import { type Example, evaluate, examplesIn, markedIn, unshown } from '../docstrings.js'

type Module = Record<string, unknown>

const modules = import.meta.glob<Module>(['../../packages/core/src/**/*.ts', '!**/rows/**'])
const doors = import.meta.glob<Module>('../../packages/core/src/*/index.ts', { eager: true })
const texts = import.meta.glob<string>(['../../packages/core/src/**/*.ts', '!**/rows/**'], {
  query: '?raw',
  import: 'default',
  eager: true,
})

const examples = examplesIn(texts)
/** What a reader of the reference can import. */
const open: Module = { ...tables, ...face }
const rooms: Module = Object.assign({}, ...Object.values(doors))

const scopeOf = async ({ file, name }: Example): Promise<Module> =>
  Object.hasOwn(open, name) ? open : { ...rooms, ...open, ...(await modules[file]!()) }

const escapePattern = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

test.each(examples.map((example) => [`${example.file.replace('../../packages/core/src/', '')}: ${example.call}`, example] as const))(
  '%s',
  async (_, example) => {
    const { call, expected } = example
    const scope = await scopeOf(example)
    const result = evaluate(call, scope)
    if (expected.includes('…')) {
      expect(typeof result === 'string' ? `'${result}'` : JSON.stringify(result)).toMatch(
        new RegExp(`^${expected.split('…').map(escapePattern).join('.*')}$`, 's'),
      )
    } else expect(result).toEqual(evaluate(expected, { ...rooms, ...scope }))
  },
)

test('no docstring has an example that is not run', () => {
  expect(examples.length).toBe(markedIn(texts))
})

test('every public function has an example', () => {
  expect(unshown(open, examples)).toEqual([])
})

afterAll(() => console.log(`examples: ${examples.length} in docstrings`))

/**
 * Runs every `@example` of the library's docstrings and compares it with the value that stands behind its `//`.
 *
 * An example is one line, `@example call(…)   // value`. Names come from the file itself, from the public face and from the rooms. An expected
 * value that holds `…` is compared as text, each `…` standing for anything.
 */
import * as face from '@pottle/core'
import { transpile } from 'typescript'
import { afterAll, expect, test } from 'vitest'

type Module = Record<string, unknown>

const modules = import.meta.glob<Module>(['../../packages/core/src/**/*.ts', '!**/rows/**'])
const doors = import.meta.glob<Module>('../../packages/core/src/*/index.ts', { eager: true })
const texts = import.meta.glob<string>(['../../packages/core/src/**/*.ts', '!**/rows/**'], {
  query: '?raw',
  import: 'default',
  eager: true,
})

interface Example {
  readonly file: string
  readonly call: string
  readonly expected: string
}

const rooms: Module = Object.assign({}, ...Object.values(doors))

const line = /^ \* @example (.+?)\s{2,}\/\/ (.+)$/
const examples: Example[] = Object.entries(texts).flatMap(([file, text]) =>
  text
    .split('\n')
    .map((row) => line.exec(row.trimStart().replace(/^\* /, ' * ')))
    .filter((found) => found !== null)
    .map(([, call, expected]) => ({ file: file.replace('../../packages/core/src/', ''), call: call!, expected: expected! })),
)

function evaluate(code: string, names: Module): unknown {
  const plain = transpile(`(${code})`).replace('"use strict";', '').trim()
  return new Function(...Object.keys(names), `return ${plain}`)(...Object.values(names))
}

const escapePattern = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

test.each(examples.map((example) => [`${example.file}: ${example.call}`, example] as const))('%s', async (_, { file, call, expected }) => {
  const own = await modules[`../../packages/core/src/${file}`]!()
  const result = evaluate(call, { ...rooms, ...face, ...own })
  if (expected.includes('…')) {
    expect(typeof result === 'string' ? `'${result}'` : JSON.stringify(result)).toMatch(
      new RegExp(`^${expected.split('…').map(escapePattern).join('.*')}$`, 's'),
    )
  } else expect(result).toEqual(evaluate(expected, rooms))
})

test('no docstring has an example that is not run', () => {
  const marked = Object.values(texts).flatMap((text) => text.match(/@example/g) ?? []).length
  expect(examples.length).toBe(marked)
})

afterAll(() => console.log(`examples: ${examples.length} in docstrings`))

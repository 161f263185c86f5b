/** The `@example`s of docstrings: each is one line, `@example call(…)   // value`. */
import { transpile } from 'typescript'

export interface Example {
  readonly file: string
  /** What the docstring stands above; empty where that is not exported. */
  readonly name: string
  readonly call: string
  readonly expected: string
}

const docstring = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n(?:export (?:default )?(?:async )?(?:function|class|const) (\w+))?/g
const line = /@example (.+?)\s{2,}\/\/ (.+)$/gm

/** Every example of some sources, by the path of the file. */
export function examplesIn(texts: Readonly<Record<string, string>>): readonly Example[] {
  return Object.entries(texts).flatMap(([file, text]) =>
    [...text.matchAll(docstring)].flatMap(([, words, name = '']) =>
      [...words!.matchAll(line)].map(([, call, expected]) => ({ file, name, call: call!, expected: expected! })),
    ),
  )
}

/** How many examples are marked as such, whether they have the form or not. */
export function markedIn(texts: Readonly<Record<string, string>>): number {
  return Object.values(texts).reduce((sum, text) => sum + (text.match(/@example/g)?.length ?? 0), 0)
}

/** The functions of a module that no example shows. */
export function unshown(face: Readonly<Record<string, unknown>>, examples: readonly Example[]): readonly string[] {
  const shown = new Set(examples.map(({ name }) => name))
  return Object.keys(face).filter((name) => typeof face[name] === 'function' && !shown.has(name))
}

/** The value of an expression in TypeScript, in a scope of names. */
export function evaluate(code: string, scope: Readonly<Record<string, unknown>>): unknown {
  const plain = transpile(`(${code})`).replace('"use strict";', '').trim()
  return new Function(...Object.keys(scope), `return ${plain}`)(...Object.values(scope))
}

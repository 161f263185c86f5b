/** Runs every TypeScript block of the README: a line `expression   // value` must come to that value. */
import * as core from '@pottle/core'
import { describe, expect, test } from 'vitest'
import readme from '../../README.md?raw'
import { ask } from '../api/ask.js'

const blocks = (language: string): string[] =>
  [...readme.matchAll(new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``, 'g'))].map(([, code]) => code!)

const checked = /^(\S.*?)\s{2,}\/\/ (.+)$/

/** Turns `expression   // value` into a comparison and drops the imports, whose names are given. */
function runnable(code: string): string {
  return code
    .split('\n')
    .filter((line) => !line.startsWith('import '))
    .map((line) => line.replace(checked, 'expect($1).toEqual($2)'))
    .join('\n')
}

describe('the TypeScript of the README', () => {
  test.each(blocks('ts').map((code) => [code.split('\n').find((line) => line && !line.startsWith('import')), code]))('%s', (_, code) => {
    expect.hasAssertions()
    new Function('expect', ...Object.keys(core), runnable(code!))(expect, ...Object.values(core))
  })
})

describe('the requests of the README', () => {
  const urls = [...readme.matchAll(/curl '?http:\/\/127\.0\.0\.1:3000(\S+?)'?$/gm)].map(([, path]) => path!)
  test.each(urls)('%s', async (path) => {
    expect((await ask(path)).status).toBe(200)
  })

  test('there are some of both', () => {
    expect(blocks('ts').length).toBeGreaterThan(0)
    expect(urls.length).toBeGreaterThan(0)
  })
})

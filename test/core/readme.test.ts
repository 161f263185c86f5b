/**
 * Holds the README to what it describes: its TypeScript runs, and a line `expression   // value` comes to that value; its requests are answered;
 * its receipt is worked as its table says.
 */
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

describe('the receipt of the README', () => {
  const { text, title, year } = core.demoReceipts[0]!
  const { lines } = core.workSheet(text, { year, title })

  test('is quoted as it stands', () => {
    const [quoted] = /^> [\s\S]*?…$/m.exec(readme)!
    const words = quoted.replace(/\s*\n> /g, ' ').slice('> '.length, -' …'.length)
    expect(text.startsWith(words)).toBe(true)
  })

  test('is worked as the table says', () => {
    const rows = [...readme.matchAll(/^\| (.+?) \| (.+?) \| (.+ to .+ (?:g|ml)) \|$/gm)].map((row) => row.slice(1, 4))
    const told = core.sheetToMarkdown(core.workSheet(text, { year, title })).matchAll(/^\| \d+ \| (.+?) \| .+? \| (.+?) \| (.+?) \|/gm)
    expect(rows).toEqual([...told].map(([, off, written, between]) => [written, off, between]))
    expect(rows.length).toBe(lines.length)
  })
})

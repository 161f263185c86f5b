/** What a page has to load. */
import { brotliCompressSync, gzipSync } from 'node:zlib'
import { beforeAll, describe, expect, test } from 'vitest'
import { bundle } from '../../packages/embed/tools/bundle.mjs'

/** The budget of the script that asks the API, in bytes, compressed as the API compresses it. */
const budget = 10_000

describe('the script for other sites', () => {
  let script = ''
  beforeAll(async () => {
    script = await bundle('index.ts')
  })

  test('weighs less than ten kilobytes', () => {
    const [gzip, brotli] = [gzipSync(script).length, brotliCompressSync(script).length]
    console.log(`embed: ${script.length} bytes, ${gzip} in gzip, ${brotli} in brotli`)
    expect(gzip).toBeLessThan(budget)
  })

  test('is one module that loads nothing else', () => {
    expect(script).not.toMatch(/\bimport\s*[("'{]/)
    expect(script).not.toMatch(/\bfrom\s*["']/)
  })

  test('makes no code or markup from text, and no style by attribute, so that strict policies allow it', () => {
    expect(script).not.toMatch(
      /innerHTML|outerHTML|insertAdjacentHTML|\beval\(|new Function|document\.write|createElement\("style"\)|style="/,
    )
  })

  test('carries no table', () => {
    expect(script).not.toContain('nicholson-1912')
  })

  test('is what the API serves', async () => {
    const { script: served } = await import('../../apps/api/src/embed/script.js')
    expect(served === script, 'the served copy is older than its source: npm run build makes it').toBe(true)
  })
})

test('the script with the library carries the tables', async () => {
  const script = await bundle('offline/index.ts')
  console.log(`offline embed: ${script.length} bytes, ${gzipSync(script).length} in gzip`)
  expect(script).toContain('nicholson-1912')
  expect(script).not.toContain('/v1/convert')
}, 20_000)

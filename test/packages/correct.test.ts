/** What the tables promise: a figure is corrected in one file, and everything that is made from it tells the new one. */
import { execFileSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { ask } from '../api/ask.js'
import { describeInBrowser, openBrowser } from '../browser/browser.js'
import { root } from './tarballs.js'

interface Library {
  convert(
    phrase: string,
    options: object,
  ): { senses: { exact: string }[]; value: { best: number }; modern: { unit: string; best: number }[] }
}
interface Worker {
  default: { fetch(request: Request): Promise<Response> }
}

const asked = 'phrase=a+pottle+of+cream&year=1690'
/** Half a wine gallon of 231 cubic inches, and what it comes to once the table says twice as many. */
const [before, after] = [/1\.9\slitres/, /3\.8\slitres/]

let folder = ''
let library: Library
let worker: Worker['default']

/** A copy of the repository that makes its own modules from its own tables. */
function copyRepository(): string {
  const copy = join(mkdtempSync(join(tmpdir(), 'pottle-corrected-')), 'repository')
  const left = /(?:^|[\\/])(?:node_modules|\.git|test|dist|csv)$/
  cpSync(root, copy, { recursive: true, preserveTimestamps: true, filter: (path) => path === root || !left.test(path) })
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'), 'junction')
  return copy
}

function correct(table: string, id: string, change: object): void {
  const file = join(folder, 'data', `${table}.json`)
  const rows = JSON.parse(readFileSync(file, 'utf8')) as { id: string }[]
  expect(rows.some((row) => row.id === id)).toBe(true)
  writeFileSync(file, JSON.stringify(rows.map((row) => (row.id === id ? { ...row, ...change } : row))))
}

const make = (tool: string, ...args: string[]): Buffer => execFileSync(process.execPath, [tool, ...args], { cwd: folder })
const load = (file: string) => import(/* @vite-ignore */ pathToFileURL(join(folder, file)).href)

beforeAll(async () => {
  folder = copyRepository()
  correct('standards', 'gallon.wine', { value: '462 in3' })
  correct('goods', 'cream', { density: { low: 1.9, best: 2, high: 2.1 } })
  make('data/tools/bundle.mjs')
  make('packages/embed/tools/bundle.mjs')
  make('apps/api/tools/make.mjs')
  make('apps/api/tools/edge.mjs', 'worker.mjs')
  const core = join(folder, 'packages/core/src/index.ts')
  await build({ entryPoints: [core], outfile: join(folder, 'library.mjs'), bundle: true, format: 'esm', logLevel: 'error' })
  library = await load('library.mjs')
  worker = (await load('worker.mjs')).default
}, 120_000)

afterAll(() => rmSync(join(folder, '..'), { recursive: true }))

const read = async (path: string): Promise<string> => (await worker.fetch(new Request(`http://localhost${path}`))).text()

test('the library tells it', () => {
  const { senses, value, modern } = library.convert('a pottle of cream', { year: 1690 })
  expect(senses[0]!.exact).toBe('3785.411784')
  expect(modern.find(({ unit }) => unit === 'g')!.best / value.best).toBeCloseTo(2, 1)
})

test('the API tells it', async () => {
  const { senses } = JSON.parse(await read(`/v1/convert?${asked}`))
  expect(senses[0].exact).toBe('3785.411784')
  expect((await ask(`/v1/convert?${asked}`)).body.senses[0].exact).toBe('1892.705892')
})

test.each(['/measure', '/embed/measure', '/embed/measure.svg'])('%s tells it', async (path) => {
  const [old, corrected] = [String((await ask(`${path}?${asked}`)).body), await read(`${path}?${asked}`)]
  expect([before.test(old), after.test(old)]).toEqual([true, false])
  expect([before.test(corrected), after.test(corrected)]).toEqual([false, true])
})

describeInBrowser('in a page of someone else', () => {
  test('the element that carries the library tells it', async () => {
    const content = readFileSync(join(folder, 'packages/embed/dist/pottle-offline.js'), 'utf8')
    const browser = await openBrowser()
    try {
      const page = await browser.newPage()
      await page.setContent('<pottle-measure year="1690">a pottle of cream</pottle-measure>')
      await page.addScriptTag({ type: 'module', content })
      await page.locator('pottle-measure', { hasText: after }).waitFor({ timeout: 10_000 })
    } finally {
      await browser.close()
    }
  }, 60_000)
})

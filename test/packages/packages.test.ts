/** The packages as a stranger meets them: packed, linted, installed into an empty project, and used there in each of the ways that projects have. */
import { execFile } from 'node:child_process'
import { readFileSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { promisify } from 'node:util'
import { gzipSync } from 'node:zlib'
import { type BuildOptions, build } from 'esbuild'
import { publint } from 'publint'
import { formatMessage } from 'publint/utils'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { startWorkerd } from '../api/workerd.js'
import { describeInBrowser, openBrowser } from '../browser/browser.js'
import { compile, ways } from './compile.js'
import { installInto, type Project, writeExamples } from './project.js'
import { folders, names, type PackageName, packAll, root, type Tarball } from './tarballs.js'

const run = promisify(execFile)
const minutes = 60_000

let tarballs: ReadonlyMap<PackageName, Tarball>
let project: Project

beforeAll(() => {
  tarballs = packAll()
  project = installInto(tarballs)
}, 2 * minutes)

afterAll(() => {
  if (tarballs) rmSync(dirname(tarballs.get('@pottle/core')!.path), { recursive: true })
  if (project) rmSync(project.folder, { recursive: true })
})

const manifestOf = (name: PackageName) => JSON.parse(readFileSync(join(root, folders[name], 'package.json'), 'utf8'))

/** What each tarball may hold; all hold package.json, README.md and LICENSE. */
const contents: Readonly<Record<PackageName, RegExp>> = {
  '@pottle/core': /^dist\/.+\.(?:js|d\.ts)$/,
  '@pottle/embed': /^dist\/.+\.(?:js|d\.ts)$/,
  '@pottle/remark': /^dist\/.+\.(?:js|d\.ts)$/,
  '@pottle/cli': /^(?:bin\/pottle\.js|dist\/.+\.js)$/,
  '@pottle/data': /^(?:[\w-]+\.json|csv\/[\w.-]+\.(?:csv|json)|dist\/(?:index\.js|(?:schema\/)?[\w-]+\.d\.ts)|(?:CHANGELOG|unsure)\.md)$/,
}
const always = ['package.json', 'README.md', 'LICENSE']

describe.each(names)('the tarball of %s', (name) => {
  test('holds what a user needs and nothing else', () => {
    const { files, bytes } = tarballs.get(name)!
    console.log(`${name}: ${files.length} files, ${bytes} bytes packed`)
    expect(files).toEqual(expect.arrayContaining(always))
    expect(files.filter((file) => !always.includes(file) && !contents[name].test(file))).toEqual([])
    expect(files.some((file) => contents[name].test(file))).toBe(true)
  })

  test('says what it is, for whom, and under which licence', () => {
    const { version, license, engines, description, private: hidden, repository, homepage } = manifestOf(name)
    expect({ license, node: engines.node }).toEqual({ license: name === '@pottle/data' ? 'CC0-1.0' : 'MIT', node: '>=20.19' })
    expect(version).toMatch(/^\d+\.\d+\.\d+$/)
    expect(description.length).toBeGreaterThan(20)
    expect([hidden, repository, homepage]).toEqual([undefined, undefined, undefined])
    if (license === 'MIT')
      expect(readFileSync(join(root, folders[name], 'LICENSE'), 'utf8')).toBe(readFileSync(join(root, 'LICENSE'), 'utf8'))
  })

  test('has nothing that publint would mend', async () => {
    const { buffer } = new Uint8Array(readFileSync(tarballs.get(name)!.path))
    const { messages, pkg } = await publint({ pack: { tarball: buffer }, level: 'suggestion', strict: true })
    expect(messages.map((message) => formatMessage(message, pkg))).toEqual([])
  })
})

test('core needs decimal.js at run time, and the tables need nothing', () => {
  expect(Object.keys(manifestOf('@pottle/core').dependencies)).toEqual(['decimal.js'])
  expect(manifestOf('@pottle/data').dependencies).toBeUndefined()
})

test(
  'are the types wrong? finds nothing in any package of modules',
  async () => {
    const typed = names.filter((name) => name !== '@pottle/cli')
    const attw = join(root, 'node_modules/@arethetypeswrong/cli/dist/index.js')
    const lint = (name: PackageName) =>
      run(process.execPath, [attw, tarballs.get(name)!.path, '--profile', 'esm-only', '--format', 'ascii', '--no-color']).then(
        () => '',
        (fault: { readonly stdout: string }) => fault.stdout,
      )
    expect(await Promise.all(typed.map(lint))).toEqual(typed.map(() => ''))
  },
  2 * minutes,
)

describe('in TypeScript', () => {
  let examples: string[] = []
  beforeAll(() => {
    examples = writeExamples(project)
  })

  const wrong = {
    'wrong/year.ts': "import { convert } from '@pottle/core'\nconvert('a pint', { year: true })\n",
    'wrong/field.ts': "import { findHeat } from '@pottle/core'\nfindHeat('a slack oven').degrees\n",
    'wrong/row.ts': "import { goods } from '@pottle/data'\ngoods[0]?.densty\n",
    'wrong/json.ts': "import goods from '@pottle/data/goods.json' with { type: 'json' }\ngoods[0]?.densty\n",
    'wrong/room.ts': "import { holds } from '@pottle/core/dist/tables/index.js'\nholds\n",
  }

  test.each(Object.keys(ways) as (keyof typeof ways)[])(
    'every example compiles with %s, and wrong programs are refused',
    (way) => {
      for (const [file, text] of Object.entries(wrong)) project.write(file, text)
      expect(examples.length).toBeGreaterThan(6)
      const complaints = compile(project.folder, [...examples, ...Object.keys(wrong)], way)
      const refused = complaints.map((complaint) => complaint.slice(0, complaint.indexOf(': ', complaint.indexOf(': ') + 1)))
      expect(refused.sort(), complaints.join('\n')).toEqual([
        'wrong/field.ts: TS2339',
        'wrong/json.ts: TS2551',
        'wrong/room.ts: TS2307',
        'wrong/row.ts: TS2551',
        'wrong/year.ts: TS2322',
      ])
    },
    minutes,
  )

  test('every example comes to what its README says', async () => {
    const imports = examples.map((file) => `await import('./out/${file.replace(/\.ts$/, '.js')}')`)
    const same = 'globalThis.same = (found, promised) => { assert.deepEqual(found, promised); count++ }'
    const driver = ["import assert from 'node:assert/strict'", 'let count = 0', same, ...imports, 'console.log(count)', ''].join('\n')
    const { stdout } = await run(process.execPath, [project.write('examples.mjs', driver)])
    expect(Number(stdout)).toBeGreaterThan(12)
  })
})

/** One program for every place: what it answers must be the same to the byte. */
const program = `
import { convert, dataset, findHeat, loafWeight, PottleError, workSheet } from '@pottle/core'
import { standards } from '@pottle/data'

export function answers() {
  let fault
  try { convert('a glorph of cream') } catch (error) { fault = error instanceof PottleError && error.faults }
  return JSON.stringify([
    dataset, convert('a pottle of cream', { year: 1690 }), findHeat('a slack oven', { year: 1796 }), fault,
    loafWeight({ coin: 'penny', kind: 'white', year: 1680 }), standards.find((row) => row.id === 'gallon.wine'),
    workSheet('Take a pint of cream, four eggs and half a pound of sugar; bake it in a quick oven.', { year: 1690 }),
  ])
}
`

async function bundled(entry: string, text: string, options: BuildOptions = {}): Promise<string> {
  const outfile = join(project.folder, 'bundles', entry)
  const entryPoints = [project.write(entry, text)]
  await build({ entryPoints, outfile, bundle: true, minify: true, format: 'esm', target: 'es2022', logLevel: 'error', ...options })
  return outfile
}

describe('the same program', () => {
  let answer = ''
  beforeAll(async () => {
    project.write('program.mjs', program)
    const main = project.write('main.mjs', "import { answers } from './program.mjs'\nconsole.log(answers())\n")
    answer = (await run(process.execPath, [main])).stdout.trim()
  })

  test('may import the elements where there is no page, as a site does that is made on a server', async () => {
    const both = "await import('@pottle/embed')\nawait import('@pottle/embed/offline')\nconsole.log('imported')\n"
    expect((await run(process.execPath, [project.write('server.mjs', both)])).stdout).toBe('imported\n')
  })

  test('answers in Node', () => {
    expect(JSON.parse(answer)).toHaveLength(7)
    expect(answer).toContain('half a wine gallon')
  })

  test(
    'answers on an edge runtime',
    async () => {
      const worker = "import { answers } from './program.mjs'\nexport default { fetch: () => new Response(answers()) }\n"
      const forEdge = { platform: 'browser', conditions: ['workerd', 'worker', 'browser'] } satisfies BuildOptions
      const workerd = await startWorkerd(dirname(await bundled('worker.mjs', worker, forEdge)))
      try {
        const there = await (await fetch(workerd.url)).text()
        expect(there === answer).toBe(true)
      } finally {
        await workerd.stop()
      }
    },
    minutes,
  )

  describeInBrowser('in a browser', () => {
    test(
      'answers there too, and the elements beside it',
      async () => {
        const script = "import '@pottle/embed/offline'\nimport { answers } from './program.mjs'\nglobalThis.answer = answers()\n"
        const page = "<pottle-measure phrase='a pottle of cream' year='1690'>a pottle of cream</pottle-measure>"
        const content = readFileSync(await bundled('browser.mjs', script), 'utf8')
        const browser = await openBrowser()
        try {
          const tab = await browser.newPage()
          await tab.setContent(page)
          await tab.addScriptTag({ type: 'module', content })
          const there = await (await tab.waitForFunction('globalThis.answer')).jsonValue()
          expect(there === answer).toBe(true)
          await tab.locator('pottle-measure', { hasText: /1\.9\slitres/ }).waitFor({ timeout: 10_000 })
        } finally {
          await browser.close()
        }
      },
      minutes,
    )
  })
})

test('the command line is on the path of the project and answers as the library does', async () => {
  const pottle = join(project.folder, 'node_modules/.bin/pottle')
  const { stdout } = await run(pottle, ['convert', 'a pottle of cream', '--year', '1690', '--json'], {
    shell: process.platform === 'win32',
  })
  expect(JSON.parse(stdout).senses[0].exact).toBe('1892.705892')
  expect((await run(pottle, ['--version'])).stdout).toMatch(/^pottle \d+\.\d+\.\d+, tables \d{4}\.\d+\.\d+\n$/)
})

/** Bytes in gzip of a page's script that uses one thing of the library, and the most that it may be. */
const budgets: readonly (readonly [what: string, script: string, most: number])[] = [
  ['the version of the tables', "export { dataset } from '@pottle/core'", 200],
  ['sugar heights', "export { sugarHeight } from '@pottle/core'", 20_000],
  ['oven heats', "export { findHeat } from '@pottle/core'", 40_000],
  ['priced loaves', "export { loafWeight } from '@pottle/core'", 45_000],
  ['one table of the data', "export { standards } from '@pottle/data'", 10_000],
  ['the whole library', "export * from '@pottle/core'", 450_000],
]

describe('a page pays for what it uses', () => {
  const weigh = async (entry: string, script: string): Promise<number> =>
    gzipSync(readFileSync(await bundled(`${entry}.mjs`, `${script}\n`)), { level: 9 }).length

  test.each(budgets)('%s', async (what, script, most) => {
    const bytes = await weigh(what.replaceAll(' ', '-'), script)
    console.log(`${what}: ${bytes} bytes in gzip, at most ${most}`)
    expect(bytes).toBeLessThan(most)
  })

  test('oven heats weigh less than an eighth of the library', async () => {
    const [heats, all] = [await weigh('heats', budgets[2]![1]), await weigh('all', "export * from '@pottle/core'")]
    expect(heats * 8).toBeLessThan(all)
  })
})

/** A client that someone else would write: its types generated from the document, its calls made to a server over a socket. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { createAdaptorServer } from '@hono/node-server'
import { createApp } from '@pottle/api'
import createClient from 'openapi-fetch'
import openapiTS, { astToString } from 'openapi-typescript'
import ts from 'typescript'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { ask } from './ask.js'

const folder = mkdtempSync(join(tmpdir(), 'pottle-client-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** What the compiler says of a program that uses the generated types. */
function faultsOf(program: string): string[] {
  const file = join(folder, 'program.ts')
  writeFileSync(
    file,
    `import createClient from 'openapi-fetch'\nimport type { paths } from './pottle.js'\nconst pottle = createClient<paths, 'application/json' | 'application/problem+json'>({ baseUrl: 'x' })\n${program}`,
  )
  const options: ts.CompilerOptions = {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    types: [],
    paths: {
      'openapi-fetch': [fileURLToPath(new URL('../../node_modules/openapi-fetch/dist/index.d.mts', import.meta.url))],
      'openapi-typescript-helpers': [
        fileURLToPath(new URL('../../node_modules/openapi-typescript-helpers/dist/index.d.mts', import.meta.url)),
      ],
    },
  }
  const diagnostics = ts.getPreEmitDiagnostics(ts.createProgram([file], options))
  return diagnostics.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '))
}

beforeAll(async () => {
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}')
  const { body } = await ask('/openapi.json')
  writeFileSync(join(folder, 'pottle.d.ts'), astToString(await openapiTS(body)))
}, 60_000)

describe('the types of a generated client', () => {
  test('take right calls and know what comes back', { timeout: 60_000 }, () => {
    expect(
      faultsOf(`
        const { data, error } = await pottle.GET('/v1/convert', { params: { query: { phrase: 'a pottle of cream', year: '1690' } } })
        const best: number | undefined = data?.value.best
        const detail: string | undefined = error?.detail
        const one = await pottle.GET('/v1/measures/{id}', { params: { path: { id: 'pottle' } } })
        const years: (number[] | null)[] | undefined = one.data?.senses.map((sense) => sense.years)
        const sheet = await pottle.POST('/v1/sheets', { body: { text: 'a pint of cream', plan: { units: 'us' } } })
        const found = await pottle.POST('/v1/readings', { body: { text: 'a pint of cream' } })
        const start: number | undefined = found.data?.measures[0]?.start
        const working: string | undefined = sheet.data?.lines[0]?.working?.text
        const many = await pottle.POST('/v1/convert', { body: [{ phrase: 'a pint of cream' }] })
        const first = Array.isArray(many.data) ? many.data[0] : undefined
        const text: string | undefined = first && 'senses' in first ? first.text : first?.detail
        const nearest: string[] | undefined = many.error?.nearest
        const loaf = await pottle.GET('/v1/loaves', { params: { query: { year: '1690', crumb: true } } })
        const crumb: number | undefined = loaf.data?.value.best
        export { best, crumb, detail, years, start, working, text, nearest }
      `),
    ).toEqual([])
  })

  test.each([
    ['no phrase', `await pottle.GET('/v1/convert', { params: { query: {} } })`],
    ['an unknown route', `await pottle.GET('/v1/nonesuch')`],
    ['a wrong method', `await pottle.POST('/v1/measures', {})`],
    ['a field of the wrong type', `await pottle.POST('/v1/readings', { body: { text: 7 } })`],
    ['a unit that there is not', `await pottle.POST('/v1/sheets', { body: { text: 'a pint', plan: { units: 'cubits' } } })`],
    ['what is not in the answer', `const { data } = await pottle.GET('/healthz'); data?.weather`],
  ])('refuse %s', { timeout: 60_000 }, (_, program) => {
    expect(faultsOf(`${program}\nexport {}`)).not.toEqual([])
  })
})

describe('a client over a socket', () => {
  const server = createAdaptorServer({ fetch: createApp().fetch })
  beforeAll(() => new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve)))
  afterAll(() => void server.close())

  // biome-ignore lint/suspicious/noExplicitAny: the generated types are tried above, where the compiler runs
  const client = () => createClient<any>({ baseUrl: `http://127.0.0.1:${(server.address() as AddressInfo).port}` })

  test('gets answers and problems', async () => {
    const { data } = await client().GET('/v1/convert', { params: { query: { phrase: 'a pottle of cream', year: '1690' } } })
    expect(data).toMatchObject({ reading: { measure: 'pottle' } })
    const { error, response } = await client().GET('/v1/convert', { params: { query: { phrase: 'a pint of cream', year: '3000' } } })
    expect(response.status).toBe(400)
    expect(error).toMatchObject({ errors: [{ parameter: 'year' }] })
    const sheet = await client().POST('/v1/sheets', { body: { text: 'Take a pint of cream', plan: { units: 'us' } } })
    expect(sheet.data).toMatchObject({ units: 'us' })
  })
})

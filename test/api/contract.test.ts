import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { createApp, routesFor } from '@pottle/api'
import { Validator } from '@seriousme/openapi-schema-validator'
import { expect, test } from 'vitest'
import api from '../../apps/api/package.json' with { type: 'json' }
import { ask, post } from './ask.js'

test('the OpenAPI document is valid OpenAPI 3.1', async () => {
  const { status, body } = await ask('/openapi.json')
  expect(status).toBe(200)
  expect(body.openapi).toMatch(/^3\.1\./)
  expect(await new Validator().validate(body)).toMatchObject({ valid: true })
  expect(body.info.version).toBe(api.version)
})

/** A linter's own words; it asks nobody else, and sends nothing anywhere. */
async function lint(document: object): Promise<{ totals: { errors: number; warnings: number }; problems: readonly { message: string }[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'pottle-lint-'))
  try {
    const file = join(folder, 'openapi.json')
    writeFileSync(file, JSON.stringify(document, null, 2))
    const command = fileURLToPath(new URL('../../node_modules/.bin/redocly', import.meta.url))
    const env = { ...process.env, REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' }
    const run = spawn(command, ['lint', '--extends=recommended', '--format=json', file], {
      env,
      cwd: folder,
      stdio: ['ignore', 'pipe', 'ignore'],
    })
    return JSON.parse(await text(run.stdout))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

test('the OpenAPI document has nothing that a linter warns of', { timeout: 60_000 }, async () => {
  const { body } = await ask('/openapi.json')
  const { totals, problems } = await lint(body)
  expect(problems.map(({ message }) => message)).toEqual([])
  expect(totals).toMatchObject({ errors: 0, warnings: 0 })
  // The linter is awake: it sees a reference that leads nowhere.
  body.paths['/healthz'].get.responses[200].content['application/json'].schema.$ref = '#/components/schemas/Nonesuch'
  expect((await lint(body)).totals.errors).toBeGreaterThan(0)
})

test('every address and method of the app is in the document, but for pages and what pages ask for', async () => {
  const { body } = await ask('/openapi.json')
  for (const { method, path } of routesFor()) expect(body.paths[path][method], path).toBeDefined()
  const kinds = (await ask('/problems')).body.map(({ type }: { type: string }) => type.replace('/problems/', ''))
  const told = JSON.stringify(body.components.responses)
  // These come before any route is reached.
  const unrouted = ['malformed', 'method-not-allowed', 'address-too-long', 'too-many-headers']
  for (const kind of kinds.filter((one: string) => !unrouted.includes(one))) expect(told, kind).toContain(`/problems/${kind}`)
})

test('a request may have no field that the document does not have', async () => {
  const { body } = await ask('/openapi.json')
  for (const name of ['ConvertRequest', 'ReadingRequest', 'SheetRequest', 'Plan', 'Fixed', 'BakePlanRequest', 'BrickOvenRequest'])
    expect(body.components.schemas[name].additionalProperties, name).toBe(false)
})

interface Described {
  readonly description?: string
  readonly $ref?: string
  readonly properties?: Readonly<Record<string, Described>>
  readonly items?: Described
  readonly anyOf?: readonly Described[]
}

/** Fields of which a reader would have to guess what they are: neither described nor of a schema that is. */
function mute({ properties = {}, items, anyOf = [] }: Described, path: string): string[] {
  const fields = Object.entries(properties).map(([name, field]) => [`${path}.${name}`, field] as const)
  const inner = [...fields, ...(items ? [[`${path}[]`, items] as const] : []), ...anyOf.map((one) => [path, one] as const)]
  return [
    ...fields.filter(([, { description, $ref }]) => !description && !$ref).map(([name]) => name),
    ...inner.flatMap(([name, schema]) => mute(schema, name)),
  ]
}

test('every field of every body says what it is', async () => {
  const { body } = await ask('/openapi.json')
  const schemas = Object.entries<Described>(body.components.schemas)
  expect(schemas.length).toBeGreaterThan(40)
  for (const [name, { description }] of schemas) expect(description, name).toMatch(/\S/)
  expect(schemas.flatMap(([name, schema]) => mute(schema, name))).toEqual([])
  const parameters = Object.values<Record<string, { parameters?: Described[] }>>(body.paths).flatMap(({ get }) => get?.parameters ?? [])
  expect(parameters.filter(({ description, $ref }) => !description && !$ref)).toEqual([])
})

test.each(routesFor().map((route) => [`${route.method} ${route.path}`, route] as const))(
  'the example of %s fits the schema it declares',
  async (_, route) => {
    const address = route.path.includes('{') ? route.path.replace(/\{\w+\}/, route.example) : route.path + route.example
    const [media, { schema }] = Object.entries(route.answer.media)[0]!
    const example = Object.values(Object.values(route.body?.media ?? {})[0]?.examples ?? {})[0]
    const reply = route.method === 'post' ? await post(address, example) : await ask(address)
    expect(reply.status).toBe(200)
    expect(reply.headers.get('content-type')).toContain(media)
    const result = schema.safeParse(reply.body)
    expect(result.error?.issues).toBeUndefined()
    // A field that the schema does not name would have been dropped.
    expect(result.data).toEqual(reply.body)
  },
)

test('what is not there is a problem, not a page', async () => {
  for (const path of ['/v1/measures/nonesuch', '/v1/sources/nonesuch', '/v1/nonesuch', '/nonesuch']) {
    const { status, headers, body } = await ask(path)
    expect(status, path).toBe(404)
    expect(headers.get('content-type')).toBe('application/problem+json')
    expect(body.detail).toContain('nonesuch')
  }
})

test('the app can be made more than once', () => {
  expect(createApp()).not.toBe(createApp())
})

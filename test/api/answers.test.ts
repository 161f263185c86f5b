/** Every promise of the OpenAPI document, tried on the app: whoever knows the document alone gets what it says. */
import Ajv from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import { ask } from './ask.js'
import { type OpenAPIObject, operationsOf, type Promised } from './contract/document.js'
import { forms } from './contract/forms.js'
import { say, trialsOf } from './contract/trials.js'

const document: OpenAPIObject = (await ask('/openapi.json')).body
const operations = operationsOf(document)
const trials = operations.flatMap(trialsOf)

// The words that OpenAPI puts beside those of JSON Schema are none of the validator's.
const ajv = new Ajv.default({ strict: false, allErrors: true })

/** What of a value is not as its schema says. */
function faultsOf(schema: object, value: unknown): readonly string[] {
  // References of the document begin at its root.
  ajv.validate({ ...schema, components: document.components }, value)
  return (ajv.errors ?? []).map(({ instancePath, message, params }) => `${instancePath}: ${message} ${JSON.stringify(params)}`)
}

async function expectKept({ status, media, kind, schema, headers }: Promised, response: Response): Promise<void> {
  const text = await response.text()
  expect(response.status, text.slice(0, 500)).toBe(status)
  for (const name of headers) expect(response.headers.get(name), name).toMatch(/\S/)
  if (media === undefined) {
    expect(text).toBe('')
    expect(response.headers.get('content-type')).toBeNull()
    return
  }
  expect(response.headers.get('content-type')).toBe(media.startsWith('text/') ? `${media}; charset=utf-8` : media)
  expect(Object.keys(forms), 'no test can read it').toContain(media)
  for (const value of await forms[media]!(text)) {
    expect(faultsOf(schema!, value)).toEqual([])
    if (kind && media !== 'text/html') expect(value).toMatchObject({ type: `/problems/${kind}`, status })
  }
}

describe('what the document promises', () => {
  test('is tried to the last media type and kind of problem', () => {
    const tried = new Set(trials.map(({ promised }) => promised))
    const untried = operations.flatMap((operation) =>
      operation.promises.filter((promised) => !tried.has(promised)).map((promised) => say(operation, promised)),
    )
    // A fault of ours is provoked where a host can have one; all routes tell it in one place.
    expect(untried.filter((one) => !/ 500 internal /.test(one) || one.includes(' /readyz '))).toEqual([])
    expect(operations.length).toBeGreaterThan(20)
    expect(trials.length).toBeGreaterThan(180)
  })

  test('has an example of every parameter and of every body', () => {
    const lacking = operations.flatMap(({ method, path, parameters, reads }) => [
      ...parameters.filter((one) => one.in !== 'header' && one.example === undefined).map(({ name }) => `${method} ${path} ${name}`),
      ...Object.entries(reads).flatMap(([type, { examples }]) => (examples ? [] : [`${method} ${path} ${type}`])),
    ])
    expect(lacking).toEqual([])
  })

  test.each(trials.map((trial) => [trial.says, trial] as const))('%s', async (_, { promised, ask: asked }) => {
    await expectKept(promised, await asked())
  })
})

test('lines are answered with lines, and with nothing else', async () => {
  const headers = { 'content-type': 'application/x-ndjson', accept: 'application/json' }
  const { status, body } = await ask('/v1/convert', { method: 'POST', headers, body: '{"phrase":"a pint of cream"}\n' })
  expect([status, body.errors[0].detail]).toEqual([406, 'ask for one of application/x-ndjson'])
})

describe.each(Object.keys(document.paths!))('%s', (path) => {
  const own = operations.filter((operation) => operation.path === path).map(({ method }) => method)
  const takes = [...own.flatMap((method) => (method === 'GET' ? ['GET', 'HEAD'] : [method])), 'OPTIONS']
  const others = ['GET', 'POST', 'PUT', 'PATCH', 'DELETE'].filter((method) => !takes.includes(method))

  test(`takes ${takes.join(', ')}, and says so`, async () => {
    expect((await ask(path, { method: 'OPTIONS' })).headers.get('allow')?.split(', ').sort()).toEqual([...takes].sort())
  })

  test.each(others)('refuses %s with a problem', async (method) => {
    const { status, headers, body } = await ask(path, { method })
    expect(status).toBe(405)
    expect(headers.get('content-type')).toBe('application/problem+json')
    expect(headers.get('allow')?.split(', ').sort()).toEqual([...takes].sort())
    expect(faultsOf({ $ref: '#/components/schemas/Problem' }, body)).toEqual([])
  })
})

/** The ranges that the document gives in words: their ends are taken, and what lies beyond is refused by the name of its field. */
import { describe, expect, test } from 'vitest'
import { ask, post, type Reply } from './ask.js'

const { components, paths } = (await ask('/openapi.json')).body

const text = 'Take a pottle of cream and vj eggs. Bake it in a slack oven half an hour.'
const sheet = (plan: object): Promise<Reply> => post('/v1/sheets', { text, plan })
const dish = (fields: object): Promise<Reply> => sheet({ dish: { shape: 'mould', diameter: 200, depth: 60, ...fields } })
const plan = (size: object): Promise<Reply> =>
  post('/v1/bake-plans', { food: 'bread', from: { shape: 'loaf', size, minutes: 40, celsius: 200 }, to: { shape: 'loaf', size } })

const field = (schema: string, name: string): string => components.schemas[schema].properties[name].description
const parameter = (path: string, name: string): string =>
  paths[path].get.parameters
    .map((one: { $ref?: string }) => (one.$ref ? components.parameters[one.$ref.split('/').at(-1)!] : one))
    .find((one: { name: string }) => one.name === name).description

const figure = (words: string): number => Number(words.replaceAll(',', ''))

/** The ends that a description names: *from 5 to 250*, *up to 1,000*. */
function endsIn(description: string, least: number): readonly [number, number] {
  const [, from, to] = /from ([\d.,]*\d) to ([\d.,]*\d)/.exec(description) ?? [null, null, /up to ([\d,]*\d)/.exec(description)?.[1]]
  return [from ? figure(from) : least, figure(to!)]
}

interface Range {
  readonly of: string
  readonly said: string
  /** Where the words give no lower end; a range may have none at all. */
  readonly least?: number
  readonly ask: (value: number) => Promise<Reply>
}

const ranges: readonly Range[] = [
  { of: 'year', said: parameter('/v1/convert', 'year'), ask: (year) => ask(`/v1/convert?phrase=a+pound&year=${year}`) },
  { of: 'coverage', said: parameter('/v1/convert', 'coverage'), ask: (share) => ask(`/v1/convert?phrase=a+pound&coverage=${share}`) },
  { of: 'scale', said: field('Plan', 'scale'), ask: (scale) => sheet({ scale }) },
  { of: 'guests', said: field('Plan', 'guests'), least: 1, ask: (guests) => sheet({ guests, serves: 1000 }) },
  { of: 'serves', said: field('Plan', 'serves'), least: 1, ask: (serves) => sheet({ guests: serves, serves }) },
  { of: 'egg', said: field('Fixed', 'egg'), ask: (egg) => sheet({ fixed: { egg } }) },
  { of: 'densities', said: field('Fixed', 'densities'), ask: (cream) => sheet({ fixed: { densities: { cream } } }) },
  { of: 'oven', said: field('Fixed', 'oven'), ask: (oven) => sheet({ fixed: { oven } }) },
  { of: 'depth of a dish', said: field('Dish', 'depth'), ask: (depth) => dish({ depth }) },
  { of: 'volume of a mould', said: field('Dish', 'volume'), ask: (volume) => sheet({ scale: 1, dish: { shape: 'mould', volume } }) },
  { of: 'fill of a dish', said: field('Dish', 'fill'), ask: (fill) => dish({ fill }) },
  { of: 'count of dishes', said: field('Dish', 'count'), least: 1, ask: (count) => dish({ count }) },
  {
    of: 'size of a bake',
    said: components.schemas.BakePlanRequest.properties.to.properties.size.properties.length.description,
    ask: (length) => plan({ length, width: 100, depth: 50 }),
  },
  { of: 'year of a heat', said: field('BrickOvenRequest', 'year'), ask: (year) => post('/v1/brick-oven', { start: 'a slack oven', year }) },
]

/** A request for the value was refused for the value itself. */
const isRefused = ({ status, body }: Reply): boolean => status === 400 && body.errors.length > 0

describe('a range that is told', () => {
  test.each(ranges)('$of: $said', async ({ said, least = Number.NaN, ask }) => {
    const [low, high] = endsIn(said, least)
    const step = (end: number): number => (/whole number|year/i.test(said) ? 1 : end / 1000)
    const ends = [low, high].filter((end) => !Number.isNaN(end))
    const beyond = [low - step(low), high + step(high)].filter((value) => !Number.isNaN(value))
    for (const end of ends) expect([end, isRefused(await ask(end))]).toEqual([end, false])
    for (const value of beyond) expect([value, isRefused(await ask(value))]).toEqual([value, true])
  })

  test.each([
    ['phrase', parameter('/v1/convert', 'phrase'), (length: number) => ask(`/v1/convert?phrase=${'a'.repeat(length)}`)],
    ['text', field('SheetRequest', 'text'), (length: number) => post('/v1/sheets', { text: text.padEnd(length, ' .') })],
    ['title', field('SheetRequest', 'title'), (length: number) => post('/v1/sheets', { text, title: 'x'.repeat(length) })],
  ] as const)('%s: %s', async (_, said, ask) => {
    const most = figure(/at most ([\d,]*\d) characters/.exec(said)![1]!)
    expect(isRefused(await ask(most))).toBe(false)
    expect(isRefused(await ask(most + 1))).toBe(true)
  })
})

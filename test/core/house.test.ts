/** Holds the library to its plan: rooms with one door, imports in one direction, no circle, nothing from outside but decimal.js. */
import { expect, test } from 'vitest'

const prefix = '../../packages/core/src/'
const texts = import.meta.glob<string>(['../../packages/core/src/**/*.ts', '!**/rows/**'], {
  query: '?raw',
  import: 'default',
  eager: true,
})
const files = new Map(Object.entries(texts).map(([path, text]) => [path.slice(prefix.length), text]))

const importsOf = (text: string): string[] =>
  [...text.matchAll(/^(?:import|export)\b[^'"`;]*?\bfrom '([^']+)'/gms)].map(([, from]) => from!)

function resolve(file: string, from: string): string {
  return new URL(from, `file:///${file}`).pathname.slice(1).replace(/\.js$/, '.ts')
}

const roomOf = (file: string): string => (file.includes('/') ? file.slice(0, file.indexOf('/')) : '')

const edges = [...files].flatMap(([file, text]) =>
  importsOf(text)
    .filter((from) => from.startsWith('.'))
    .map((from) => ({ file, to: resolve(file, from) })),
)

test('the whole library is looked at', () => {
  expect(files.size).toBeGreaterThan(100)
  expect(edges.length).toBeGreaterThan(files.size)
})

test('core depends on decimal.js alone', () => {
  const outside = [...files].flatMap(([file, text]) =>
    importsOf(text)
      .filter((from) => !from.startsWith('.') && from !== 'decimal.js')
      .map((from) => `${file} imports ${from}`),
  )
  expect(outside).toEqual([])
})

test('a room is entered by its door', () => {
  const trespasses = edges
    .filter(({ file, to }) => roomOf(to) !== '' && roomOf(to) !== roomOf(file) && !to.endsWith('/index.ts'))
    .map(({ file, to }) => `${file} reaches into ${to}`)
  expect(trespasses).toEqual([])
})

test('rooms do not depend on each other in a circle', () => {
  const rooms = new Map<string, Set<string>>()
  // Files at the top are rooms of their own.
  const place = (file: string): string => roomOf(file) || file
  for (const { file, to } of edges)
    if (place(file) !== place(to)) rooms.set(place(file), (rooms.get(place(file)) ?? new Set()).add(place(to)))
  const circles: string[] = []
  const visit = (room: string, path: readonly string[]): void => {
    if (path.includes(room)) circles.push([...path.slice(path.indexOf(room)), room].join(' → '))
    else if (circles.length === 0) for (const next of rooms.get(room) ?? []) visit(next, [...path, room])
  }
  for (const room of rooms.keys()) visit(room, [])
  expect(circles).toEqual([])
})

test('files within a room do not depend on each other in a circle', () => {
  const next = new Map<string, string[]>()
  for (const { file, to } of edges) next.set(file, [...(next.get(file) ?? []), to])
  const done = new Set<string>()
  const circles: string[] = []
  const visit = (file: string, path: readonly string[]): void => {
    if (path.includes(file)) circles.push([...path.slice(path.indexOf(file)), file].join(' → '))
    if (done.has(file) || path.includes(file)) return
    for (const to of next.get(file) ?? []) visit(to, [...path, file])
    done.add(file)
  }
  for (const file of files.keys()) visit(file, [])
  expect(circles).toEqual([])
})

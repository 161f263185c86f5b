/** Holds the embeds to their plan: rooms with one door, and nothing of a page where there may be none. */
import { expect, test } from 'vitest'

const prefix = '../../packages/embed/src/'
const texts = import.meta.glob<string>('../../packages/embed/src/**/*.ts', { query: '?raw', import: 'default', eager: true })
const files = Object.entries(texts).map(([path, text]) => ({ file: path.slice(prefix.length), text }))
const importsOf = (text: string): string[] =>
  [...text.matchAll(/^(?:import|export)\b[^'"`;]*?\bfrom '([^']+)'/gms)].map(([, from]) => from!)

test('all files are looked at', () => {
  expect(files.length).toBeGreaterThan(20)
})

test('a room is entered by its door', () => {
  const trespasses = files.flatMap(({ file, text }) =>
    importsOf(text)
      .filter((from) => /\/\w+\/(?!index\.js)/.test(from) && from.startsWith('.'))
      .map((from) => `${file}: ${from}`),
  )
  expect(trespasses).toEqual([])
})

test('the view needs neither the library nor a page', () => {
  const view = files.filter(({ file }) => file.startsWith('view/'))
  expect(view.flatMap(({ text }) => importsOf(text)).filter((from) => !from.startsWith('./'))).toEqual([])
  expect(view.filter(({ text }) => /\b(?:document|window|HTMLElement)\b\./.test(text))).toEqual([])
})

test('only the offline door and the library know the library', () => {
  const knowing = files.filter(({ text }) => importsOf(text).some((from) => from === '@pottle/core' || from.includes('library')))
  expect(knowing.map(({ file }) => file).sort()).toEqual(['library/index.ts', 'offline/index.ts'])
})

/** Holds the pictures of the README to what the server answers, and the words beside them to the pictures. */
import { describe, expect, test } from 'vitest'
import asked from '../../apps/api/pictures/asked.json' with { type: 'json' }
import readme from '../../README.md?raw'
import { ask } from './ask.js'

const files = import.meta.glob<string>('../../apps/api/pictures/*.svg', { query: '?raw', import: 'default', eager: true })
const committed = new Map(Object.entries(files).map(([path, text]) => [path.slice(path.lastIndexOf('/') + 1), text]))
const pictures = Object.entries<{ path: string; body?: object }>(asked)

const draw = async ({ path, body }: { path: string; body?: object }): Promise<string> => {
  const headers = { accept: 'image/svg+xml', 'content-type': 'application/json' }
  return (await ask(path, body ? { method: 'POST', headers, body: JSON.stringify(body) } : { headers })).body
}

const words = (svg: string): string => svg.replace(/<style>.*?<\/style>/s, '').replace(/<[^>]+>/g, ' ')

test('every question has its picture, and every picture its question', () => {
  expect([...committed.keys()].sort()).toEqual(pictures.map(([file]) => file).sort())
})

describe.each(pictures)('%s', (file, question) => {
  const svg = committed.get(file)!

  test('is what the server draws', async () => {
    expect(svg === (await draw(question)), 'the picture is older than its code: npm run pictures draws it anew').toBe(true)
  })

  test('brings its own ground, so that it can be read on any page, and nothing from elsewhere', () => {
    const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg)!
    const whole = new RegExp(`<rect[^>]*(?:width="${width}" height="${height}"|width="100%" height="100%")[^>]*>`)
    const [first] = svg.replace(/<defs>.*?<\/defs>/s, '').match(/<(?:rect|line|path|circle|text)\b[^>]*>/)!
    expect(first).toMatch(whole)
    expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(/https?:|<script|<image|@import/)
    expect(svg.length).toBeLessThan(20_000)
  })

  test('stands in the guide with words that tell what it shows', () => {
    const [, alt] = new RegExp(`!\\[([^\\]]+)\\]\\(apps/api/pictures/${file}\\)`).exec(readme)!
    expect(alt!.length).toBeGreaterThan(100)
    const shown = new Set(words(svg).match(/\d+(?:\.\d+)?/g))
    expect((alt!.match(/\d+(?:\.\d+)?/g) ?? []).filter((figure) => !shown.has(figure))).toEqual([])
  })
})

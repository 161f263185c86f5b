import { sayNearest } from '@pottle/core'
import { describe, expect, test } from 'vitest'

const commands = ['convert', 'heat', 'loaf', 'sheet', 'stream']

describe('what may have been meant', () => {
  test.each([
    ['strem', commands, '; the nearest are stream, sheet'],
    ['Heat', ['heat', 'loaf'], '; the nearest is heat'],
    // A part of a name is like the whole of it, however long that is.
    ['digby', ['digby-1669', 'cites', 'ucum'], '; the nearest is digby-1669'],
    ['zzz', commands, '; there are convert, heat, loaf and 2 more'],
    ['zzz', ['heat', 'loaf'], '; there are heat, loaf'],
    ['zzz', [], ''],
    ['', commands, '; there are convert, heat, loaf and 2 more'],
  ])('by "%s"', (word, names, said) => {
    expect(sayNearest(word, names)).toBe(said)
  })

  test('names are written as their place has them, and as many as are wanted', () => {
    expect(sayNearest('yeer', ['year', 'place', 'years'], 1, '--')).toBe('; the nearest is --year')
  })

  test('a word of any length is looked at to a length that costs nothing', () => {
    expect(sayNearest('x'.repeat(1_000_000), commands)).toBe('; there are convert, heat, loaf and 2 more')
  })
})

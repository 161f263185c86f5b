import { convert } from '@pottle/core'
import { expect, test } from 'vitest'

const notesOf = (phrase: string) => convert(phrase, { year: 1835 }).notes.join(' ')

test('words that name several things say which of them the figure is for', () => {
  expect(notesOf('cloves and mace, of each an ounce')).toContain('clove and mace: the figure is for the clove')
  expect(notesOf('the peel, rind and juice of two lemons')).toContain('peel, rind and juice: the figure is for the juice')
  expect(notesOf('an ounce of cloves and mace')).not.toContain('the figure is for')
})

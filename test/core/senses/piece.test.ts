import { describe, expect, it } from 'vitest'
import { piece, unknownPiece } from '../../../packages/core/src/senses/piece.js'
import { answer, ask, bandFor, bestOf, said } from './ask.js'

const counted = (thing: string) => ({ kind: 'counted', measure: 'none', thing }) as const
const measured = (measure: string, thing: string) => ({ kind: 'measured', measure, thing }) as const

describe('whole things', () => {
  it.each([
    ['nutmeg', 4.05],
    ['clove', 0.08],
    ['lemon', 84],
    ['onion', 50],
    ['anchovy', 4],
    ['oyster', 14],
    ['bay leaf', 0.2],
    ['vanilla pod', 3],
  ])('a %s is %f g', (thing, grams) => {
    const [sense] = answer(piece, counted(thing), 1800)
    expect(sense!.quantity).toBe('mass')
    expect(bestOf([sense!])).toBe(grams)
  })

  it('may be a volume of juice', () => {
    const senses = answer(piece, counted('lemon juice'), 1800)
    expect(senses[0]!.quantity).toBe('volume')
    expect(bandFor(senses).high).toBeLessThan(58)
  })

  it('may be a part of one', () => {
    expect(bestOf(answer(piece, { ...counted('lemon'), part: 'juice' }, 1800))).toBe(46.6)
    expect(bestOf(answer(piece, { ...counted('orange'), part: 'rind' }, 1800))).toBe(8)
    expect(bestOf(answer(piece, { ...counted('lemon'), part: 'grating' }, 1800))).toBe(6)
    expect(bestOf(answer(piece, { ...counted('nutmeg'), part: 'grating' }, 1800))).toBe(4.05)
    expect(piece.answers(ask({ ...counted('onion'), part: 'juice' }, 1800))).toBe(false)
  })

  it('are left to other kinds where no weight is known', () => expect(piece.answers(ask(counted('chicken'), 1800))).toBe(false))
})

describe('pieces by a word', () => {
  it.each([
    ['blade', 'mace', 0.6],
    ['race', 'ginger', 15],
    ['stick', 'cinnamon', 4],
    ['sprig', 'parsley', 1],
    ['sprig', 'rosemary', 1],
    ['clove', 'garlic', 3],
    ['heads', 'celery', 350],
    ['bunch', 'sweet herbs', 20],
    ['sheet', 'isinglass', 2.5],
    ['sheet', 'paper', 12],
    ['pod', 'vanilla', 3],
    ['leaf', 'sage', 0.4],
  ])('a %s of %s is %f g', (measure, thing, grams) => expect(bestOf(answer(piece, measured(measure, thing), 1800))).toBe(grams))

  it('are refused for a thing that has no such weight', () =>
    expect(said(() => answer(unknownPiece, measured('blade', 'beef'), 1800))).toBe(
      'no-answer thing: the tables do not say what a blade of beef weighs; they know a blade of mace, a blade of cinnamon',
    ))

  it('are refused before their time', () =>
    expect(said(() => answer(piece, measured('square', 'chocolate'), 1700))).toMatch(
      /^no-answer year: the tables know a square of chocolate from 1860/,
    ))

  it('leave loaves of bread alone', () => {
    expect(piece.answers(ask(measured('loaf', 'bread'), 1800))).toBe(false)
    expect(piece.answers(ask(measured('loaf', 'sugar'), 1600))).toBe(true)
    expect(piece.answers(ask(measured('pint', 'milk'), 1600))).toBe(false)
  })
})

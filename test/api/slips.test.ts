/** Slips of the pen, as the pages take them: what was typed is kept, what was understood is told, and what to try is proposed. */
import { describe, expect, it, test } from 'vitest'
import { asDate, sayYear } from '../../apps/api/src/pages/parts/dates.js'
import { ask } from './ask.js'

const query = (fields: Readonly<Record<string, string>>): string => new URLSearchParams(fields).toString()
const measure = async (fields: Readonly<Record<string, string>>): Promise<string> => String((await ask(`/measure?${query(fields)}`)).body)

/** What a page proposes instead, as words. */
const proposals = (body: string): string[] => {
  const [, asked = ''] = /Did you mean(.*?)\?\s*<\/p>/s.exec(body) ?? []
  return [...asked.matchAll(/>([^<]+)<\/a>/g)].map(([, words]) => words!)
}

/** Written as books and catalogues write dates; read by the Extended Date/Time Format of the Library of Congress (level 1). */
test.each([
  ['c. 1690', '1690~', 'about 1690'],
  ['ca 1690', '1690~', 'about 1690'],
  ['circa 1690', '1690~', 'about 1690'],
  ['about 1690', '1690~', 'about 1690'],
  ['1690s', '169X', 'the 1690s'],
  ['the 1690’s', '169X', 'the 1690s'],
  ['1650-1700', '1650/1700', '1650 to 1700'],
  ['1650–1700', '1650/1700', '1650 to 1700'],
  ['1650 to 1700', '1650/1700', '1650 to 1700'],
  ['17th century', '16XX', 'the 17th century'],
  ['the 18th c.', '17XX', 'the 18th century'],
  ['Anno 1690', '1690', '1690'],
  ['A.D. 1690', '1690', '1690'],
  ['1690 AD', '1690', '1690'],
  ['1690?', '1690?', 'perhaps 1690'],
])('the year %s is %s, and said as %s', async (written, date, said) => {
  expect(asDate(written)).toBe(date)
  expect(sayYear(date)).toBe(said)
  expect(await measure({ phrase: 'a pint of cream', year: written })).toContain(`${said}</p>`)
})

test.each(['soon', '90', 'MDCXC', '1690-', '16900', '16905s'])('the year %s is kept as it was typed, and told to be none', async (year) => {
  const { status, body } = await ask(`/measure?${query({ phrase: 'a pint of cream', year })}`)
  expect(status).toBe(400)
  expect(body).toContain(`value="${year}"`)
  expect(body).toMatch(/id="measure-year"[^>]*aria-invalid="true"/)
})

test('what nobody sees in a copied text does no harm', async () => {
  for (const phrase of ['a p\u00adint of cr\u00adeam', '\u0000a pint of cream', 'a pint\u200b of cream', '\ufeffa pint of cream'])
    expect(await measure({ phrase, year: '1690' })).toContain('about 470 ml')
})

test('words in quotation marks are not quoted twice', async () => {
  const body = await measure({ phrase: '“a pint of cream”', year: '1690' })
  expect(body).toContain('The book says</small> “a pint of cream”')
})

describe('what to try', () => {
  it.each([
    ['pint', ['a pint']],
    ['pints', ['two pints']],
    ['cream', ['a pint of cream', 'a pound of cream']],
    ['a hogglehead of ale', ['a hogshead of ale']],
    ['a ovnce of ale', ['an ounce of ale', 'a fluid ounce of ale']],
    ['three', []],
    ['glorph', []],
  ])('of %s', async (phrase, tries) => {
    expect(proposals(await measure({ phrase, year: '1690' })).slice(0, 2)).toEqual(tries)
  })

  it('is answered, whatever it is', async () => {
    for (const phrase of [
      'a pottal of cream',
      'a firkyn of buttter',
      'butter the size of an elephant',
      'as much as will lie on a shiling',
    ]) {
      for (const proposal of proposals(await measure({ phrase })))
        expect((await ask(`/measure?${query({ phrase: proposal })}`)).status, proposal).toBe(200)
    }
  })
})

describe('a whole receipt where one measure is asked for', () => {
  const receipt = 'Take a pint of cream, ten eggs and half a pound of sugar.'
  const offer = /<form action="\/sheet" method="post"[^>]*>.*?name="text" value="([^"]*)"/s

  it('is offered to the sheet, with the answer to its first measure', async () => {
    const body = await measure({ phrase: receipt, year: '1690' })
    expect(body).toContain('about 470 ml')
    expect(offer.exec(body)?.[1]).toBe(receipt)
  })

  it('is offered to the sheet where it is too long to be read as a measure', async () => {
    const { status, body } = await ask(`/measure?${query({ phrase: receipt.repeat(20) })}`)
    expect(status).toBe(400)
    expect(offer.exec(String(body))?.[1]).toBe(receipt.repeat(20))
  })

  it('is not offered for one measure and its thing', async () => {
    for (const phrase of ['a pint of zorble', 'two pounds and three ounces of sugar', 'ten eggs, leaving out four of the whites'])
      expect(await measure({ phrase })).not.toMatch(offer)
  })
})

test('a receipt without a measure is told so, above the form and receipts to try', async () => {
  const body = String((await ask(`/sheet?${query({ text: 'Stir it well.' })}`)).body)
  const places = ['Nothing to measure off', '>Stir it well.</textarea>', 'To make an Almond Tart'].map((words) => body.indexOf(words))
  expect(places.every((place) => place > 0)).toBe(true)
  expect([...places].sort((a, b) => a - b)).toEqual(places)
  expect(body).not.toContain('The batch')
})

test('every fault is tied to its field, and a link leads there', async () => {
  for (const path of [
    '/measure?phrase=a+pint&year=soon&place=atlantis',
    '/heat?phrase=a+blorp+oven&year=x',
    `/sheet?${query({ text: 'Take a pint of cream', scale: 'x', guests: 'many', units: 'ells' })}`,
    '/loaves?coin=groat&from=x',
    '/oven?start=a+blorp+oven&hours=900',
  ]) {
    const body = String((await ask(path)).body)
    const invalid = [...body.matchAll(/<(?:input|select|textarea) ([^>]*aria-invalid="true"[^>]*)>/g)].map(([, attributes]) => attributes!)
    expect(invalid.length, path).toBeGreaterThan(0)
    for (const attributes of invalid) {
      const [, described] = /aria-describedby="([^"]+)"/.exec(attributes)!
      for (const id of described!.split(' ')) expect(body, id).toMatch(new RegExp(`id="${id}"[^>]*>.`))
    }
    for (const [, id] of body.matchAll(/<li><a href="#([\w.-]+)">/g)) expect(body, id).toContain(`id="${id}"`)
  }
})

import { sheetToCsv, sheetToHtml, sheetToJsonLd, sheetToMarkdown, workSheet } from '@core/sheet'
import { parse } from 'csv-parse/sync'
import { HtmlValidate, StaticConfigLoader } from 'html-validate'
import { describe, expect, test } from 'vitest'
import { almondTart, bunsBy, tartBy } from './ask.js'

const hostile = 'Take a pint of <script>alert("1")</script> cream & \'sugar\'; | then *stir* it_well\u0000.\n=SUM(A1)\n# not a heading'
const sheets = [
  ['the tart', tartBy()],
  ['the buns', bunsBy({ units: 'uk', oven: 'gas', fixed: { standards: { gallon: 'wine' } } })],
  ['a menu', workSheet('Soup, fish, and tarts.')],
  ['a hostile text', workSheet(hostile, { title: '</title><b>"x"' })],
] as const

describe('every way to scale', () => {
  const text = 'Take a pint of cream, two pounds of flour and four eggs. Bake it in a slow oven half an hour.'
  test.each([
    ['nothing', {}, 'The whole receipt.'],
    ['a factor', { scale: '1/2' }, '½ of the receipt.'],
    ['guests', { guests: 6, serves: 4 }, 'For 6, from a receipt that serves 4: 1½ times.'],
    ['dishes', { dish: { id: 'small-tart', count: 2 } }, 'To fill 2 small tins of 10 cm'],
    ['what there is', { limit: { thing: 'cream', amount: 1, unit: 'l' } }, 'To what 1 litre of cream allows'],
  ])('is told in a sentence: %s', (_, plan, words) => {
    expect(sheetToHtml(workSheet(text, { year: 1690, plan }))).toContain(`<strong>To measure off</strong>${words}`)
  })
})

describe('sentences', () => {
  test.each(sheets)('end in one full stop, and begin once: %s', (_, sheet) => {
    const told = sheetToMarkdown(sheet)
    expect(told).not.toMatch(/(?<!\.)\.\.(?!\.)|;;| ,|\. \./)
    expect(sheet.eggs?.text ?? '').not.toMatch(/crack (\d+ .+): \1$/)
  })
})

describe('HTML', () => {
  const validator = new HtmlValidate(
    new StaticConfigLoader({ root: true, extends: ['html-validate:recommended', 'html-validate:document', 'html-validate:a11y'] }),
  )

  test.each(sheets)('is valid and accessible: %s', async (_, sheet) => {
    const { results } = await validator.validateString(sheetToHtml(sheet))
    expect(results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => `${ruleId}: ${message}`))).toEqual([])
  })

  test('holds the text to the last character, with every measure underlined and numbered to its line', () => {
    const html = sheetToHtml(tartBy())
    const words = /<p class="words">(.*?)<\/p>/s.exec(html)![1]!
    expect(words.replace(/<sup>.*?<\/sup>/g, '').replace(/<[^>]+>/g, '')).toBe(almondTart.text)
    for (const { number, phrase } of tartBy().lines) {
      expect(words).toContain(`<u>${phrase}</u><sup><a href="#line-${number}" id="said-${number}">${number}</a></sup>`)
      expect(html).toContain(`<tr id="line-${number}">`)
    }
  })

  test('fetches nothing, and lets nothing of the text become markup', () => {
    const html = sheetToHtml(workSheet(hostile, { title: '</title><b>"x"' }))
    expect(html).not.toMatch(/<script|<b>"x"|src=|url\(|@import|<link/)
    expect(html).toContain('&lt;script&gt;')
    expect(html.match(/href="(?!#)/)).toBeNull()
  })

  test('prints on A4, with headings, a caption and scopes', () => {
    const html = sheetToHtml(tartBy())
    expect(html).toContain('@page { size: A4')
    expect(html).toContain('<html lang="en">')
    expect(html.match(/<caption>/g)).toHaveLength(1)
    expect(html.match(/scope="col"/g)).toHaveLength(6)
    expect(html.match(/scope="row"/g)).toHaveLength(9)
  })

  test('links to nothing that is not there', () => {
    const html = sheetToHtml(sheets[1][1])
    const ids = new Set([...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id))
    for (const [, to] of html.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(to)
  })
})

describe('Markdown', () => {
  test('has a table of the lines and a footnote for every source', () => {
    const sheet = tartBy()
    const text = sheetToMarkdown(sheet)
    expect(text.match(/^\| \d+ \|/gm)).toHaveLength(9)
    for (const { number } of sheet.sources) expect(text).toContain(`\n[^${number}]: `)
    for (const row of text.match(/^\|.*\|$/gm)!) expect(row.replaceAll('\\|', '').split('|')).toHaveLength(8)
  })

  test('escapes what Markdown would read', () => {
    const text = sheetToMarkdown(workSheet(hostile))
    expect(text).toContain('\\*stir\\*')
    expect(text).not.toContain('<script')
    expect(text).toContain('> \\# not a heading')
  })
})

describe('CSV', () => {
  test('is read back as it was written', () => {
    const { lines } = tartBy()
    const csv = sheetToCsv(tartBy())
    const rows = parse(csv, { columns: true }) as Record<string, string>[]
    expect(rows).toHaveLength(9)
    rows.forEach((row, i) => {
      expect(row.phrase).toBe(lines[i]!.phrase)
      expect(Number(row.best)).toBe(lines[i]!.value!.best)
      expect(row.working_text).toBe(lines[i]!.working!.text)
    })
    expect(csv.split('\r\n').at(-1)).toBe('')
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  })

  test('a cell can’t begin a formula', () => {
    const sheet = tartBy()
    const evil = ['=1+1', '+1', '-1', '@x', '\t=1', '＝1']
    const [line] = sheet.lines
    const rows = parse(sheetToCsv({ ...sheet, lines: evil.map((phrase) => ({ ...line!, phrase })) }), { columns: true }) as {
      phrase: string
    }[]
    expect(rows.map(({ phrase }) => phrase)).toEqual(evil.map((phrase) => `'${phrase}`))
  })

  test('quotes are doubled, commas and breaks are kept', () => {
    const sheet = tartBy()
    const [line] = sheet.lines
    const phrase = 'a "pint",\r\nof cream'
    const [row] = parse(sheetToCsv({ ...sheet, lines: [{ ...line!, phrase }] }), { columns: true }) as { phrase: string }[]
    expect(row!.phrase).toBe(phrase)
  })
})

describe('JSON-LD', () => {
  test('is a Recipe with its ingredients, steps, yield and citations', () => {
    const recipe = sheetToJsonLd(tartBy())
    expect(recipe).toMatchObject({ '@context': 'https://schema.org', '@type': 'Recipe', name: 'To make an Almond Tart of the Hall' })
    expect(recipe.recipeIngredient).toContain('240 ml cream (“half a pint of good thick Creame”)')
    expect(recipe.recipeYield).toBe('six small or two large')
    expect(recipe.recipeInstructions).toHaveLength(8)
    expect(recipe.citation).toHaveLength(tartBy().sources.length)
    expect(recipe.isBasedOn).toMatchObject({ text: almondTart.text, temporal: '1690' })
    expect(recipe.cookTime).toMatch(/^PT\d+M$/)
  })
})

/** Markdown in, plain HTML out: the chain of tools that a static site uses, as they come from their authors. */
import remarkPottle, { type Defaults } from '@pottle/remark'
import rehypeStringify from 'rehype-stringify'
import remarkDirective from 'remark-directive'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { describe, expect, test } from 'vitest'

/** A page and what the build said about it; spaces that do not break are made plain. */
async function build(markdown: string, defaults: Defaults = {}): Promise<{ html: string; messages: string[] }> {
  const file = await unified()
    .use(remarkParse)
    .use(remarkGfm)
    .use(remarkDirective)
    .use(remarkPottle, defaults)
    .use(remarkRehype)
    .use(rehypeStringify)
    .process(markdown)
  return { html: String(file).replaceAll('\u00a0', ' '), messages: file.messages.map(String) }
}

describe('a measure in Markdown', () => {
  test('gets the modern measure behind it and a footnote with its sources', async () => {
    const { html, messages } = await build('Take :measure[a pottle of cream]{year=1690 place=london}.')
    expect(html).toMatch(
      /<p>Take <span class="pottle-measure">a pottle of cream \(about 1\.9 litres\)<sup><a href="#user-content-fn-pottle-1"[^>]*>1<\/a><\/sup><\/span>\.<\/p>/,
    )
    expect(html).toContain('<li id="user-content-fn-pottle-1">')
    expect(html).toMatch(/London, 1690\. About 1\.9 litres, 8 US cups[^.]*\.?.*nine times in ten between/)
    expect(html).toContain('5 Anne c. 27')
    expect(html).toContain('Meanings: half a wine gallon, 1.89 litres')
    expect(messages).toEqual([])
  })

  test('keeps the markup of its words', async () => {
    const { html } = await build('Take :measure[a *pottle* of cream]{year=1690}.')
    expect(html).toContain('a <em>pottle</em> of cream (about 1.9 litres)')
  })

  test('may be looked up by other words than those that are shown', async () => {
    const { html } = await build(
      ':measure[a pottle]{thing=cream year=1690} and :measure[as much again]{phrase="a pottle of cream" year=1690}',
    )
    expect(html).toContain('a pottle (about 1.9 litres)')
    expect(html).toContain('as much again (about 1.9 litres)')
  })

  test('shares its footnote with the same measure, and stands beside the footnotes of the page', async () => {
    const { html } = await build(
      'Note[^own] :measure[a gill of wine]{year=1750}, :measure[a gill of wine]{year=1750}, :measure[a gill of wine]{year=1850}\n\n[^own]: Mine.',
    )
    expect(html.match(/<li id="user-content-fn-/g)).toHaveLength(3)
    expect(html).toContain('Mine.')
  })

  test('takes the id and class that the author gives it', async () => {
    const { html } = await build(':measure[a pottle of cream]{#cream .dairy year=1690}')
    expect(html).toContain('<span class="pottle-measure dairy" id="cream">')
  })
})

test('heats and loaves are looked up too, and a loaf is read from its words', async () => {
  const { html, messages } = await build(
    'Bake it in :heat[a slack oven]{year=1796} with :loaf[a penny white loaf]{year=1680 place=london}.',
  )
  expect(html).toMatch(/<span class="pottle-heat">a slack oven \(about \d+ °C\)/)
  expect(html).toMatch(/<span class="pottle-loaf">a penny white loaf \(about \d+ g\)/)
  expect(messages).toEqual([])
})

test('a loaf by its words is the loaf by its attributes', async () => {
  const byWords = await build(':loaf[a halfpenny household loaf]{year=1720}')
  const byAttributes = await build(':loaf[a halfpenny household loaf]{coin=halfpenny kind=household year=1720}')
  expect(byWords).toEqual(byAttributes)
})

test('the year and place of a site hold for what does not say its own', async () => {
  const { html } = await build(':measure[a pottle of cream]{year=1850} :measure[a pottle of cream]', { year: 1690, place: 'london' })
  expect(html).toContain('London, 1850.')
  expect(html).toContain('London, 1690.')
})

describe('what has no answer', () => {
  test.each([
    ['words that state no measure', 'Take :measure[zorp of blee]{year=1690} now.', 'Take zorp of blee now.', /^1:6-1:39: phrase: /],
    ['a year outside the tables', 'Take :measure[a pint of ale]{year=3000} now.', 'Take a pint of ale now.', /year: 3000/],
    [
      'an attribute that is none',
      'Take :measure[a pint of ale]{yeer=1690} now.',
      'Take a pint of ale now.',
      /yeer: :measure knows phrase, year/,
    ],
    ['a loaf without a year', 'Take :loaf[a penny loaf] now.', 'Take a penny loaf now.', /year: give the year/],
    [
      'a loaf with words that are none',
      'Take :loaf[a penny zorp loaf]{year=1680} now.',
      'Take a penny zorp loaf now.',
      /"zorp" names no loaf/,
    ],
    ['no words at all', 'Take :measure[]{year=1690} now.', 'Take  now.', /phrase/],
  ])('%s: the words stay, and the build says where and why', async (_, markdown, text, message) => {
    const { html, messages } = await build(markdown)
    expect(html).toBe(`<p>${text}</p>`)
    expect(messages).toHaveLength(1)
    expect(messages[0]).toMatch(message)
  })

  test('leaves a measure inside its words to be read', async () => {
    const { html } = await build(':measure[zorp and :measure[a pottle of cream]{year=1690}]{year=3000}')
    expect(html).toContain('zorp and <span class="pottle-measure">a pottle of cream (about 1.9 litres)')
  })

  test('directives of others are left to them', async () => {
    const { html, messages } = await build('At 12:measured and :abbr[HTML].')
    expect(html).toContain('HTML')
    expect(messages).toEqual([])
  })
})

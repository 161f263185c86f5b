/** The pages as a program sees them: status, headers, addresses, and what they say of a slip. */
import { sources } from '@pottle/core'
import { describe, expect, it } from 'vitest'
import { ask, type Reply } from './ask.js'

const form = (fields: Readonly<Record<string, string>>): Promise<Reply> =>
  ask('/sheet', {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
    body: new URLSearchParams(fields).toString(),
  })

/** The text of a page, as one line. */
const textOf = ({ body }: Reply): string =>
  String(body)
    .replace(/<[^>]{1,2000}>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replace(/\s+/g, ' ')

describe('every page', () => {
  it.each([
    ['/', 200],
    ['/measure', 200],
    ['/measure?phrase=a+pottle+of+cream&year=1690&place=london', 200],
    ['/measure?phrase=', 400],
    ['/measure?phrase=a+glorph+of+cream', 422],
    ['/measure?phrase=a+pint+of+cream&year=soon', 400],
    ['/measure?phrase=a+pint+of+cream&coverage=lots', 400],
    ['/heat', 200],
    ['/heat?phrase=a+slack+oven&year=169X', 200],
    ['/heat?phrase=a+blorp+oven', 422],
    ['/heat?phrase=a+quick+oven&place=atlantis', 400],
    ['/sheet', 200],
    ['/sheet?text=Take+a+pint+of+cream', 200],
    ['/sheet?text=', 400],
    ['/sheet?text=Take+a+pint+of+cream&scale=nothing', 400],
    ['/sheet?text=Take+a+pint+of+cream&guests=many', 400],
    ['/sheet?text=Take+a+pint+of+cream&line.9=pint.ale', 400],
    ['/loaves', 200],
    ['/loaves?coin=penny&kind=white&year=1690', 200],
    ['/loaves?year=1660/1710', 200],
    ['/loaves?from=1200', 422],
    ['/loaves?from=1700&to=1600', 400],
    ['/oven', 200],
    ['/oven?start=232&hours=6&batch=90', 200],
    ['/oven?hours=a+day', 400],
    ['/measures', 200],
    ['/measures/pottle', 200],
    ['/measures/glorph', 404],
    ['/measures/vessels', 200],
    ['/measures/vessels/spoonful', 200],
    ['/measures/vessels/glorph', 404],
    ['/measures/coins/sixpence', 200],
    ['/goods', 200],
    ['/goods/cream', 200],
    ['/goods/glorph', 404],
    ['/heats/tests', 200],
    ['/heats/sugar/pearl', 200],
    ['/heats/liquids', 200],
    ['/tables', 200],
    ['/heats', 200],
    ['/heats/slow', 200],
    ['/heats/glorph', 404],
    ['/sources', 200],
    ['/sources/digby-1669', 200],
    ['/sources/glorph', 404],
    ['/unsure', 200],
  ])('%s answers %i as a whole page under a strict policy', async (path, status) => {
    const reply = await ask(path)
    expect(reply.status).toBe(status)
    expect(reply.headers.get('content-type')).toBe('text/html; charset=utf-8')
    expect(reply.headers.get('x-content-type-options')).toBe('nosniff')
    const policy = reply.headers.get('content-security-policy')!
    for (const part of ["default-src 'none'", "style-src 'self'", "script-src 'self'", "base-uri 'none'"]) expect(policy).toContain(part)
    expect(reply.body).toMatch(/^<!doctype html><html lang="en-GB">/)
    expect(String(reply.body).match(/<h1[ >]/g)).toHaveLength(1)
    expect(reply.body).not.toMatch(/ style="/)
  })

  it('is linked to pages that are there', async () => {
    const seen = new Set<string>()
    for (const path of [
      '/',
      '/measure?phrase=a+pottle+of+cream&year=1690',
      '/heat?phrase=a+slack+oven',
      '/loaves?year=1690',
      '/heats/hot',
    ]) {
      const { body } = await ask(path)
      for (const [, href] of String(body).matchAll(/ (?:href|src|action)="([^"#]+)/g)) seen.add(href!.replaceAll('&amp;', '&'))
    }
    const own = [...seen].filter((href) => !href.startsWith('http') || new URL(href).hostname === 'localhost')
    expect(own.length).toBeGreaterThan(60)
    for (const href of own) expect((await ask(href)).status, href).toBeLessThan(400)
  })

  it('has every source of the tables', async () => {
    const list = String((await ask('/sources')).body).replaceAll('&#39;', "'")
    expect(sources.filter(({ id }) => !list.includes(`"/sources/${encodeURIComponent(id)}"`))).toEqual([])
  })
})

describe('assets', () => {
  it('may be kept for ever under their own tag, and not under an old one', async () => {
    const [, address] = /href="(\/assets\/[^"]+\.css)"/.exec((await ask('/')).body)!
    const reply = await ask(address!)
    expect(reply.headers.get('cache-control')).toContain('immutable')
    expect(reply.headers.get('content-type')).toMatch(/^text\/css/)
    expect((await ask('/assets/0000/pottle.css')).headers.get('cache-control')).toBe('no-cache')
  })

  it('are the style, the script, the mark and the type; others are not found', async () => {
    for (const name of ['pottle.css', 'pottle.js', 'pottle.svg', 'caslon.woff2', 'caslon-italic.woff2'])
      expect((await ask(`/assets/x/${name}`)).status).toBe(200)
    expect((await ask('/assets/x/constructor')).status).toBe(404)
  })
})

describe('a measure', () => {
  it('is answered first, then its meanings, steps, sources, citations and the markup for other pages', async () => {
    const text = textOf(await ask('/measure?phrase=a+pottle+of+cream&year=1690&place=london'))
    const order = [
      'about 1.9 litres',
      'Nine times in ten',
      'half an ale gallon',
      '231 in³',
      '5 Anne c. 27',
      'As a footnote',
      'A link to this answer',
    ]
    const places = order.map((words) => text.indexOf(words))
    expect(places.every((place) => place > 0)).toBe(true)
    expect([...places].sort((a, b) => a - b)).toEqual(places)
    expect(text.includes('&lt;pottle-measure phrase="a pottle of cream" year="1690" place="london"&gt;')).toBe(true)
    expect(text.includes('@incollection{pottle-a-pottle-of-cream-1690,')).toBe(true)
  })

  it('names its oEmbed address and its own', async () => {
    const { body } = await ask('/measure?phrase=a+pint+of+ale&year=1700&coverage=0.9')
    expect(body).toContain('<link rel="canonical" href="http://localhost/measure?phrase=a+pint+of+ale&amp;year=1700"/>')
    expect(body).toMatch(/<link rel="alternate" type="application\/json\+oembed" href="http:\/\/localhost\/oembed\?url=/)
  })

  it('tells a reader of a proxy by its own name', async () => {
    const reply = await ask('/measure?phrase=a+pint+of+ale', { headers: { 'x-forwarded-proto': 'https' } })
    expect(reply.body).toContain('https://localhost/measure?phrase=a+pint+of+ale')
  })

  it('shows what was typed as text and never as markup', async () => {
    const evil = '<script>alert(1)</script>" onfocus="x'
    for (const path of [
      '/measure?phrase=',
      '/heat?phrase=',
      '/sheet?title=a&text=',
      '/oven?start=',
      '/measure?phrase=a+pint&place=',
      '/measures/',
    ]) {
      const { body } = await ask(path + encodeURIComponent(evil))
      expect(body).not.toContain('<script>alert')
      expect(body).not.toContain('" onfocus="')
    }
  })

  it('puts letters on its meanings, in the picture and in the table alike', async () => {
    const { body } = await ask('/measure?phrase=a+pottle+of+cream&year=1690')
    expect(body).toMatch(/<desc[^>]*>The best value is 1\.89\slitres; nine times in ten[^<]*A, half a wine gallon, 78 in 100/)
    expect(body).toMatch(/<span class="letter">A<\/span><a[^>]*>half a wine gallon/)
  })
})

describe('a sheet', () => {
  const text = 'Take a pint of cream and half a pound of sugar.'

  it('is sent on to an address of its own, so that it can be loaded again', async () => {
    const reply = await form({ text, year: '1690', scale: '2', guests: '' })
    expect(reply.status).toBe(303)
    expect(reply.headers.get('location')).toBe(`/sheet?${new URLSearchParams({ text, year: '1690', scale: '2' })}`)
  })

  it('is answered at once where the receipt is too long for an address', async () => {
    const reply = await form({ text: `${text}\n`.repeat(300), year: '1690' })
    expect(reply.status).toBe(200)
    expect(textOf(reply)).toContain('too long for a link')
  })

  it('refuses more than two megabytes', async () => {
    expect((await form({ text: 'a'.repeat(3_000_000) })).status).toBe(413)
  })

  it.each([
    ['html', 'text/html; charset=utf-8'],
    ['markdown', 'text/markdown; charset=utf-8'],
    ['csv', 'text/csv; charset=utf-8'],
    ['jsonld', 'application/ld+json; charset=utf-8'],
  ])('can be kept as %s', async (as, type) => {
    const reply = await ask(`/sheet?${new URLSearchParams({ text, as })}`)
    expect(reply.status).toBe(200)
    expect(reply.headers.get('content-type')).toBe(type)
  })

  it('tells faults by the fields of the form', async () => {
    const reply = await ask(`/sheet?${new URLSearchParams({ text, scale: 'nothing', dish: 'bathtub' })}`)
    expect(reply.body).toMatch(/id="sheet-scale-fault"/)
    expect(reply.body).toMatch(/id="sheet-dish-fault"/)
    expect(textOf(reply)).not.toContain('plan.')
  })
})

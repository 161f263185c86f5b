/** The small pages, the pictures and oEmbed, as other people's programs meet them. */
import { describe, expect, test } from 'vitest'
import { ask } from '../api/ask.js'

const cream = 'phrase=a+pottle+of+cream&year=1690&place=london'
const pages = [
  `/embed/measure?${cream}`,
  '/embed/heat?phrase=a+slack+oven&year=1796',
  '/embed/loaf?coin=penny&kind=white&year=1680&place=london',
]
const pictures = pages.map((page) => page.replace('?', '.svg?'))
const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

describe('a page for a frame', () => {
  test.each(pages)('%s may be framed by anyone and may do nothing else', async (page) => {
    const { status, headers, body } = await ask(page)
    const policy = headers.get('content-security-policy')!
    expect(status).toBe(200)
    expect(headers.get('content-type')).toBe('text/html; charset=utf-8')
    expect(policy).toContain('frame-ancestors *')
    expect(policy).toContain("default-src 'none'")
    expect(policy).not.toContain('unsafe')
    expect(body).not.toContain('<script')
    expect(body).not.toContain(' style=')
  })

  test('says the answer, its band, its meanings and its sources', async () => {
    const { body } = await ask(pages[0]!)
    for (const words of ['a pottle of cream', 'about 1.9 litres', 'Nine times in ten between', 'half an ale gallon', '5 Anne c. 27'])
      expect(plain(body)).toContain(words)
  })

  test('leads programs to its oEmbed answer and readers to the whole working', async () => {
    const { body } = await ask(pages[0]!)
    const [, discovery] = /<link rel="alternate" type="application\/json\+oembed" href="([^"]+)"/.exec(body)!
    const address = discovery!.replaceAll('&amp;', '&')
    const url = new URL(address)
    expect((await ask(url.pathname + url.search)).body.version).toBe('1.0')
    expect(body).toContain(`href="http://localhost/measure?${cream.replaceAll('&', '&amp;')}"`)
  })

  test('names the outer scheme behind a proxy that ends TLS', async () => {
    const { body } = await ask(pages[0]!, { headers: { 'x-forwarded-proto': 'https' } })
    expect(body).toContain('href="https://localhost/oembed?')
  })

  test('keeps words that cannot be read, and says what to try', async () => {
    const { status, headers, body } = await ask('/embed/measure?phrase=<b>zorp</b>')
    expect(status).toBe(422)
    expect(body).toContain('<h1>&lt;b&gt;zorp&lt;/b&gt;</h1>')
    expect(headers.get('content-security-policy')).toContain('frame-ancestors *')
  })

  test('says which option is wrong', async () => {
    const { status, body } = await ask('/embed/measure?phrase=a+pint&year=3000')
    expect(status).toBe(400)
    expect(body).toContain('year: 3000')
    expect((await ask('/embed/measure')).status).toBe(400)
  })

  test('is kept until the next release', async () => {
    const { headers } = await ask(pages[0]!)
    expect(headers.get('cache-control')).toContain('max-age=')
    expect((await ask(pages[0]!, { headers: { 'if-none-match': headers.get('etag')! } })).status).toBe(304)
  })
})

describe('a picture', () => {
  test.each(pictures)('%s stands alone and says in words what it shows', async (picture) => {
    const { status, headers, body } = await ask(picture)
    expect(status).toBe(200)
    expect(headers.get('content-type')).toBe('image/svg+xml')
    expect(headers.get('content-security-policy')).toMatch(/^default-src 'none'; style-src 'sha256-/)
    expect(body).toMatch(/<title id="words">[^<]+<\/title><desc id="said">[^<]*nine times in ten[^<]*<\/desc>/)
    expect(body).not.toMatch(/NaN|undefined|href=/)
  })

  test('is as tall as what it holds', async () => {
    const { body } = await ask(pictures[0]!)
    const height = Number(/^<svg [^>]*height="(\d+)"/.exec(body)![1])
    const lowest = Math.max(...[...body.matchAll(/ y2?="([\d.]+)"/g)].map(([, y]) => Number(y)))
    expect(lowest).toBeLessThan(height)
    expect(height - lowest).toBeLessThan(40)
  })

  test('of words that cannot be read has the words', async () => {
    const { status, body } = await ask('/embed/measure.svg?phrase=zorp+of+blee')
    expect(status).toBe(422)
    expect(body).toContain('zorp of blee')
  })
})

test('the script is served to every origin', async () => {
  const { headers, body } = await ask('/embed/pottle.js')
  expect(headers.get('content-type')).toBe('text/javascript; charset=utf-8')
  expect(headers.get('access-control-allow-origin')).toBe('*')
  expect(headers.get('cross-origin-resource-policy')).toBe('cross-origin')
  expect(body).toContain('customElements')
})

/** oEmbed 1.0, https://oembed.com: section 2.2 the request, 2.3 the response, 2.3.3 the errors. */
describe('oEmbed', () => {
  const oembed = (address: string, more = '') => ask(`/oembed?url=${encodeURIComponent(address)}${more}`)
  const page = `http://localhost${pages[0]}`

  test('answers with all that the rich type asks for', async () => {
    const { status, headers, body } = await oembed(page, '&format=json')
    expect(status).toBe(200)
    expect(headers.get('content-type')).toContain('application/json')
    expect(body).toMatchObject({ version: '1.0', type: 'rich', provider_name: 'Pottle', provider_url: 'http://localhost/' })
    expect(plain(body.title)).toBe('a pottle of cream: about 1.9 litres')
    expect(body.html).toContain(`<iframe src="http://localhost${pages[0]!.replaceAll('&', '&amp;')}"`)
    expect(body.html).toContain(`width="${body.width}" height="${body.height}"`)
  })

  test.each([
    `http://localhost/measure?${cream}`,
    `http://localhost${pictures[0]}`,
    `https://localhost/measure?${cream}`,
    'http://localhost/loaves?coin=penny&year=1680',
    'http://localhost/heat?phrase=a+slack+oven',
  ])('knows %s', async (address) => {
    const { status, body } = await oembed(address)
    expect(status).toBe(200)
    expect(body.html).toContain('/embed/')
  })

  test('keeps within the width and height that are asked for', async () => {
    const { body } = await oembed(page, '&maxwidth=320&maxheight=150')
    expect(body.width).toBeLessThanOrEqual(320)
    expect(body.height).toBeLessThanOrEqual(150)
  })

  test.each([
    'https://elsewhere.example/measure?phrase=a+pint',
    'http://localhost/sources',
    'http://localhost/measure?phrase=zorp',
    'http://localhost:81/measure?phrase=a+pint',
    'ftp://localhost/measure?phrase=a+pint',
  ])('has nothing for %s', async (address) => {
    const { status, headers } = await oembed(address)
    expect(status).toBe(404)
    expect(headers.get('content-type')).toBe('application/problem+json')
  })

  test('gives no XML', async () => {
    expect((await oembed(page, '&format=xml')).status).toBe(501)
  })

  test.each(['/oembed', '/oembed?url=', '/oembed?url=pottle', `/oembed?url=${encodeURIComponent(page)}&maxwidth=wide`])(
    '%s is malformed',
    async (path) => {
      const { status, body } = await ask(path)
      expect(status).toBe(400)
      expect(body.errors[0].parameter).toMatch(/url|maxwidth/)
    },
  )
})

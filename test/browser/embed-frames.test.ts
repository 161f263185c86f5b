/** Frames, pictures and built pages: the embeds of sites that allow no script. */
import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { openStreet, type Street, seen } from './blog.js'
import { describeInBrowser } from './browser.js'
import { findings, overflow } from './looks.js'

/** A browser on a busy machine is slow, and that is no fault of the page. */
vi.setConfig({ testTimeout: 30_000, hookTimeout: 60_000 })

const small: readonly (readonly [name: string, path: string])[] = [
  ['a measure of several meanings', '/embed/measure?phrase=a+pottle+of+cream&year=1690&place=london'],
  ['a measure without a year', '/embed/measure?phrase=an+ounce+of+nutmegs'],
  ['an exact measure', '/embed/measure?phrase=half+an+hour'],
  ['eggs', '/embed/measure?phrase=xij+eggs&year=1700'],
  ['a heat', '/embed/heat?phrase=a+slack+oven&year=1796'],
  ['a loaf', '/embed/loaf?coin=penny&kind=white&year=1680&place=london'],
]

describeInBrowser('where no script is allowed', () => {
  let street: Street
  beforeAll(async () => {
    street = await openStreet()
  })
  afterAll(() => street.close())

  async function open(address: string, reader?: BrowserContextOptions): Promise<Page> {
    const { page } = await street.open(reader)
    await page.goto(address)
    return page
  }

  test.each(small)('%s gives axe nothing to find, by day or by night', async (_, path) => {
    const page = await open(street.api.origin + path)
    expect(await findings(page)).toEqual([])
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await findings(page)).toEqual([])
  })

  test.each(small)('%s fits the frame that oEmbed gives it', async (_, path) => {
    const page = await open('about:blank')
    for (const maxwidth of [560, 400, 320]) {
      const answer = await fetch(
        `${street.api.origin}/oembed?${new URLSearchParams({ url: street.api.origin + path, maxwidth: String(maxwidth) })}`,
      )
      const { width, height } = (await answer.json()) as { width: number; height: number }
      await page.setViewportSize({ width, height: 10 })
      await page.goto(street.api.origin + path)
      const { wide, tall } = await page.evaluate(() => ({
        wide: document.documentElement.scrollWidth,
        tall: document.documentElement.scrollHeight,
      }))
      expect(wide, `as wide as ${width}`).toBeLessThanOrEqual(width)
      expect(tall, `as tall as ${height} at ${width}`).toBeLessThanOrEqual(height)
      expect(height, `not much taller than ${tall} at ${width}`).toBeLessThan(tall * 1.3 + 20)
    }
  })

  test('a small page opens its steps by keyboard and wears its style under its own policy', async () => {
    const page = await open(street.api.origin + small[0]![1], { javaScriptEnabled: false })
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    expect(await page.getByText('Wine gallon of 231 cubic inches').isVisible()).toBe(true)
    await page.keyboard.press('Tab')
    expect(await page.locator('a:focus').getAttribute('href')).toContain('/measure?phrase=a+pottle+of+cream')
    const caption = await page.locator('.words').boundingBox()
    const answer = await page.locator('.answer').boundingBox()
    expect(answer!.height, 'the answer is larger than the words').toBeGreaterThan(caption!.height)
  })

  test('frames and pictures show on a blog of another origin', async () => {
    const page = await open(`${street.blog.origin}/furmety.html`)
    for (const frame of await page.locator('iframe').all()) await frame.scrollIntoViewIfNeeded()
    const frames = page.locator('iframe')
    expect(await frames.count()).toBe(3)
    for (let i = 0; i < 3; i++) {
      const inside = frames.nth(i).contentFrame()
      await inside.locator('.answer').waitFor()
      expect(await seen(inside.locator('.answer'))).toMatch(/^about\s/)
      expect(await frames.nth(i).getAttribute('title')).toMatch(/: about\s/)
    }
    const picture = page.getByRole('img', { name: 'A quart of new milk, London, 1680' })
    await expect.poll(() => picture.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(300)
  })

  test('a page that was built with its measures needs nobody', async () => {
    expect(street.blog.messages).toEqual([])
    const { page, asked } = await street.open({ javaScriptEnabled: false })
    await page.goto(`${street.blog.origin}/whipt-cream.html`)
    expect(asked.filter((url) => !url.startsWith(street.blog.origin))).toEqual([])
    expect(await seen(page.locator('blockquote'))).toContain('Take a pottle of cream (about 1.9 litres)1 and season it')
    await page.getByRole('link', { name: '1', exact: true }).click()
    expect(await seen(page.locator('li:target'))).toContain('5 Anne c. 27')
  })

  test.each(['whipt-cream', 'furmety', ''])('the post "%s" gives axe nothing to find and keeps within a phone', async (name) => {
    const page = await open(`${street.blog.origin}/${name === '' ? '' : `${name}.html`}`, { viewport: { width: 320, height: 700 } })
    expect(await findings(page)).toEqual([])
    expect(await overflow(page)).toBeLessThanOrEqual(0)
  })
})

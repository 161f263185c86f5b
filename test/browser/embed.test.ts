/** The custom elements on a blog of another origin, in a real browser: under a strict policy, by keyboard, and when things go wrong. */
import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { openStreet, type Street, seen } from './blog.js'
import { describeInBrowser } from './browser.js'
import { findings, overflow } from './looks.js'

/** A browser on a busy machine is slow, and that is no fault of the page. */
vi.setConfig({ testTimeout: 30_000, hookTimeout: 60_000 })

describeInBrowser('an element on a blog', () => {
  let street: Street
  beforeAll(async () => {
    street = await openStreet()
  })
  afterAll(() => street.close())

  const open = (reader?: BrowserContextOptions) => street.open(reader)
  const post = (name: string): string => `${street.blog.origin}/${name}.html`
  const butter = (page: Page) => page.locator('pottle-measure').first()
  const answerOf = (page: Page) => butter(page).getByRole('button')

  /** The first line as its author wrote it, as far as it is shown. */
  const firstLine = (page: Page): Promise<string> => seen(page.locator('blockquote p'))

  test('shows its answer on a foreign origin under a strict policy, and asks the API alone', async () => {
    const { page, asked, refused } = await open()
    await page.goto(post('seed-cake'))
    await expect.poll(() => seen(answerOf(page)), { timeout: 10_000 }).toMatch(/^about\s45\d\sg/)
    await expect
      .poll(
        () =>
          page
            .locator('pottle-loaf')
            .getByText(/^about\s\d+\sg$/)
            .count(),
        { timeout: 10_000 },
      )
      .toBe(1)
    expect(refused).toEqual([])
    expect(asked.filter((url) => !url.startsWith(street.blog.origin) && !url.startsWith(street.api.origin))).toEqual([])
    expect(asked.some((url) => url.startsWith(`${street.api.origin}/v1/convert?`))).toBe(true)
    expect(await answerOf(page).evaluate((button) => getComputedStyle(button).borderBottomStyle), 'its style is on').toBe('dotted')
  })

  test('asks once for what a page shows twice', async () => {
    const { page, asked } = await open()
    await page.goto(post('seed-cake'), { waitUntil: 'networkidle' })
    expect(asked.filter((url) => url.includes('/v1/oven-heats')).length).toBe(1)
  })

  test('opens its note by keyboard, and leads to the sources and the whole working', async () => {
    const { page } = await open()
    await page.goto(post('seed-cake'), { waitUntil: 'networkidle' })
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    const focused = () => page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.outerHTML ?? '')
    expect(await focused()).toContain('aria-expanded="false"')
    expect(await butter(page).getByText('Nine times in ten').isVisible()).toBe(false)
    await page.keyboard.press('Enter')
    expect(await focused()).toContain('aria-expanded="true"')
    expect(await butter(page).getByText('Nine times in ten').isVisible()).toBe(true)
    expect(await butter(page).getByText('Nicholson, Men and Measures').first().isVisible()).toBe(true)
    await page.keyboard.press('Tab')
    expect(await focused()).toContain(`href="${street.api.origin}/measure?phrase=a+pound+of+butter&amp;year=1796"`)
    await page.keyboard.press('Shift+Tab')
    await page.keyboard.press('Space')
    expect(await focused()).toContain('aria-expanded="false"')
  })

  test('tells a screen reader what the button does and what the picture shows', async () => {
    const { page } = await open()
    await page.goto(post('seed-cake'), { waitUntil: 'networkidle' })
    await answerOf(page).click()
    expect(await answerOf(page).textContent()).toMatch(/^about\s\d+\sg, how sure and who says so$/)
    expect(await butter(page).locator('svg[role=img]').getAttribute('aria-label')).toMatch(
      /^A ruled scale: nine times in ten between \d+ and \d+\sg; meanings at a/,
    )
  })

  test.each(['light', 'dark'] as const)('gives axe nothing to find, by %s', async (colorScheme) => {
    const { page } = await open({ colorScheme })
    await page.goto(post('seed-cake-offline'))
    await answerOf(page).click()
    for (const summary of await page.getByText('Steps and sources').all()) await summary.click()
    expect(await findings(page)).toEqual([])
  })

  test.each([
    ['a phone', 320, '100%'],
    ['letters twice as large', 640, '200%'],
  ])('keeps within the page on %s, its note open', async (_, width, size) => {
    const { page } = await open({ viewport: { width, height: 700 } })
    await page.goto(post('seed-cake-offline'))
    await page.evaluate((size) => document.documentElement.style.setProperty('font-size', size), size)
    await answerOf(page).click()
    expect(await overflow(page)).toBeLessThanOrEqual(0)
  })

  test('does not move', async () => {
    const { page } = await open({ reducedMotion: 'no-preference' })
    await page.goto(post('seed-cake-offline'))
    await answerOf(page).click()
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0)
  })

  test('opens below the line, so that the sentence stays whole', async () => {
    const { page } = await open()
    await page.goto(post('seed-cake-offline'))
    const button = await answerOf(page).boundingBox()
    await answerOf(page).click()
    const [after, note] = [
      await page.locator('pottle-measure').nth(1).boundingBox(),
      await butter(page).getByText('Nine times in ten').boundingBox(),
    ]
    expect(after!.y).toBeLessThan(note!.y)
    expect(note!.y).toBeGreaterThan(button!.y)
  })

  test('takes the look that a site gives it, by custom properties and parts', async () => {
    const { page } = await open()
    await page.goto(post('seed-cake-offline'))
    await answerOf(page).click()
    const look = await page.evaluate(() => {
      const sheet = new CSSStyleSheet()
      sheet.replaceSync(
        'pottle-measure{--pottle-ink:rgb(1,2,3)} pottle-measure::part(answer){color:rgb(4,5,6)} pottle-heat::part(words){color:rgb(7,8,9)}',
      )
      document.adoptedStyleSheets = [sheet]
      const colour = (tag: string, inside: string) =>
        getComputedStyle(document.querySelector(tag)!.shadowRoot!.querySelector(inside)!).color
      return [colour('pottle-measure', '.note'), colour('pottle-measure', '.open'), colour('pottle-heat[display=card]', '.words')]
    })
    expect(look).toEqual(['rgb(1, 2, 3)', 'rgb(4, 5, 6)', 'rgb(7, 8, 9)'])
  })

  test('answers anew when its attributes change', async () => {
    const { page } = await open()
    await page.goto(post('seed-cake-offline'))
    await answerOf(page).waitFor()
    await butter(page).evaluate((element) => {
      element.setAttribute('phrase', 'a pottle of cream')
      element.setAttribute('year', '1690')
    })
    await expect.poll(() => seen(answerOf(page))).toMatch(/^about\s1\.9\slitres/)
    await butter(page).evaluate((element) => element.setAttribute('display', 'card'))
    await expect.poll(() => butter(page).getByText('Steps and sources').count()).toBe(1)
  })

  test('reads words that come after it, and shows its phrase where there are none', async () => {
    const { page } = await open()
    await page.goto(post('seed-cake-offline'))
    await answerOf(page).waitFor()
    await page.evaluate(() => {
      const late = document.createElement('pottle-measure')
      late.setAttribute('year', '1690')
      const bare = document.createElement('pottle-heat')
      bare.setAttribute('phrase', 'a gentle oven')
      bare.append('\n')
      document.querySelector('main')!.replaceChildren(late, bare)
      requestAnimationFrame(() => late.append('a pottle of cream'))
    })
    await expect.poll(() => seen(answerOf(page))).toMatch(/^about 1\.9 litres/)
    expect(await page.locator('pottle-heat').getByText('a gentle oven').isVisible()).toBe(true)
  })

  test('with the library in the page asks nobody', async () => {
    const { page, asked, refused } = await open()
    await page.goto(post('seed-cake-offline'))
    await answerOf(page).waitFor()
    expect(asked.filter((url) => !url.startsWith(street.blog.origin))).toEqual([])
    expect(refused).toEqual([])
    expect(await seen(answerOf(page))).toMatch(/^about\s45\d\sg/)
  })

  describe('leaves the text readable', () => {
    const readable = 'Rub a pound of butter (about 450 g) into half a peck of fine flour, put to it a gill of yeast'

    test('where scripts are off', async () => {
      const { page } = await open({ javaScriptEnabled: false })
      await page.goto(post('seed-cake'))
      expect(await firstLine(page)).toContain(readable)
    })

    test('where the script does not come', async () => {
      const { page } = await open()
      await page.route(`${street.api.origin}/embed/pottle.js`, (route) => route.abort())
      await page.goto(post('seed-cake'))
      expect(await firstLine(page)).toContain(readable)
    })

    test('where the browser is too old to make a sheet of style by script', async () => {
      const { page } = await open()
      await page.addInitScript('window.CSSStyleSheet = undefined')
      await page.goto(post('seed-cake'), { waitUntil: 'networkidle' })
      expect(await firstLine(page)).toContain(readable)
    })

    test('where the API is away', async () => {
      const { page } = await open()
      await page.route(`${street.api.origin}/v1/**`, (route) => route.abort())
      await page.goto(post('seed-cake'), { waitUntil: 'networkidle' })
      expect(await firstLine(page)).toContain(readable)
    })

    test('where the policy forbids asking', async () => {
      const { page, refused } = await open()
      await page.goto(`${post('seed-cake')}?mute`, { waitUntil: 'networkidle' })
      await expect.poll(() => refused.join()).toContain('/v1/convert')
      expect(await firstLine(page)).toContain(readable)
    })

    test('while the network is slow, and has the answer when it comes', async () => {
      const { page } = await open()
      let release: () => void = () => {}
      const held = new Promise<void>((free) => {
        release = free
      })
      await page.route(`${street.api.origin}/v1/**`, async (route) => {
        await held
        await route.continue()
      })
      await page.goto(post('seed-cake'))
      await page.locator('pottle-measure:defined').first().waitFor()
      expect(await firstLine(page)).toContain(readable)
      release()
      await expect.poll(() => seen(answerOf(page)), { timeout: 10_000 }).toMatch(/^about\s45\d\sg/)
    })

    test.each([
      ['a problem', 500, 'application/problem+json', '{"detail":"the fault is ours"}'],
      ['what is not JSON', 200, 'text/html', '<p>Sign in to this network</p>'],
      ['what is not an answer', 200, 'application/json', '{"hello":"world"}'],
    ])('where the server answers %s', async (_, status, contentType, body) => {
      const { page } = await open()
      await page.route(`${street.api.origin}/v1/**`, (route) =>
        route.fulfill({ status, contentType, body, headers: { 'access-control-allow-origin': '*' } }),
      )
      const silences = page.waitForEvent('console', (message) => message.text().includes('<pottle-measure>'))
      await page.goto(post('seed-cake'), { waitUntil: 'networkidle' })
      await silences
      expect(await firstLine(page)).toContain(readable)
    })

    test('where the words can not be read', async () => {
      const { page } = await open()
      await page.goto(post('seed-cake'), { waitUntil: 'networkidle' })
      expect(await seen(page.locator('main'))).toContain('It keeps well, and three snoods of patience improve it.')
    })
  })

  test('prints', async () => {
    const { page } = await open()
    await page.goto(post('seed-cake-offline'))
    await answerOf(page).click()
    const paper = await page.pdf({ format: 'A4' })
    expect(paper.length).toBeGreaterThan(10_000)
  })
})

/** Every page for every reader: axe (WCAG 2.2 A and AA), the keyboard alone, a phone, 200 %, paper, and pictures in words. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { describeInBrowser } from './browser.js'
import { findings, overflow } from './looks.js'
import { everyPage, openSite, type Site } from './site.js'

/** A browser on a busy machine is slow, and that is no fault of the page. */
vi.setConfig({ testTimeout: 30_000, hookTimeout: 60_000 })

/** The spacing of text that a reader may set (WCAG 2.2, 1.4.12). */
const spaced = '*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important}p{margin-bottom:2em!important}'

/** Puts a style of the reader's over the page's own. */
const restyle = (page: Page, rules: string): Promise<void> =>
  page.evaluate((rules) => {
    const sheet = new CSSStyleSheet()
    sheet.replaceSync(rules)
    document.adoptedStyleSheets = [sheet]
  }, rules)

/** Pictures that neither say what they show nor keep out of the way of those who can't see them. */
const silentPictures = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const said = (picture: Element): string =>
      (picture.getAttribute('aria-labelledby') ?? '')
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent ?? '')
        .join(' ')
    const top = [...document.querySelectorAll('svg')].filter((picture) => !picture.parentElement?.closest('svg'))
    return top
      .filter((picture) => picture.getAttribute('aria-hidden') !== 'true')
      .filter((picture) => picture.getAttribute('role') !== 'img' || said(picture).length < 40)
      .map((picture) => picture.outerHTML.slice(0, 120))
  })

describeInBrowser('every page', () => {
  let site: Site
  let page: Page
  beforeAll(async () => {
    site = await openSite()
    page = await site.open('/')
  })
  afterAll(() => site.close())

  it.each(everyPage)('%s', async (_, path) => {
    await page.setViewportSize({ width: 1280, height: 900 })
    await page.emulateMedia({ colorScheme: 'light' })
    await page.goto(site.origin + path)
    expect(await findings(page)).toEqual([])
    expect(await silentPictures(page)).toEqual([])
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await findings(page, ['cat.color']), 'by night').toEqual([])
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('form:visible').count(), 'forms on paper').toBe(0)
    await page.emulateMedia({ media: null })
    await restyle(page, spaced)
    expect(await overflow(page), 'with text spaced out').toBeLessThanOrEqual(0)
    await page.setViewportSize({ width: 390, height: 844 })
    expect(await overflow(page), 'with text spaced out on a phone').toBeLessThanOrEqual(0)
    await restyle(page, '')
    await page.setViewportSize({ width: 320, height: 640 })
    expect(await overflow(page), 'on a phone, or at 400 % of a laptop').toBeLessThanOrEqual(0)
    await page.setViewportSize({ width: 640, height: 450 })
    expect(await overflow(page), 'at 200 % of a laptop').toBeLessThanOrEqual(0)
  })

  it.each(everyPage.filter(([name]) => ['a measure', 'a sheet', 'loaves'].includes(name)))('%s prints', async (_, path) => {
    await page.goto(site.origin + path)
    const paper = await page.pdf({ format: 'A4' })
    expect(paper.subarray(0, 5).toString()).toBe('%PDF-')
    const sheets = paper.toString('latin1').match(/\/Type \/Page\b/g) ?? []
    expect(sheets.length).toBeGreaterThan(0)
    expect(sheets.length).toBeLessThanOrEqual(4)
  })

  it('complains of nothing and asks nobody else', () => {
    expect(site.complaints).toEqual([])
  })
})

describeInBrowser('letters twice as large', () => {
  let site: Site
  beforeAll(async () => {
    // What a reader sets in the browser: 32 pixels in place of 16.
    site = await openSite(['--blink-settings=defaultFontSize=32'])
  })
  afterAll(() => site.close())

  it('keep within every page', { timeout: 180_000 }, async () => {
    const page = await site.open('/')
    expect(await page.evaluate(() => Number.parseFloat(getComputedStyle(document.body).fontSize))).toBeGreaterThan(35)
    for (const [name, path] of everyPage) {
      await page.goto(site.origin + path)
      expect(await overflow(page), name).toBeLessThanOrEqual(0)
    }
  })
})

describeInBrowser('the keyboard alone', () => {
  let site: Site
  beforeAll(async () => {
    site = await openSite()
  })
  afterAll(() => site.close())

  it('skips to the page, asks, and chooses a meaning', async () => {
    const page = await site.open('/')
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the page')
    await page.keyboard.press('Enter')
    await page.waitForURL('**/#*')
    // A jump within the page loads nothing anew.
    await page.evaluate(() => Object.assign(window, { kept: true }))
    for (let i = 0; i < 20; i++) {
      await page.keyboard.press('Tab')
      if (await page.evaluate(() => document.activeElement?.id === 'measure-phrase')) break
    }
    expect(await page.evaluate(() => 'kept' in window)).toBe(true)
    await page.keyboard.type('a pottle of cream')
    await page.keyboard.press('Tab')
    await page.keyboard.type('1690')
    await page.keyboard.press('Enter')
    await page.locator('.answer').waitFor()
    for (let i = 0; i < 30; i++) {
      await page.keyboard.press('Tab')
      if (await page.evaluate(() => document.activeElement?.textContent === 'half an ale gallon')) break
    }
    await page.keyboard.press('Enter')
    await page.waitForURL('**standard=pottle.ale*')
    await page.context().close()
  })

  it('reaches everything that can be pressed, sees where it is, and is never caught', async () => {
    const page = await site.open('/measure?phrase=a+pottle+of+cream&year=1690')
    const pressable = await page.locator('a[href]:visible, button:visible, input:visible, select:visible, summary:visible').count()
    const seen = new Set<string>()
    let unmarked = 0
    for (let i = 0; i < pressable + 5; i++) {
      await page.keyboard.press('Tab')
      const [at, outline] = await page.evaluate(() => {
        const element = document.activeElement!
        const all = [...document.querySelectorAll('*')]
        return [element === document.body ? '' : String(all.indexOf(element)), getComputedStyle(element).outlineStyle]
      })
      if (at === '') break
      seen.add(at!)
      if (outline === 'none') unmarked++
    }
    expect(seen.size).toBe(pressable)
    expect(unmarked).toBe(0)
    await page.context().close()
  })
})

describeInBrowser('pictures', () => {
  let site: Site
  beforeAll(async () => {
    site = await openSite()
  })
  afterAll(() => site.close())

  it.each([
    ['/measure?phrase=a+pottle+of+cream&year=1690', 'half an ale gallon'],
    ['/heat?phrase=a+slack+oven&year=1690', 'a slow oven'],
    ['/measures/pint', 'an eighth of a wine gallon'],
    ['/loaves', 'Best estimates run from'],
    ['/oven', 'degrees Celsius'],
    ['/heats', 'slow'],
  ])('%s says its picture in words', async (path, words) => {
    const page = await site.open(path)
    const picture = page.getByRole('img').first()
    const said = await picture.evaluate((element) => {
      const ids = (element.getAttribute('aria-labelledby') ?? '').split(' ')
      return ids.map((id) => document.getElementById(id)?.textContent ?? '').join(' ')
    })
    expect(said).toContain(words)
    await page.context().close()
  })

  it('are drawn in the colours that a reader has set', async () => {
    const page = await site.open('/measure?phrase=a+pottle+of+cream&year=1690', { forcedColors: 'active', colorScheme: 'dark' })
    const inks = await page.locator('.band').evaluate((picture) => {
      const [circle, letter] = [picture.querySelector('circle')!, picture.querySelector('circle + text')!]
      return [getComputedStyle(circle).fill, getComputedStyle(letter).fill, getComputedStyle(document.body).backgroundColor]
    })
    expect(inks[0], 'a letter stands on the paper of the page').toBe(inks[2])
    expect(inks[0]).not.toBe(inks[1])
    await page.context().close()
  })

  it('stand still', async () => {
    const page = await site.open('/', { reducedMotion: 'reduce' })
    const moving = await page.evaluate(() => document.getAnimations().length)
    expect(moving).toBe(0)
    expect(await page.evaluate(() => getComputedStyle(document.querySelector('.skip')!).transitionDuration)).toBe('0s')
    await page.context().close()
  })
})

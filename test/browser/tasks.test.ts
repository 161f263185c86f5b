/** The three things to do, as a cook does them: with scripts and without, with slips of the pen, and with the server gone. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { describeInBrowser } from './browser.js'
import { openSite, receipt, type Site } from './site.js'

/** A browser on a busy machine is slow, and that is no fault of the page. */
vi.setConfig({ testTimeout: 30_000, hookTimeout: 60_000 })

/** Fills in a form of the home page, of which there are three. */
async function fill(page: Page, form: string, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, value] of Object.entries(fields)) {
    const field = page.locator(`#${form}-${name}`)
    if ((await field.evaluate((element) => element.tagName)) === 'SELECT') await field.selectOption(value)
    else await field.fill(value)
  }
}

const press = (page: Page, form: string): Promise<void> => page.locator(`form:has(#${form}-year) button[type=submit]`).click()
const read = (page: Page, selector: string): Promise<string | null> => page.locator(selector).first().textContent()

describeInBrowser.each([
  ['with scripts', true],
  ['without scripts', false],
] as const)('the three tasks %s', (_, javaScriptEnabled) => {
  let site: Site
  const start = (path = '/') => site.open(path, { javaScriptEnabled })

  beforeAll(async () => {
    site = await openSite()
  })
  afterAll(() => site.close())

  it('turns a measure into a modern one', async () => {
    const page = await start()
    await fill(page, 'measure', { phrase: 'a pottle of cream', year: '1690', place: 'london' })
    await press(page, 'measure')
    await page.waitForURL('**/measure?*')
    expect(await read(page, '.answer')).toMatch(/^about 1\.9 litres/)
    expect(new URL(page.url()).searchParams.get('place')).toBe('london')
    expect(await page.locator('#measure-phrase').inputValue()).toBe('a pottle of cream')
    await page.getByRole('link', { name: 'half an ale gallon' }).click()
    await page.waitForURL('**standard=pottle.ale*')
    expect(await read(page, '.answer')).toMatch(/^about 2\.3 litres/)
    await page.getByRole('link', { name: 'Weigh every meaning again' }).click()
    await page.waitForURL((url) => !url.searchParams.has('standard'))
    await page.context().close()
  })

  it('looks up an oven heat', async () => {
    const page = await start()
    await fill(page, 'heat', { phrase: 'a slack oven', year: '1690' })
    await press(page, 'heat')
    await page.waitForURL('**/heat?*')
    expect(await read(page, '.answer')).toMatch(/^slow oven, about 140\s°C/)
    expect(await page.locator('.settings').textContent()).toContain('mark 1')
    await page.context().close()
  })

  it('makes a working sheet, and keeps it at an address of its own', async () => {
    const page = await start()
    await fill(page, 'sheet', { text: receipt, title: 'A pudding of the Hall', year: '1690' })
    await page.getByText('How much to make, and in what').click()
    await fill(page, 'sheet', { scale: '1/2' })
    await press(page, 'sheet')
    await page.waitForURL('**/sheet?*')
    const bench = page.locator('.bench tbody tr')
    expect(await bench.count()).toBeGreaterThanOrEqual(4)
    expect(await bench.first().textContent()).toContain('240 ml')
    expect(await page.locator('.receipt').textContent()).toContain('half a pound of fine sugar')
    await page.locator('[id="sheet-line.1"]').selectOption('pint.ale')
    await press(page, 'sheet')
    await page.waitForURL('**line.1=pint.ale*')
    expect(await bench.first().textContent()).toContain('290 ml')
    await page.reload()
    expect(await bench.first().textContent()).toContain('290 ml')
    await page.context().close()
  })

  it('takes a receipt too long for an address', async () => {
    const page = await start('/sheet')
    await fill(page, 'sheet', { text: `${receipt}\n`.repeat(60), year: '1690' })
    await press(page, 'sheet')
    await page.locator('.bench').waitFor()
    expect(new URL(page.url()).search).toBe('')
    await page.context().close()
  })

  it('keeps what was typed, marks the words and says what to try', async () => {
    const page = await start()
    await fill(page, 'measure', { phrase: 'a pottal of glorphed cream', year: '16900', place: 'york' })
    await press(page, 'measure')
    await page.locator('.faults').waitFor()
    expect(await page.locator('#measure-phrase').inputValue()).toBe('a pottal of glorphed cream')
    expect(await page.locator('#measure-year').inputValue()).toBe('16900')
    expect(await page.locator('#measure-place').inputValue()).toBe('york')
    expect(await page.locator('#measure-year').getAttribute('aria-invalid')).toBe('true')
    await fill(page, 'measure', { phrase: 'a hogglehead of ale', year: '1690' })
    await press(page, 'measure')
    await page.locator('.faults .unread').waitFor()
    expect(await page.locator('.faults .unread').textContent()).toMatch(/^hogglehead/)
    await page.locator('.faults').getByRole('link', { name: 'a hogshead of ale' }).click()
    await page.locator('.answer').waitFor()
    await page.context().close()
  })

  it('offers a working sheet where several measures were typed as one', async () => {
    const page = await start()
    await fill(page, 'measure', { phrase: 'a pint of cream, ten eggs and half a pound of sugar', year: '1690' })
    await press(page, 'measure')
    await page.getByRole('button', { name: 'Make a working sheet of them' }).click()
    await page.locator('.bench').waitFor()
    expect(await page.locator('.bench tbody tr').count()).toBe(3)
    expect(new URL(page.url()).searchParams.get('year')).toBe('1690')
    await page.context().close()
  })

  it('shows words that were not understood beside the answer', async () => {
    const page = await start('/measure?phrase=a+pint+of+zorble&year=1750')
    expect(await page.locator('.read .unread').textContent()).toMatch(/^zorble/)
    expect(await read(page, '.answer')).toMatch(/ml/)
    await page.context().close()
  })

  it('complains of nothing and asks nobody else', () => {
    expect(site.complaints).toEqual([])
  })
})

describeInBrowser('a fault', () => {
  let site: Site
  beforeAll(async () => {
    site = await openSite()
  })
  afterAll(() => site.close())

  it('is put before the reader, and its link leads to the field', async () => {
    const page = await site.open('/measure')
    await fill(page, 'measure', { phrase: 'a pint of cream', year: 'soon' })
    await page.locator('#measure-year').press('Enter')
    await page.locator('.faults').waitFor()
    const focused = () => page.evaluate(() => document.activeElement?.id || document.activeElement?.className)
    expect(await focused()).toBe('faults')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await expect.poll(focused).toBe('measure-year')
    await page.context().close()
  })
})

describeInBrowser('scripts', () => {
  let site: Site
  beforeAll(async () => {
    site = await openSite()
  })
  afterAll(() => site.close())

  it('answer without loading the page anew, and put the reader at the answer', async () => {
    const page = await site.open('/')
    await page.evaluate(() => Object.assign(window, { kept: true }))
    await fill(page, 'measure', { phrase: 'half a peck of flour', year: '1750' })
    await page.locator('#measure-phrase').press('Enter')
    await page.locator('.answer').waitFor()
    expect(await page.evaluate(() => 'kept' in window)).toBe(true)
    expect(await page.evaluate(() => document.activeElement?.hasAttribute('data-answer'))).toBe(true)
    expect(await page.title()).toContain('half a peck of flour')
    expect(await page.locator('.masthead [aria-current]').textContent()).toBe('Measure')
    await page.goBack()
    await page.locator('#sheet-text').waitFor()
    await page.context().close()
  })

  it('keep what was typed when the server is gone, and say so', async () => {
    const page = await site.open('/measure')
    await page.context().setOffline(true)
    await fill(page, 'measure', { phrase: 'a pint of ale', year: '1700' })
    await press(page, 'measure')
    await page.getByRole('status').filter({ hasText: 'could not be reached' }).waitFor()
    expect(await page.locator('#measure-phrase').inputValue()).toBe('a pint of ale')
    await page.context().setOffline(false)
    await press(page, 'measure')
    await page.locator('.answer').waitFor()
    await page.context().close()
  })

  it('keep what was typed when the server will not answer, and say why', async () => {
    const page = await site.open('/measure')
    await page.route('**/measure?*', (route) =>
      route.fulfill({ status: 429, contentType: 'text/html', body: '<!doctype html><main id="main"><h1>Too many requests</h1></main>' }),
    )
    await fill(page, 'measure', { phrase: 'a pint of ale', year: '1700' })
    await press(page, 'measure')
    await page.getByRole('status').filter({ hasText: 'Too many requests. What you typed is still here.' }).waitFor()
    expect(await page.locator('#measure-phrase').inputValue()).toBe('a pint of ale')
    await page.context().close()
  })

  it('copy a citation at a press', async () => {
    const page = await site.open('/measure?phrase=a+pottle+of+cream&year=1690', { permissions: ['clipboard-read', 'clipboard-write'] })
    const figure = page.locator('figure.copyable').first()
    await figure.getByRole('button', { name: 'Copy' }).click()
    await figure.getByRole('button', { name: 'Copied' }).waitFor()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('5 Anne c. 27')
    await page.context().close()
  })
})

/** What a page costs its reader: how much is sent, how often is asked, and that nothing moves while it comes. */
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { describeInBrowser } from './browser.js'
import { everyPage, openSite, type Site } from './site.js'

/** A browser on a busy machine is slow, and that is no fault of the page. */
vi.setConfig({ testTimeout: 30_000, hookTimeout: 60_000 })

/** Compressed, in bytes. */
const most = { page: 20_000, style: 6_000, script: 2_500, font: 30_000 } as const

const compressed = async (address: string): Promise<number> => gzipSync(Buffer.from(await (await fetch(address)).arrayBuffer())).length

describeInBrowser('a page', () => {
  let site: Site
  beforeAll(async () => {
    site = await openSite()
  })
  afterAll(() => site.close())

  it('has one style, one script and two faces, kept for ever', async () => {
    const page = await site.open('/')
    const asked = await page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name))
    const ofType = (ending: string) => asked.filter((address) => address.endsWith(ending))
    expect([ofType('.css').length, ofType('.js').length, ofType('.woff2').length]).toEqual([1, 1, 2])
    for (const address of asked) expect((await fetch(address)).headers.get('cache-control')).toContain('immutable')
    expect(await compressed(ofType('.css')[0]!)).toBeLessThan(most.style)
    expect(await compressed(ofType('.js')[0]!)).toBeLessThan(most.script)
    for (const face of ofType('.woff2')) expect(await compressed(face)).toBeLessThan(most.font)
    await page.context().close()
  })

  it('is small', async () => {
    const sizes = await Promise.all(everyPage.map(async ([name, path]) => [name, await compressed(site.origin + path)] as const))
    expect(sizes.filter(([, size]) => size > most.page)).toEqual([])
  })

  it('is set in its own type, and does not move while it comes', async () => {
    const page = await site.open('/')
    await page.addInitScript(() => {
      Object.assign(window, { moved: 0 })
      const add = (list: PerformanceObserverEntryList) => {
        for (const shift of list.getEntries()) Object.assign(window, { moved: Reflect.get(window, 'moved') + Reflect.get(shift, 'value') })
      }
      new PerformanceObserver(add).observe({ type: 'layout-shift', buffered: true })
    })
    for (const [name, path] of everyPage) {
      await page.goto(site.origin + path, { waitUntil: 'networkidle' })
      expect(await page.evaluate(() => Reflect.get(window, 'moved')), name).toBe(0)
    }
    expect(await page.evaluate(() => document.fonts.check('1em "Libre Caslon Text"'))).toBe(true)
    await page.context().close()
  }, 120_000)
})

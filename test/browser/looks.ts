/** What every page and embed is held to: axe's rules, and the width of what it is read on. */
import axe from 'axe-core'
import type { Page } from 'playwright-core'

const wcag = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** What axe finds, through shadow roots too, one line a finding. It is evaluated from outside, where a page's own policy forbids scripts. */
export async function findings(page: Page, tags: readonly string[] = wcag): Promise<string[]> {
  // Axe leaves out the size of targets (WCAG 2.2, 2.5.8) unless it is asked for.
  const options = { runOnly: tags, rules: { 'target-size': { enabled: true } } }
  const { violations } = (await page.evaluate(`${axe.source}\naxe.run(document, ${JSON.stringify(options)})`)) as axe.AxeResults
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`))
}

/** How far the page reaches over the right edge, in CSS pixels. */
export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

/** Each form of answer, read by a library that others wrote for it. */
import { plugins } from '@citation-js/core'
import '@citation-js/plugin-bibtex'
import { parseXml } from '@rgrove/parse-xml'
import { parse } from 'csv-parse/sync'
import { HtmlValidate, StaticConfigLoader } from 'html-validate'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'

const page = new HtmlValidate(new StaticConfigLoader({ root: true, extends: ['html-validate:standard', 'html-validate:a11y'] }))

const readJson = (text: string): readonly unknown[] => [JSON.parse(text)]

/** Every line ends in a line feed, the last one too (NDJSON specification, section 3.1). */
function readLines(text: string): readonly unknown[] {
  if (!text.endsWith('\n')) throw new Error('the last line has no end')
  return text
    .slice(0, -1)
    .split('\n')
    .map((line) => JSON.parse(line))
}

/** A text that a check has found to be what it is called. */
const checked =
  (check: (text: string) => unknown) =>
  async (text: string): Promise<readonly unknown[]> => {
    await check(text)
    return [text]
  }

/**
 * How an answer is read, by its media type: to the values that its schema is of.
 * Each throws, or fails, where the text is not what the media type says.
 */
export const forms: Readonly<Record<string, (text: string) => readonly unknown[] | Promise<readonly unknown[]>>> = {
  'application/json': readJson,
  'application/problem+json': readJson,
  'application/ld+json': readJson,
  'application/vnd.citationstyles.csl+json': readJson,
  'application/x-ndjson': readLines,
  'text/html': checked(async (text) => {
    const { results } = await page.validateString(text)
    const faults = results.flatMap(({ messages }) => messages.map(({ ruleId, message, line }) => `${line}, ${ruleId}: ${message}`))
    if (faults.length > 0) throw new Error(faults.join('; '))
  }),
  'text/markdown': checked((text) => {
    const [first, ...rest] = unified().use(remarkParse).use(remarkGfm).parse(text).children
    if (first?.type !== 'heading' || !rest.some(({ type }) => type === 'table')) throw new Error('no heading with a table under it')
    if ([first, ...rest].some(({ type }) => type === 'html')) throw new Error('HTML within Markdown')
  }),
  // As many cells in each row as in the first.
  'text/csv': checked((text) => {
    if (parse(text, { columns: true }).length === 0) throw new Error('no rows')
  }),
  'text/plain': checked((text) => {
    if (!/^\S.*\n$/s.test(text)) throw new Error('no lines of text')
  }),
  'image/svg+xml': checked((text) => {
    const { root } = parseXml(text)
    if (root?.name !== 'svg' || root.attributes.xmlns !== 'http://www.w3.org/2000/svg') throw new Error('no picture')
  }),
  'application/x-bibtex': checked((text) => {
    const entries = plugins.input.chain(text)
    const begun = text.match(/^@/gm)?.length ?? 0
    if (begun === 0 || entries.length !== begun) throw new Error(`${entries.length} of ${begun} entries can be read`)
  }),
}

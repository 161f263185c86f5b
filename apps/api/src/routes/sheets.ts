import { citeBibtex, findSource, type Sheet, sheetToCsv, sheetToHtml, sheetToJsonLd, sheetToMarkdown, workSheet } from '@pottle/core'
import * as z from 'zod'
import * as contract from '../contract/index.js'
import { route } from '../http/route.js'

/** The page brings its own style and nothing else. */
const pageHeaders = { 'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'" }

/** The sheet in each form that can be asked for. */
const forms: Readonly<Record<string, (sheet: Sheet) => unknown>> = {
  'application/json': (sheet) => sheet,
  'text/markdown': sheetToMarkdown,
  'text/html': sheetToHtml,
  'application/ld+json': sheetToJsonLd,
  'text/csv': sheetToCsv,
  'application/x-bibtex': ({ sources }) => sources.map(({ id }) => citeBibtex(findSource(id)!)).join('\n'),
}

/** `POST /v1/sheets` with `{"text": "Take a pottle of cream …", "year": 1690, "plan": {"scale": "1/2"}}` */
export const sheetsRoute = route({
  method: 'post',
  path: '/v1/sheets',
  operation: 'workSheet',
  tag: 'Receipts',
  summary: 'Turn a whole receipt into a working sheet',
  description:
    'Scaled to the plan, with what to measure off, totals with bands, the oven, the order of work, cautions and sources. As JSON, Markdown, a page that prints, schema.org Recipe (JSON-LD), CSV, or the sources as BibTeX, by the Accept header.',
  query: z.strictObject({}),
  body: {
    description: 'The receipt and the plan.',
    media: {
      'application/json': {
        schema: contract.SheetRequest,
        examples: {
          'A receipt by halves': {
            title: 'A cream tart for the hall',
            text: 'Take a quart of cream, the yolks of viij eggs and a quarter of a pound of sugar. Bake it in a slack oven three quarters of an hour.',
            year: 1690,
            plan: { scale: '1/2', units: 'metric' },
          },
        },
      },
    },
  },
  answer: {
    description: 'The sheet.',
    media: {
      'application/json': { schema: contract.Sheet },
      'text/markdown': { schema: z.string() },
      'text/html': { schema: z.string(), headers: pageHeaders },
      'application/ld+json': { schema: z.looseObject({ '@context': z.string(), '@type': z.string(), name: z.string() }) },
      'text/csv': { schema: z.string() },
      'application/x-bibtex': { schema: z.string() },
    },
  },
  problems: ['no-answer'],
  example: '',
  handle: async ({ media, read }) => {
    const { text, ...options } = await read(contract.SheetRequest)
    return forms[media]!(workSheet(text, options))
  },
})

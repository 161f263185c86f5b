/** How each kind of problem is brought about from outside. */
import { createApp } from '@pottle/api'
import type { Operation } from './document.js'
import { initOf, type Request } from './requests.js'

type App = ReturnType<typeof createApp>

const page = 'text/html'

/** One way to go wrong: what is asked in place of a request that is right, and of which server. */
interface Wrong {
  readonly address?: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body?: string | ReadableStream
  readonly app?: App
}

const quiet = { logFault: () => {} }
const usual = createApp(quiet)
const impatient = createApp({ ...quiet, bodySeconds: 0.01 })
const stopping = createApp({ ...quiet, ready: () => false })
const broken = createApp({
  ...quiet,
  ready: () => {
    throw new Error('the cellar is flooded')
  },
})
const spent = createApp({ ...quiet, requestsPerMinute: 1 })
await spent.request('/v1/measures')

/** What no example of the document can tell: words that mean nothing, and questions without an answer. By kind and operation, as a query or a body. */
const questions: Readonly<Record<string, Readonly<Record<string, string | object>>>> = {
  unreadable: {
    'GET /v1/convert': '?phrase=once+upon+a+time',
    'POST /v1/convert': { phrase: 'once upon a time' },
    'GET /v1/values': '?phrase=once+upon+a+time',
    'POST /v1/values': { phrase: 'once upon a time' },
    'GET /v1/oven-heats': '?phrase=the+blue+cow',
    'GET /v1/sugar-heights': '?phrase=tomato',
    'GET /v1/liquid-heats': '?phrase=tomato',
    'POST /v1/brick-oven': { start: 'a blue oven' },
    'GET /v1/brick-oven.svg': '?start=a+blue+oven',
  },
  'no-answer': {
    'GET /v1/convert': '?phrase=a+penny+white+loaf&year=1905',
    'POST /v1/convert': { phrase: 'a penny white loaf', year: 1905 },
    'GET /v1/values': '?phrase=a+penny+white+loaf&year=1905',
    'POST /v1/values': { phrase: 'a penny white loaf', year: 1905 },
    'POST /v1/sheets': { text: 'Bake it well.', plan: { dish: 'small-tart' } },
    'POST /v1/brick-oven': { start: 150, bakes: [{ name: 'bread', heat: 'as hot as for bread' }] },
    'POST /v1/bake-plans': {
      food: 'custard',
      from: { shape: 'tart', size: { diameter: 70, depth: 25 }, minutes: 30, celsius: 20 },
      to: { shape: 'pie', size: { diameter: 220, depth: 35 } },
    },
    'GET /v1/loaves': '?year=1905',
    'GET /v1/loaves.svg': '?year=1905',
  },
}

function question(kind: string, { method, path }: Operation): Wrong | undefined {
  const asked = questions[kind]?.[`${method} ${path}`]
  if (asked === undefined) return undefined
  return typeof asked === 'string' ? { address: path + asked } : { body: JSON.stringify(asked) }
}

/** By kind: what to ask, to be told so in a media type; nothing where the kind can't be had of that operation. */
const wrongs: Readonly<Record<string, (operation: Operation, request: Request, media: string) => Wrong | undefined>> = {
  'bad-parameter': (_, { address }) => ({ address: `${address}${address.includes('?') ? '&' : '?'}nonesuch=1` }),
  'bad-body': () => ({ body: '{"nonesuch":' }),
  'not-found': ({ path }) => ({ address: path.replace(/\{\w+\}/, 'nonesuch') }),
  'not-acceptable': (_, __, media) => ({ headers: { accept: media === page ? page : 'image/png' } }),
  // Nothing ever comes of this body.
  'too-slow': () => ({ app: impatient, body: new ReadableStream() }),
  'too-large': () => ({ body: ' '.repeat(2 * 1024 * 1024 + 1) }),
  'unsupported-media-type': () => ({ headers: { 'content-type': 'text/csv' } }),
  unreadable: (operation) => question('unreadable', operation),
  'no-answer': (operation) => question('no-answer', operation),
  'too-many-requests': () => ({ app: spent }),
  draining: () => ({ app: stopping }),
  // No request is known to find a fault of ours; the one check that a host brings itself can be made to have one.
  internal: ({ path }) => (path === '/readyz' ? { app: broken } : undefined),
}

/** Asks so that a problem of a kind comes back, in a media type; nothing where that can't be done. */
export function askWrong(operation: Operation, request: Request, kind: string, media: string): (() => Promise<Response>) | undefined {
  const wrong = wrongs[kind]?.(operation, request, media)
  if (!wrong) return undefined
  const { address = request.address, headers, body, app = usual } = wrong
  // As browsers ask, or as programs do.
  const right = initOf(operation, request, media === page ? `${page}, */*;q=0.5` : '*/*')
  const init = { ...right, headers: { ...right.headers, ...headers }, ...(body === undefined ? {} : { body, duplex: 'half' }) }
  return async () => app.request(address, init)
}

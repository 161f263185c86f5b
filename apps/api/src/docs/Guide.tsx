import { Entry } from '../pages/frame/index.js'
import { Sample } from './Sample.js'

const inBrowser = (origin: string): string => `const query = new URLSearchParams({ phrase: 'a pottle of cream', year: '1690' })
const response = await fetch('${origin}/v1/convert?' + query)
const answer = await response.json()
if (!response.ok) throw new Error(answer.detail)

answer.text         // the line that a cook reads
answer.value        // { quantity, unit, low, best, high, coverage }
answer.senses       // what the measure may have been, with likelihoods
answer.sources      // who says so`

const typed = (origin: string): string => `npx openapi-typescript ${origin}/openapi.json -o pottle.d.ts
npm install openapi-fetch

import createClient from 'openapi-fetch'
import type { paths } from './pottle.js'

// Some routes answer in several forms: these two are those that a program reads.
const pottle = createClient<paths, 'application/json' | 'application/problem+json'>({ baseUrl: '${origin}' })
const { data, error } = await pottle.GET('/v1/convert', { params: { query: { phrase: 'a pottle of cream' } } })`

const stream = (origin: string): string => `printf '%s\\n' '{"phrase":"a pottle of cream","year":1690}' '{"phrase":"iij pyntes of ale"}' |
  curl --no-buffer -H 'Content-Type: application/x-ndjson' --data-binary @- ${origin}/v1/convert`

/** What a client should know before it reads about the routes. */
export function Guide({ origin }: { origin: string }) {
  return (
    <>
      <Entry id="start" title="In ten minutes" about={<p>No key, no account. Pages of any origin may ask.</p>}>
        <Sample title="In a terminal" text={`curl '${origin}/v1/convert?phrase=a+pottle+of+cream&year=1690&place=london'`} />
        <Sample title="In a page or in Node" text={inBrowser(origin)} />
        <Sample title="With types, generated from the OpenAPI document" text={typed(origin)} />
        <p>
          The document is <a href="/openapi.json">/openapi.json</a> (OpenAPI 3.1). Years are EDTF level 1: <code>1690</code>,{' '}
          <code>1690~</code> (about), <code>169X</code>, <code>1650/1700</code>. Places are slugs such as <code>england</code> (where none
          is given), <code>london</code>, <code>scotland</code>, <code>america</code>. A band holds nine times in ten, unless{' '}
          <code>coverage</code> says otherwise.
        </p>
      </Entry>
      <Entry id="many" title="Many at once" about={<p>One that fails does not spoil the rest.</p>}>
        <p>
          POST an array of up to 1,000 to <code>/v1/convert</code>, or a stream of NDJSON of any length: a line goes in, a line comes out,
          and the server holds no more than one at a time. Where one fails, a problem stands in its place, with its <code>index</code> or
          its <code>line</code>.
        </p>
        <Sample title="A stream" text={stream(origin)} />
      </Entry>
      <Entry id="problems" title="When it goes wrong" about={<p>Problem details, RFC 9457.</p>}>
        <p>
          The media type is <code>application/problem+json</code>. <code>type</code> is an address that explains the{' '}
          <a href="/problems">problem</a>; <code>errors</code> names each query parameter (<code>parameter</code>) or place in the body (
          <code>pointer</code>, RFC 6901) that was wrong, and says what would be right. Words that can't be read are a 422 with what was{' '}
          <code>understood</code>, what was left <code>unread</code>, and the <code>nearest</code> names.
        </p>
      </Entry>
      <Entry id="http" title="Caches, limits, ids" about={<p>What every answer has in common.</p>}>
        <p>
          Answers to GET carry one strong <code>ETag</code> for the release and may be kept for a day; send it back as{' '}
          <code>If-None-Match</code> and a 304 comes before any work is done. Every answer has an <code>X-Request-Id</code>, yours where you
          send one of up to 64 letters, digits, points and hyphens. A server may limit requests; it then says so in <code>RateLimit</code>,{' '}
          <code>RateLimit-Policy</code> and, with a 429, <code>Retry-After</code>. Bodies may have 2 MiB. Unknown parameters and fields are
          refused, so that a slip of the pen does not go unseen.
        </p>
      </Entry>
    </>
  )
}

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
          <code>1690~</code> (about), <code>169X</code>, <code>1650/1700</code>. The place is <code>england</code> where none is given;{' '}
          <a href="#names">all places, units and other names</a> are listed below. A band holds nine times in ten, unless{' '}
          <code>coverage</code> says otherwise.
        </p>
      </Entry>
      <Entry id="many" title="Many at once" about={<p>One that fails does not spoil the rest.</p>}>
        <p>
          POST an array of up to 1,000 to <code>/v1/convert</code>, or a stream of NDJSON of any length, of which the server holds no more
          than a line at a time. Answers come in the order of what was sent. Where one fails, a problem stands in its place, with its{' '}
          <code>index</code> from 0 or its <code>line</code> from 1: a problem has a <code>type</code>, an answer has none. A line may have
          65,536 characters; blank lines are counted, but not answered. Either way it is one request.
        </p>
        <Sample title="A stream" text={stream(origin)} />
      </Entry>
      <Entry id="problems" title="When it goes wrong" about={<p>Problem details, RFC 9457.</p>}>
        <p>
          The media type is <code>application/problem+json</code>. <code>type</code> is the path on this server of a page that explains the{' '}
          <a href="/problems">problem</a>; <code>errors</code> names each query parameter (<code>parameter</code>) or place in the body (
          <code>pointer</code>, RFC 6901) that was wrong, and says what would be right. Words that can't be read are a 422 with what was{' '}
          <code>understood</code>, what was left <code>unread</code>, and the <code>nearest</code> names.
        </p>
        <p>
          No request changes anything, so that any may be sent twice, a POST too. Send it again after a 408, a 503 or a connection that
          broke, waiting longer each time; after a 429 when <code>Retry-After</code> says. Any other problem comes again until the request
          is changed.
        </p>
      </Entry>
      <Entry id="http" title="Caches, limits, ids" about={<p>What every answer has in common.</p>}>
        <p>
          An answer to GET may be kept for a day, as <code>Cache-Control</code> says, and so may a problem that the same request would have
          again; answers to POST are not to be kept. With an answer comes an <code>ETag</code> that changes with each release. Send it back,
          as <code>If-None-Match</code>, with a request whose answer you still have: a 304 says that it holds. That is said before any work
          is done, and so to wrong requests too. Take the tag as it comes: it differs by media type, and is weak where the answer is
          compressed.
        </p>
        <p>
          An answer to a phrase has some 6 kB, and 2 kB for a client that sends <code>Accept-Encoding: gzip</code>; <code>/v1/values</code>{' '}
          gives the value, the line, the notes and the cautions alone, in half a kB. Streams are sent uncompressed, and requests must be.
          Bodies may have 2 MiB, an address and its headers together 16 kB, or less where a proxy stands before the server.
        </p>
        <p>
          A server may limit how many requests it answers; it then says so in <code>RateLimit</code>, <code>RateLimit-Policy</code> and,
          with a 429, <code>Retry-After</code>. A request for an address is answered with an <code>X-Request-Id</code>: yours where you send
          one of up to 64 letters, digits, points, hyphens and underscores. A page of another origin may send <code>Accept</code>,{' '}
          <code>Content-Type</code>, <code>If-None-Match</code> and <code>X-Request-Id</code>, no other header and no credentials. Unknown
          parameters and fields are refused, so that a slip of the pen does not go unseen.
        </p>
      </Entry>
      <Entry id="versions" title="What may change" about={<p>And what will not.</p>}>
        <p>
          Under <code>/v1</code>, routes, parameters and fields may be added, so pass over fields that you do not know; none is renamed,
          removed or given another meaning. Figures, likelihoods and sentences change as the tables are corrected: each answer says by{' '}
          <code>dataset</code> which tables it was worked out from. The version of the software is in <code>/healthz</code> and in{' '}
          <code>/openapi.json</code>. Match problems by <code>type</code> and not by their words.
        </p>
      </Entry>
    </>
  )
}

import type { Context } from 'hono'
import type { StatusCode } from 'hono/utils/http-status'
import { prefersPage } from '../http/negotiate.js'
import { type Problem, problemKinds } from '../http/problem.js'
import { keepRequestId } from '../http/requestId.js'
import { type Headers, isPassing, respond, respondWithProblem } from '../http/respond.js'
import { contentPolicy, Entry, Page } from '../pages/frame/index.js'
import { written } from './page.js'
import { Words } from './words.js'

const adviceFor = (type: string): string | undefined =>
  Object.entries(problemKinds).find(([kind]) => type === `/problems/${kind}`)?.[1].advice

const sentence = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}${/[.?!]$/.test(text) ? '' : '.'}`

function ProblemPage({ problem, id }: { problem: Problem; id: string }) {
  const { type, title, status, detail } = problem
  return (
    <Page title={title} at={type}>
      <Entry lead title={title} about={<p>Status {status}</p>}>
        <p>{sentence(detail)}</p>
        <p>
          <Words text={adviceFor(type)} />
        </p>
        <p>
          <a href="/">Begin again at the first page</a>, or read of <a href="/problems">problems and their remedies</a>.
        </p>
        <p class="small quiet">
          Request <code>{id}</code>
        </p>
      </Entry>
    </Page>
  )
}

/** Addresses for programs alone: whoever asks there gets problem details, whatever the Accept header has beside them. */
const forPrograms = (path: string): boolean => path.startsWith('/v1/')

/**
 * Tells a problem in the form that suits whoever asked: as a page to a browser that was led astray, else as problem details. The status is the
 * same.
 *
 * @param own headers that belong to the problem
 */
export function tellProblem(context: Context, problem: Problem, own: Headers = {}): Response {
  if (forPrograms(context.req.path)) return respondWithProblem(context, problem, own)
  const form = { vary: 'Accept', ...own }
  if (!prefersPage(context)) return respondWithProblem(context, problem, form)
  const page = written(<ProblemPage problem={problem} id={keepRequestId(context)} />)
  return respond(context, page, problem.status as StatusCode, {
    ...form,
    'content-type': 'text/html; charset=utf-8',
    'content-security-policy': contentPolicy,
    'cache-control': isPassing(problem) ? 'no-store' : 'public, max-age=600',
  })
}

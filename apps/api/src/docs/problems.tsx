import * as z from 'zod'
import { ProblemKind } from '../contract/index.js'
import { type KindOfProblem, ProblemError, problem, problemKinds } from '../http/problem.js'
import { type Input, type Route, route } from '../http/route.js'
import { contentPolicy, Entry, Page } from '../pages/frame/index.js'
import { written } from './page.js'
import { Sample } from './Sample.js'
import { Words } from './words.js'

interface Kind extends KindOfProblem {
  readonly type: string
}

const kinds: readonly Kind[] = Object.entries(problemKinds).map(([id, kind]) => ({ type: `/problems/${id}`, ...kind }))

function Explained({ kind: { type, status, title, cause, advice, example } }: { kind: Kind }) {
  const { detail, ...rest } = example
  return (
    <Entry title={<a href={type}>{title}</a>} about={<p>Status {status}</p>} id={type.replace('/problems/', '')}>
      <p>{cause}</p>
      <p>
        <Words text={advice} />
      </p>
      <Sample title="A case" text={JSON.stringify({ type, title, status, detail, ...rest }, null, 2)} />
    </Entry>
  )
}

function Explanation({ title, shown }: { title: string; shown: readonly Kind[] }) {
  return (
    <Page title={title} at="/problems">
      <div class="opening">
        <h1>{shown.length === 1 ? 'A problem and its remedy' : 'Problems and their remedies'}</h1>
        <p>
          What goes wrong is told as problem details (RFC 9457): <code>type</code> is the address of this page. See also{' '}
          <a href="/problems">all problems</a> and <a href="/docs">the API</a>.
        </p>
      </div>
      {shown.map((kind) => (
        <Explained kind={kind} />
      ))}
    </Page>
  )
}

const json = 'application/json'
const html = 'text/html'
const page = { schema: z.string(), headers: { 'content-security-policy': contentPolicy } }

/** `GET /problems` */
const listRoute: Route = route({
  method: 'get',
  path: '/problems',
  operation: 'listProblems',
  tag: 'Service',
  summary: 'Every kind of problem',
  description: 'What leads to each and what to do about it; as JSON, or as a page for people.',
  query: z.strictObject({}),
  answer: { description: 'The kinds of problem.', media: { [json]: { schema: z.array(ProblemKind) }, [html]: page } },
  problems: [],
  example: '',
  handle: ({ media }) => (media === html ? written(<Explanation title="Problems" shown={kinds} />) : kinds),
})

function describe({ path: { kind: id }, media }: Input<z.ZodObject, z.ZodObject<{ kind: z.ZodString }>>) {
  const kind = kinds.find(({ type }) => type === `/problems/${id}`)
  if (!kind) throw new ProblemError(problem('not-found', `there is no problem "${id.slice(0, 40)}"; /problems lists those that there are`))
  return media === html ? written(<Explanation title={kind.title} shown={[kind]} />) : kind
}

/** `GET /problems/unreadable`: where the `type` of a problem leads */
const oneRoute: Route = route({
  method: 'get',
  path: '/problems/{kind}',
  operation: 'describeProblem',
  tag: 'Service',
  summary: 'One kind of problem',
  description: 'The address is the `type` of the problem.',
  pathParameters: z.strictObject({ kind: z.string().describe('The last part of the type, such as `unreadable`.') }),
  query: z.strictObject({}),
  answer: { description: 'The kind of problem.', media: { [json]: { schema: ProblemKind }, [html]: page } },
  problems: ['not-found'],
  example: 'unreadable',
  handle: describe,
})

export const problemRoutes: readonly Route[] = [listRoute, oneRoute]

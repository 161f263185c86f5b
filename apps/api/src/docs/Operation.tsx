import { problemsOf } from '../http/problemsOf.js'
import type { Route } from '../http/route.js'
import { Entry } from '../pages/frame/index.js'
import type { Tried } from './examples.js'
import { Sample } from './Sample.js'
import { Fields, type JsonSchema, TypeOf } from './schema.js'
import { Words } from './words.js'

/** As much of an operation of the document as the page shows. */
export interface Operation {
  readonly summary: string
  readonly description: string
  readonly parameters: readonly {
    readonly $ref?: string
    readonly name: string
    readonly required: boolean
    readonly description?: string
    readonly schema: JsonSchema
  }[]
  readonly requestBody?: { readonly description: string; readonly content: Readonly<Record<string, { readonly schema: JsonSchema }>> }
  readonly responses: Readonly<
    Record<string, { readonly description?: string; readonly content?: Readonly<Record<string, { readonly schema: JsonSchema }>> }>
  >
}

function Media({ content }: { content: Readonly<Record<string, { readonly schema: JsonSchema }>> }) {
  return (
    <ul class="plain">
      {Object.entries(content).map(([type, { schema }]) => (
        <li>
          <code>{type}</code>: <TypeOf schema={schema} />
        </li>
      ))}
    </ul>
  )
}

function Parameters({ operation: { parameters } }: { operation: Operation }) {
  const own = parameters.filter(({ $ref }) => !$ref)
  if (own.length === 0) return null
  return (
    <>
      <h3>Parameters</h3>
      <Fields
        rows={own.map(({ name, required, description, schema }) => ({
          name,
          required,
          schema: description === undefined ? schema : { ...schema, description },
        }))}
      />
    </>
  )
}

function Problems({ kinds }: { kinds: readonly string[] }) {
  return (
    <p>
      Problems:{' '}
      {kinds.map((kind, i) => (
        <>
          {i === 0 ? '' : ', '}
          <a href={`/problems/${kind}`}>{kind}</a>
        </>
      ))}
    </p>
  )
}

/** One operation: what it takes, what it answers, and a request with what really came of it. */
export function OperationEntry({ route, operation, tried }: { route: Route; operation: Operation; tried: Tried }) {
  const { requestBody, responses } = operation
  return (
    <Entry
      id={route.operation}
      title={
        <code>
          {route.method.toUpperCase()} {route.path}
        </code>
      }
      about={<p>{route.summary}</p>}
    >
      <p>
        <Words text={route.description} />
      </p>
      <Parameters operation={operation} />
      {requestBody ? (
        <>
          <h3>Body</h3>
          <p>{requestBody.description}</p>
          <Media content={requestBody.content} />
        </>
      ) : null}
      <h3>Answer</h3>
      <p>{responses['200']!.description}</p>
      <Media content={responses['200']!.content ?? {}} />
      <Problems kinds={problemsOf(route)} />
      <Sample title="Try it" text={tried.command} />
      <details>
        <summary>What comes of it</summary>
        <Sample title="The answer, with long lists cut" text={tried.answer} />
      </details>
    </Entry>
  )
}

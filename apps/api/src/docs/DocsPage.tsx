import type { Route } from '../http/route.js'
import { Entry, Page } from '../pages/frame/index.js'
import type { Tried } from './examples.js'
import { Guide } from './Guide.js'
import { Names } from './Names.js'
import { type Operation, OperationEntry } from './Operation.js'
import { anchorOf, type JsonSchema, SchemaFields } from './schema.js'
import { Words } from './words.js'

/** As much of the document as the page shows. */
export interface Document {
  readonly tags: readonly { readonly name: string; readonly description: string }[]
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>
  readonly components: { readonly schemas: Readonly<Record<string, JsonSchema>> }
}

function Contents({ routes, tags }: { routes: readonly Route[]; tags: Document['tags'] }) {
  return (
    <Entry title="Routes" id="routes">
      {tags.map(({ name, description }) => (
        <div>
          <h3>{name}</h3>
          <p class="quiet">{description}</p>
          <ul class="plain">
            {routes
              .filter(({ tag }) => tag === name)
              .map(({ method, path, operation, summary }) => (
                <li>
                  <a href={`#${operation}`}>
                    <code>
                      {method.toUpperCase()} {path}
                    </code>
                  </a>
                  : {summary}
                </li>
              ))}
          </ul>
        </div>
      ))}
    </Entry>
  )
}

const chapters = [
  ['start', 'In ten minutes'],
  ['many', 'Many at once'],
  ['problems', 'When it goes wrong'],
  ['http', 'Caches, limits, ids'],
  ['versions', 'What may change'],
  ['names', 'Names'],
  ['routes', 'Routes'],
  ['schemas', 'Schemas'],
] as const

/** The reference: a guide, every route with a request that was really made, and every schema. */
export function DocsPage(given: {
  readonly routes: readonly Route[]
  readonly document: Document
  readonly tried: ReadonlyMap<Route, Tried>
  readonly origin: string
}) {
  const { routes, document, tried, origin } = given
  return (
    <Page title="The API" at="/docs">
      <div class="opening">
        <h1>The API</h1>
        <p>Period measures in, modern measures out: with a band, the senses, every step and its source.</p>
        <ul class="jump">
          {chapters.map(([id, title]) => (
            <li>
              <a href={`#${id}`}>{title}</a>
            </li>
          ))}
        </ul>
      </div>
      <Guide origin={origin} />
      <Names />
      <Contents routes={routes} tags={document.tags} />
      {routes.map((route) => (
        <OperationEntry route={route} operation={document.paths[route.path]![route.method]!} tried={tried.get(route)!} />
      ))}
      <div id="schemas" class="opening">
        <h2>Schemas</h2>
        <p>The bodies that the routes take and give.</p>
      </div>
      {Object.entries(document.components.schemas).map(([name, schema]) => (
        <Entry
          id={anchorOf(name)}
          title={name}
          about={
            <p>
              <Words text={schema.description} />
            </p>
          }
        >
          <SchemaFields schema={schema} schemas={document.components.schemas} />
        </Entry>
      ))}
    </Page>
  )
}

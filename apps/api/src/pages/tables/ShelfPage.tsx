import type { Child } from 'hono/jsx'
import { Entry, Page } from '../frame/index.js'
import type { Article, Shelf } from './article.js'

function ArticleTable({ articles, column }: { articles: readonly Article[]; column: string }) {
  return (
    <table class="ruled">
      <thead>
        <tr>
          <th scope="col">Name</th>
          <th scope="col" class="figure">
            {column}
          </th>
          <th scope="col" class="figure">
            Between
          </th>
        </tr>
      </thead>
      <tbody>
        {articles.map(({ address, label, comes, findings }) => (
          <tr>
            <th scope="row">
              <a href={address}>{label}</a>
            </th>
            <td class="figure">{comes}</td>
            <td class="figure quiet">{findings.length > 1 ? `${findings.length}\u00a0figures` : findings[0]!.ends}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

const idOf = (group: string): string => group.toLowerCase().replace(/[^a-z]+/g, '-')

/** Everything on one shelf, under its headings where it has any. */
export function ShelfPage({ shelf, at, children }: { shelf: Shelf; at: string; children?: Child }) {
  const { title, about, column = 'Comes to', articles } = shelf
  const groups = [...new Set(articles.map(({ group = '' }) => group))]
  return (
    <Page title={title} at={at}>
      <div class="opening">
        <h1>{title}</h1>
        <p>{about}</p>
        {groups.length > 3 && (
          <ul class="jump">
            {groups.map((group) => (
              <li>
                <a href={`#${idOf(group)}`}>{group}</a>
              </li>
            ))}
          </ul>
        )}
      </div>
      {groups.map((group) => {
        const within = articles.filter((article) => (article.group ?? '') === group)
        return (
          <Entry title={group || 'The table'} id={group && idOf(group)} about={<p>{within.length} in the tables</p>}>
            <ArticleTable articles={within} column={column} />
          </Entry>
        )
      })}
      {children}
    </Page>
  )
}

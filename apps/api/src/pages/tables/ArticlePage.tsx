import { Entry, Page } from '../frame/index.js'
import { answered } from '../measure/index.js'
import type { Asked } from '../parts/asked.js'
import { MeasureForm } from '../parts/forms.js'
import type { Article, Shelf } from './article.js'
import { Findings } from './Findings.js'

/** The year and place in which it is sure to have meant something, where it did not everywhere. */
function settingOf({ findings }: Article): Asked {
  const [first] = findings
  const everywhere = findings.some(({ place }) => place === null)
  return everywhere || !first ? {} : { place: first.place ?? undefined }
}

/** What the page proposes to ask: the first of the article's phrases that the library answers. */
export function proposed(article: Article): Asked | undefined {
  const setting = settingOf(article)
  const dated = { ...setting, year: article.findings[0]?.years?.[0].toString() }
  const asked = (article.asks ?? []).flatMap((phrase) => [
    { ...setting, phrase },
    { ...dated, phrase },
  ])
  return asked.find((one) => 'answer' in answered(one))
}

function AskWithIt({ article }: { article: Article }) {
  const asked = proposed(article)
  if (!asked) return null
  return (
    <Entry
      title="Ask with it"
      about={<p>Put the year of your book, and the thing that is measured: many measures depended on both.</p>}
      screen
    >
      <MeasureForm form="measure" asked={asked} short />
    </Entry>
  )
}

/** One measure, heat or thing: what it came to, when, where and for what. */
export function ArticlePage({ shelf, article, at, json }: { shelf: Shelf; article: Article; at: string; json?: string }) {
  const { label, names, comes, findings } = article
  const unit = shelf.column === undefined ? '' : shelf.column.toLowerCase()
  return (
    <Page title={label} at={at}>
      <Entry
        lead
        title={
          <>
            <small>
              <a href={shelf.address}>{shelf.title}</a>
            </small>{' '}
            {label}
          </>
        }
        about={names.length > 0 && <p>Also {names.join(', ')}; and in other old spellings.</p>}
      >
        <p class="answer">
          {comes || findings[0]!.best} {unit && <small>{unit}</small>}
        </p>
      </Entry>
      <Entry
        title={shelf.says ?? 'What it meant'}
        about={findings.length > 1 && <p>{findings.length} figures, by date, by place or by what was measured.</p>}
      >
        <Findings article={article} />
        {json && (
          <p class="small">
            For programs: <a href={json}>the same as JSON</a>.
          </p>
        )}
      </Entry>
      <AskWithIt article={article} />
    </Page>
  )
}

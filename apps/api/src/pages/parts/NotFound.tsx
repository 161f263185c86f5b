import { Entry, Page } from '../frame/index.js'

/** There is nothing of that name; and where to look. */
export function NotFound({ what, name, list, at }: { what: string; name: string; list: string; at: string }) {
  return (
    <Page title={`No such ${what}`} at={at}>
      <Entry lead title={`No such ${what}`}>
        <p>
          The tables have no {what} by the name of “{name.slice(0, 60)}”. <a href={at}>{list}</a>.
        </p>
      </Entry>
    </Page>
  )
}

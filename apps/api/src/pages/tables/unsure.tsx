import { citeShort, listUnsure, type UnsureFigure } from '@pottle/core'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { NotFound } from '../parts/NotFound.js'
import { placeLabel } from '../parts/places.js'
import { isWork } from '../parts/references.js'
import { sayGrade, sourceAddress } from '../parts/sources.js'

const at = '/unsure'

const isRecalled = ({ checked }: UnsureFigure): boolean => checked === 'memory'

const tablesOf = (list: readonly UnsureFigure[]): string[] => [...new Set(list.map(({ table }) => table))]
const nameOf = (table: string): string => table.replaceAll('-', ' ')

function when({ years, place }: UnsureFigure): string {
  const told = [place && placeLabel(place), years && `${years[0]} to ${years[1]}`].filter(Boolean).join(', ')
  return told && ` (${told})`
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

function Figure({ figure }: { figure: UnsureFigure }) {
  const { row, part, label, says, grade, checked, sources, because } = figure
  return (
    <li>
      <i>{label}</i>
      {when(figure)}: {says || 'no figure'}. {because}
      <p class="small">
        {capital(sayGrade(grade, checked))}
        {sources.filter(isWork).map((source) => (
          <>
            ; <a href={sourceAddress(source.id)}>{citeShort(source)}</a>
          </>
        ))}
        . Row <code>{part && part !== row ? `${row}, ${part}` : row}</code>.
      </p>
    </li>
  )
}

function Figures({ list }: { list: readonly UnsureFigure[] }) {
  return (
    <ul class="plain">
      {list.map((figure) => (
        <Figure figure={figure} />
      ))}
    </ul>
  )
}

function Tables({ list }: { list: readonly UnsureFigure[] }) {
  return (
    <ul class="contents">
      {tablesOf(list).map((table) => (
        <li>
          <a href={`${at}/${table}`}>{nameOf(table)}</a> <span>{list.filter((figure) => figure.table === table).length}</span>
        </li>
      ))}
    </ul>
  )
}

function List() {
  const figures = listUnsure()
  const recalled = figures.filter(isRecalled)
  const judged = figures.filter((figure) => !isRecalled(figure))
  return (
    <Page title="What is unsure" at={at}>
      <div class="opening">
        <h1>What is unsure</h1>
        <p>
          {recalled.length} figures of the tables were recalled and not looked up; {judged.length} rest on common practice or on our
          judgement. If you can find one of them in a source, or measure it, send us the figure, the source and the page: nothing helps
          more.
        </p>
      </div>
      <Entry title="Practice and judgement" about={<p>Table by table.</p>}>
        <Tables list={judged} />
      </Entry>
      {recalled.length > 0 && (
        <Entry title="To be looked up" about={<p>Recalled from the sources named.</p>}>
          <Figures list={recalled} />
        </Entry>
      )}
    </Page>
  )
}

function Table({ table, list }: { table: string; list: readonly UnsureFigure[] }) {
  return (
    <Page title={`What is unsure of ${nameOf(table)}`} at={at}>
      <Entry lead title={capital(nameOf(table))} about={<p>What rests on common practice or on our judgement.</p>}>
        <Figures list={list} />
        <p>
          <a href={at}>All that is unsure</a>
        </p>
      </Entry>
    </Page>
  )
}

/** `GET /unsure`, `GET /unsure/goods` */
export const unsurePages: Hono = new Hono()
unsurePages.get(at, (context) => respondWithPage(context, <List />))
unsurePages.get(`${at}/:table`, (context) => {
  const table = context.req.param('table')
  const list = listUnsure().filter((figure) => figure.table === table && !isRecalled(figure))
  if (list.length === 0) return respondWithPage(context, <NotFound what="list" name={table} list="What is unsure" at={at} />, 404)
  return respondWithPage(context, <Table table={table} list={list} />)
})

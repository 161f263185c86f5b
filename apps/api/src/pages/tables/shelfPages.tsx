import { describeMeasure } from '@pottle/core'
import { type Context, Hono } from 'hono'
import { respondWithPage } from '../frame/index.js'
import { NotFound } from '../parts/NotFound.js'
import { ArticlePage } from './ArticlePage.js'
import { MeasureIndex } from './MeasureIndex.js'
import { ShelfPage } from './ShelfPage.js'
import { articleAt, shelfAt } from './shelves/index.js'

/** The list that an address belongs to: `/measures/vessels/…` to `/measures`. */
const listOf = (address: string): string => `/${address.split('/')[1]}`

const words = { '/measures': ['measure', 'All measures'], '/heats': ['heat', 'All heats'], '/goods': ['thing', 'All things'] } as const

/** One article; an address in other letters, or by another name of a measure, leads to its own. */
function respondWithArticle(context: Context, base: string): Response {
  const id = context.req.param('id')!
  const list = listOf(base)
  const found = articleAt(`${base}/${id}`) ?? articleAt(`${base}/${id.toLowerCase()}`) ?? measureNamed(base, id)
  if (!found) {
    const [what, name] = words[list as keyof typeof words]
    return respondWithPage(context, <NotFound what={what} name={id} list={name} at={list} />, 404)
  }
  const { shelf, article } = found
  if (article.address !== `${base}/${id}`) return context.redirect(article.address, 301)
  const json = base === '/measures' ? `/v1${article.address}` : undefined
  return respondWithPage(context, <ArticlePage shelf={shelf} article={article} at={list} {...(json ? { json } : {})} />)
}

function measureNamed(base: string, name: string) {
  const measure = base === '/measures' ? describeMeasure(name.toLowerCase()) : undefined
  return measure && articleAt(`/measures/${measure.id}`)
}

/** The page of a shelf; undefined where an address is none of a shelf. */
export function respondWithShelf(context: Context, address: string): Response | undefined {
  const shelf = shelfAt(address)
  return shelf && respondWithPage(context, <ShelfPage shelf={shelf} at={listOf(address)} />)
}

/** `GET /measures`, `GET /measures/vessels`, `GET /measures/vessels/spoonful`, `GET /measures/pottle`, `GET /goods/cream`, … */
export const shelfPages: Hono = new Hono()
shelfPages.get('/measures', (context) => respondWithPage(context, <MeasureIndex />))
shelfPages.get('/measures/:id', (context) => respondWithShelf(context, context.req.path) ?? respondWithArticle(context, '/measures'))
shelfPages.get('/goods', (context) => respondWithShelf(context, '/goods')!)
shelfPages.get('/goods/:id', (context) => respondWithArticle(context, '/goods'))
// One route for all shelves of a list: the fastest of the router's ways takes no fixed name beside a parameter.
for (const list of ['/measures', '/heats'])
  shelfPages.get(`${list}/:shelf/:id`, (context) => respondWithArticle(context, `${list}/${context.req.param('shelf')}`))

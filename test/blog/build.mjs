// Builds the example blog: Markdown in, pages out, with the tools that many static sites use.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import remarkPottle from '@pottle/remark'
import rehypeStringify from 'rehype-stringify'
import remarkDirective from 'remark-directive'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'

const read = (name) => readFileSync(new URL(name, import.meta.url), 'utf8')

/** Which script a post needs: none, the server's, or the one that the blog serves itself. */
export const posts = {
  'whipt-cream': null,
  'seed-cake': 'api',
  'seed-cake-offline': 'own',
  furmety: null,
}

/** A link that stands alone on its line becomes what its oEmbed provider gives for it, as publishing tools do. */
function remarkOembed(api) {
  const alone = (node) => (node.type === 'paragraph' && node.children.length === 1 ? node.children[0] : undefined)
  return () => async (tree) => {
    for (const node of tree.children) {
      const only = alone(node)
      if (only?.type !== 'link' || !only.url.startsWith(api)) continue
      const response = await fetch(`${api}/oembed?${new URLSearchParams({ url: only.url, maxwidth: '560' })}`)
      const { html } = await response.json()
      Object.assign(node, { type: 'html', value: html, children: undefined })
    }
  }
}

const scriptFor = (source, api) => {
  if (source === null) return ''
  return `<script type="module" src="${source === 'api' ? `${api}/embed/pottle.js` : '/pottle-offline.js'}"></script>`
}

function pageOf(title, script, body) {
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<title>${title} · The kitchen of Saltmarsh Hall</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="/blog.css">
${script}
</head>
<body>
<header><a href="/">The kitchen of Saltmarsh Hall</a></header>
<main>
${body}
</main>
</body>
</html>
`
}

async function buildPost(name, api) {
  const markdown = read(`posts/${name}.md`).replaceAll('API/', `${api}/`)
  const file = await unified()
    .use(remarkParse)
    .use(remarkGfm)
    .use(remarkOembed(api))
    .use(remarkDirective)
    .use(remarkPottle, { year: 1690, place: 'england' })
    .use(remarkRehype, { allowDangerousHtml: true })
    .use(rehypeStringify, { allowDangerousHtml: true })
    .process({ value: markdown, path: `${name}.md` })
  const title = /^# (.+)$/m.exec(markdown)[1]
  return { name, title, html: pageOf(title, scriptFor(posts[name], api), String(file)), messages: file.messages.map(String) }
}

/**
 * The whole blog: pages by their addresses, and what the build had to say.
 *
 * @param api where the API is, such as http://127.0.0.1:3000
 */
export async function buildBlog(api) {
  const built = await Promise.all(Object.keys(posts).map((name) => buildPost(name, api)))
  const list = built.map(({ name, title }) => `<li><a href="/${name}.html">${title}</a></li>`)
  const pages = Object.fromEntries(built.map(({ name, html }) => [`/${name}.html`, html]))
  pages['/'] = pageOf('Receipts', '', `<h1>Receipts</h1>\n<ul>\n${list.join('\n')}\n</ul>`)
  return { pages, css: read('blog.css'), messages: built.flatMap(({ messages }) => messages) }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { pages, css, messages } = await buildBlog(process.argv[2] ?? 'http://127.0.0.1:3000')
  const into = new URL('dist/', import.meta.url)
  mkdirSync(into, { recursive: true })
  for (const [address, html] of Object.entries(pages)) writeFileSync(new URL(address === '/' ? 'index.html' : address.slice(1), into), html)
  writeFileSync(new URL('blog.css', into), css)
  writeFileSync(new URL('pottle-offline.js', into), readFileSync(new URL('../../packages/embed/dist/pottle-offline.js', import.meta.url)))
  for (const message of messages) console.warn(message)
  console.log(`${Object.keys(pages).length} pages in ${fileURLToPath(into)}`)
}

import { dataset } from '@pottle/core'
import type { Child } from 'hono/jsx'
import { version } from '../../version.js'
import { assetAddress } from '../assets/index.js'
import { markShape } from '../assets/mark.js'

/** One page. */
export interface PageProps {
  readonly title: string
  /** Its address without what was asked, to mark where the reader is. */
  readonly at: string
  /** How what it shows can be shown elsewhere. */
  readonly shown?: { readonly discovery: string; readonly canonical: string } | undefined
  readonly children?: Child
}

const tasks = [
  ['/measure', 'Measure'],
  ['/heat', 'Oven heat'],
  ['/sheet', 'Receipt'],
  ['/loaves', 'Loaves'],
  ['/oven', 'Brick oven'],
  ['/tables', 'Tables'],
] as const

const tables = [
  ['/measures', 'All measures'],
  ['/heats', 'All heats'],
  ['/goods', 'All things'],
  ['/sources', 'All sources'],
  ['/unsure', 'What is unsure'],
] as const

function Links({ to, at, label }: { to: readonly (readonly [string, string])[]; at: string; label: string }) {
  return (
    <nav aria-label={label}>
      <ul>
        {to.map(([href, name]) => (
          <li>
            <a href={href} aria-current={href === at ? 'true' : undefined}>
              {name}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}

function Colophon({ at }: { at: string }) {
  return (
    <footer class="colophon">
      <Links to={tables} at={at} label="Tables" />
      <p>
        Tables {dataset}, in the public domain (CC0). Software {version}, under the MIT licence. The same answers for programs:{' '}
        <a href="/docs">the API</a>. Set in Libre Caslon Text, after the types that William Caslon cut in London in the 1720s.
      </p>
    </footer>
  )
}

/** The frame that every page stands in. */
export function Page({ title, at, shown, children }: PageProps) {
  return (
    <html lang="en-GB">
      <head>
        <meta charset="utf-8" />
        <title>{title === '' ? 'Pottle: old kitchen measures in modern ones' : `${title} · Pottle`}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <link rel="icon" href={assetAddress('pottle.svg')} type="image/svg+xml" />
        <link rel="stylesheet" href={assetAddress('pottle.css')} />
        <link rel="preload" href={assetAddress('caslon.woff2')} as="font" type="font/woff2" crossorigin="anonymous" />
        <link rel="preload" href={assetAddress('caslon-italic.woff2')} as="font" type="font/woff2" crossorigin="anonymous" />
        {shown && <link rel="canonical" href={shown.canonical} />}
        {shown && <link rel="alternate" type="application/json+oembed" href={shown.discovery} title={title} />}
        <script src={assetAddress('pottle.js')} defer />
      </head>
      <body>
        <a class="skip" href="#main">
          Skip to the page
        </a>
        <header class="masthead">
          <a class="name" href="/">
            <svg viewBox="0 0 44 52" aria-hidden="true">
              <path class="measure-mark" d={markShape} />
            </svg>
            Pottle
          </a>
          <Links to={tasks} at={tables.some(([address]) => address === at) ? '/tables' : at} label="Main" />
        </header>
        <main id="main" tabindex={-1}>
          {children}
        </main>
        <Colophon at={at} />
      </body>
    </html>
  )
}

import { sheet } from '../view/index.js'

/** What only an element in a page of strangers needs: its own place in their text, and a note that opens below the line. */
const around = `
:host{display:inline}
:host([display=card]){display:block;clear:both;margin-block:1.2em}
:host([hidden]){display:none}
.brackets{white-space:nowrap}
.open{all:unset;cursor:pointer;border-bottom:1px dotted}
.open:focus-visible{outline:2px solid currentColor;outline-offset:2px}
.open[aria-expanded=true]{border-bottom-style:solid}
.aside{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.note{float:inline-start;clear:both;width:100%;margin:.4em 0 .8em;padding:.6em max(0px,100% - var(--pottle-width,30em)) .5em 0;border-top:1px solid var(--rule);border-bottom:1px solid var(--rule);font-style:normal;font-weight:400;text-indent:0;white-space:normal}
.note[hidden]{display:none}
`
  .trim()
  .replaceAll('\n', '')

/**
 * One sheet for all elements of a page, made by script: a policy without `style-src` forbids markup's styles, not these
 * (CSSOM, section 6.2, constructed style sheets).
 */
export function makeSheet(): CSSStyleSheet {
  const made = new CSSStyleSheet()
  made.replaceSync(sheet + around)
  return made
}

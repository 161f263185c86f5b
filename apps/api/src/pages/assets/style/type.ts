/**
 * Letters: Caslon's, large enough to be read from a bench; until it comes, serifs that systems carry. As in the books, there is no bold: rank is told by
 * size and by italics. Everything is in rem or em, so that it grows with the reader's own size.
 */
export const type: string = `
html { font-size: 118.75%; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0;
  background: var(--paper);
  color: var(--ink);
  font-family: "Libre Caslon Text", "Iowan Old Style", "Palatino Linotype", Palatino, "Book Antiqua", Georgia, "Liberation Serif", serif;
  font-synthesis-weight: none;
  font-variant-numeric: lining-nums;
  /* The face is drawn for paper: on a screen its words stand too close. */
  word-spacing: 0.06em;
  line-height: 1.5;
  overflow-wrap: break-word;
}
h1, h2, h3, th, strong, b { font-weight: 400; }
h1, h2, h3 { line-height: 1.2; margin: 0; text-wrap: balance; }
h1 { font-size: 1.8rem; }
h2 { font-size: 1.35rem; }
h3 { font-size: 1.1rem; }
strong { font-style: italic; }
p, ul, ol, dl, figure, pre, table, fieldset { margin: 0; }
p, li, dd { max-width: 40rem; }
a { color: var(--link); text-underline-offset: 0.16em; text-decoration-thickness: 0.06em; }
a:hover { text-decoration-thickness: 0.12em; }
small, .small { font-size: 0.84rem; line-height: 1.45; }
.quiet { color: var(--quiet); }
q, .words { font-style: italic; }
q { quotes: "“" "”"; }
code, pre { font-family: "Liberation Mono", Menlo, Consolas, "DejaVu Sans Mono", monospace; font-size: 0.82rem; word-spacing: 0; }
:focus-visible { outline: 3px solid var(--margin); outline-offset: 3px; }
[tabindex="-1"]:focus { outline: none; }
.visually-hidden {
  position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap;
}
.skip { position: absolute; left: 0; top: -4rem; background: var(--ink); color: var(--paper); padding: 0.6rem 1rem; z-index: 1; }
.skip:focus { top: 0; }
@media (max-width: 30rem) {
  html { font-size: 112.5%; }
  h1 { font-size: 1.45rem; }
}
`

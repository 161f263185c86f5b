/** On paper: no forms and no links to press, nothing cut through; and stillness for whoever asks for it. */
export const print: string = `
@media print {
  html { font-size: 11pt; }
  .masthead, main, .colophon { max-width: none; padding-left: 0; padding-right: 0; }
  main::before { left: 0; right: 0; }
  .masthead nav, .skip, form, .colophon nav, button, .tries, .jump, .screen { display: none !important; }
  /* Grids are not broken between pages where they should be: on paper everything stands in one column. */
  .entry, .entry > header, .entry > .body, .body-gap, .steps, .work, .two, .plate { display: block; }
  .entry { padding: 0.8rem 0; }
  .entry > .body > * + *, .body-gap > * + *, .entry > header + .body { margin-top: 0.6rem; }
  .entry > header { border: 0; padding: 0; }
  .entry > .body { padding: 0; }
  .ruled tr, .steps li, .caution, figure, .two-lines, h2, h3 { break-inside: avoid; }
  h2, h3, .entry > header { break-after: avoid; }
  a { text-decoration: none; }
  .bench td:nth-of-type(2) { white-space: nowrap; }
  .ruled.stack thead { position: static; }
  details:not([open]) { display: none; }
  @page { margin: 16mm; }
}
@media (prefers-reduced-motion: no-preference) {
  .skip { transition: top 0.12s; }
}
@media (forced-colors: active) {
  /* Pictures are drawn in the colours of the page, and take those that the reader has set. */
  :root {
    --paper: Canvas; --field: Field; --ink: CanvasText; --quiet: CanvasText; --feint: GrayText;
    --margin: CanvasText; --link: LinkText; --wash: Canvas; --warn: CanvasText;
  }
  .letter, button { border-color: ButtonText; }
}
`

/** Ruled tables: a heavy rule above and below, feint lines between, a red line before the columns of figures. */
export const tables: string = `
.ruled { width: 100%; border-collapse: collapse; border-top: 2px solid var(--ink); border-bottom: 2px solid var(--ink); font-variant-numeric: lining-nums tabular-nums; }
.ruled caption { text-align: left; padding-bottom: 0.5rem; color: var(--quiet); font-size: 0.9rem; }
.ruled th, .ruled td { text-align: left; vertical-align: top; padding: 0.45rem 0.8rem 0.45rem 0; border-bottom: 1px solid var(--feint); }
.ruled thead th { font-style: italic; color: var(--quiet); border-bottom: 1px solid var(--ink); vertical-align: bottom; line-height: 1.25; }
.ruled tbody:last-child tr:last-child > * { border-bottom: 0; }
.ruled .figure { text-align: right; padding-left: 0.8rem; border-left: 1px solid var(--margin); white-space: nowrap; }
.ruled .figure + td:not(.figure), .ruled .figure + th:not(.figure) { border-left: 1px solid var(--margin); padding-left: 0.8rem; }
.ruled td:last-child, .ruled th:last-child { padding-right: 0.2rem; }
.ruled .years { white-space: nowrap; }
.letter { display: inline-block; width: 1.5em; height: 1.5em; line-height: 1.5em; border: 1px solid currentColor; border-radius: 50%; text-align: center; font-size: 0.85rem; }
.letter + * { margin-left: 0.3rem; }
@media (max-width: 40rem) {
  .ruled .figure { white-space: normal; padding-left: 0.5rem; }
  .ruled th, .ruled td { padding-right: 0.5rem; }
  .ruled .figure + td:not(.figure), .ruled .figure + th:not(.figure) { padding-left: 0.5rem; }
  .ruled.stack, .ruled.stack tbody, .ruled.stack tr, .ruled.stack th, .ruled.stack td { display: block; border-left: 0; padding-left: 0; text-align: left; white-space: normal; }
  .ruled.stack thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .ruled.stack tr { padding: 0.5rem 0; border-bottom: 1px solid var(--feint); }
  .ruled.stack th, .ruled.stack td { border-bottom: 0; padding: 0.1rem 0; }
  .ruled.stack [data-head]::before { content: attr(data-head) ": "; font-style: italic; color: var(--quiet); }
  .ruled.stack td.figure, .ruled.stack .figure + td:not(.figure) { border-left: 0; padding-left: 0; }
}
@media (max-width: 30rem) { .ruled:not(.stack) { font-size: 0.88rem; } }
@media (max-width: 22rem) {
  .ruled:not(.stack) { font-size: 0.78rem; }
  .ruled:not(.stack) :is(th, td) { padding-right: 0.3rem; }
  .ruled:not(.stack) :is(.figure, .figure + *) { padding-left: 0.3rem; }
}
.steps { list-style: none; padding: 0; border-top: 2px solid var(--ink); border-bottom: 2px solid var(--ink); }
.steps li { display: grid; gap: 0.1rem 1.5rem; padding: 0.6rem 0; border-bottom: 1px solid var(--feint); max-width: none; }
.steps li:last-child { border-bottom: 0; }
.steps .who { color: var(--quiet); font-size: 0.86rem; line-height: 1.45; }
@media (min-width: 46rem) {
  .steps li { grid-template-columns: minmax(0, 1fr) 13rem; }
  .steps .factor { text-align: right; grid-column: 2; grid-row: 1; }
  .steps .who { grid-column: 1 / -1; }
}
`

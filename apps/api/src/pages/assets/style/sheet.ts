/** The working sheet: what a cook has on the bench. */
export const sheet: string = `
.receipt { font-size: 1.08rem; line-height: 1.75; white-space: pre-line; max-width: 42rem; }
.receipt mark { background: none; color: inherit; text-decoration: underline; text-decoration-color: var(--margin); text-decoration-thickness: 0.1em; text-underline-offset: 0.22em; }
sup { font-size: 0.72em; line-height: 0; font-style: normal; padding-left: 0.15em; }
.meaning { display: block; }
.bench td:first-child { width: 1.6rem; }
@media (max-width: 40rem) {
  .ruled.stack.bench tr { display: grid; grid-template-columns: 1.9rem minmax(0, 1fr); }
  .ruled.stack.bench tr > * { grid-column: 2; }
  .ruled.stack.bench td:first-child { grid-area: 1 / 1; padding-top: 0.55rem; }
}
@media (min-width: 46rem) { .bench td:nth-of-type(2) { white-space: nowrap; } }
.two-lines { display: grid; gap: 0.2rem; }
.off { font-size: 1.4rem; line-height: 1.3; }
.work { padding-left: 1.6rem; display: grid; gap: 0.5rem; }
.totals { display: grid; grid-template-columns: max-content minmax(0, 1fr); gap: 0.3rem 1.2rem; }
.totals dt { font-style: italic; color: var(--quiet); }
.totals dd { margin: 0; }
@media (max-width: 40rem) { .totals { grid-template-columns: minmax(0, 1fr); gap: 0; } .totals dd { margin-bottom: 0.5rem; } }
.footnotes { padding-left: 1.8rem; font-size: 0.88rem; line-height: 1.45; display: grid; gap: 0.25rem; }
`

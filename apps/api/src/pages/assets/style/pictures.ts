/** Pictures. Ours are drawn in the colour of the text; plates are prints on paper, and are turned to light on dark where the reader's page is dark. */
export const pictures: string = `
.band { display: block; width: 100%; overflow: visible; font-size: 0.84rem; }
.band text { fill: currentColor; }
.band .faintly { stroke: var(--feint); }
.band .paper { fill: var(--paper); }
.band .red { stroke: var(--margin); }
.frame { padding: 0 0.9rem; }
.plate { display: grid; gap: 0.5rem; }
.plate .sheet { overflow-x: auto; border: 1px solid var(--feint); }
.plate svg { display: block; width: 100%; height: auto; min-width: 44rem; }
.plate svg, .plate svg * { font-family: inherit; word-spacing: 0; }
.sideways { display: none; }
@media (max-width: 47rem) { .sideways { display: inline; } }
.plate figcaption { color: var(--quiet); font-size: 0.9rem; }
@media (prefers-color-scheme: dark) { .plate svg { filter: invert(0.92) hue-rotate(180deg); } }
@media print { .plate svg { filter: none; min-width: 0; } .sideways { display: none; } .plate .sheet { overflow: visible; } }
.shelf ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; align-items: end; }
.shelf li { display: grid; justify-items: center; font-size: 0.84rem; line-height: 1.35; }
.shelf li a { border-top: 2px solid var(--ink); width: 100%; text-align: center; padding: 0.25rem 0.2rem 0; box-sizing: border-box; }
.shelf li span { color: var(--quiet); white-space: nowrap; }
.shelf figcaption { color: var(--quiet); font-size: 0.84rem; text-align: right; padding-top: 0.2rem; }
.shelf svg { display: block; padding: 0 0.55rem; }
.shelf .gill { height: 2.36rem; }
.shelf .pint { height: 3.75rem; }
.shelf .quart { height: 4.72rem; }
.shelf .pottle { height: 5.95rem; }
.shelf .gallon { height: 7.5rem; }
@media (max-width: 30rem) {
  .shelf ul { justify-content: space-between; }
  .shelf svg { padding: 0; }
  .shelf li { font-size: 0.74rem; }
  .shelf li a { padding: 0.25rem 0.1rem 0; }
  .shelf .gill { height: 1.65rem; }
  .shelf .pint { height: 2.62rem; }
  .shelf .quart { height: 3.3rem; }
  .shelf .pottle { height: 4.16rem; }
  .shelf .gallon { height: 5.24rem; }
}
.measure-mark { fill: none; stroke: currentColor; stroke-width: 2.4; stroke-linecap: round; stroke-linejoin: round; }
`

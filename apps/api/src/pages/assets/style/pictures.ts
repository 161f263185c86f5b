/** Pictures. Ours are drawn in the colour of the text; plates are prints on paper, and are turned to light on dark where the reader's page is dark. */
export const pictures: string = `
.band { display: block; width: 100%; overflow: visible; font-size: 0.84rem; font-variant-numeric: lining-nums; }
.band text { fill: currentColor; }
.band .faintly { stroke: var(--feint); }
.band .paper { fill: var(--paper); }
.band .red { stroke: var(--margin); }
.frame { padding: 0 0.9rem; }
.plate { display: grid; gap: 0.5rem; }
.plate .sheet { overflow-x: auto; border: 1px solid var(--feint); }
.plate svg { display: block; width: 100%; height: auto; min-width: 44rem; }
.plate figcaption { color: var(--quiet); font-size: 0.9rem; }
@media (prefers-color-scheme: dark) { .plate svg { filter: invert(0.92) hue-rotate(180deg); } }
@media print { .plate svg { filter: none; min-width: 0; } .plate .sheet { overflow: visible; } }
.measure-mark { fill: none; stroke: currentColor; stroke-width: 2.4; stroke-linecap: round; stroke-linejoin: round; }
`

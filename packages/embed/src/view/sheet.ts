/**
 * How a card and a note are set: type and ruled lines, all in the ink of the page around them, so that they read wherever that page does.
 * Lengths are in `em`. A page changes the look by custom properties and parts.
 */
export const sheet: string = `
.card,.note{--ink:var(--pottle-ink,currentColor);--rule:var(--pottle-rule,var(--ink));--accent:var(--pottle-accent,var(--ink));color:var(--ink);background:var(--pottle-paper,transparent);font-family:var(--pottle-font,inherit);font-variant-numeric:lining-nums tabular-nums;line-height:1.45;text-align:start;box-sizing:border-box}
.card{display:block;margin:0;max-width:var(--pottle-width,30em);padding:var(--pottle-padding,.9em 0 .7em);border-top:3px double var(--rule);border-bottom:3px double var(--rule)}
p,ol,li{margin:0;padding:0}
.caption{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 1em}
.words{font-style:italic;font-size:1.1em}
.answer{font-size:1.9em;line-height:1.2;margin:.15em 0 0}
.also{margin:0 0 .5em}
.band-text,.setting,.imprint,.remark,.senses,.steps,summary{font-size:.875em}
.card .setting{padding-top:.2em}
.remark{margin:.3em 0}
.gauge{display:block;overflow:visible;margin:.25em 0 .35em;font-size:.8em;fill:var(--ink)}
.gauge text{text-anchor:middle}
.gauge .letter{font-style:italic;font-size:1.1em}
.gauge line{stroke:var(--rule);stroke-width:1}
.gauge .end{stroke-width:2}
.gauge .sense{stroke-dasharray:2 2}
.gauge .band{fill:var(--pottle-band,currentColor);fill-opacity:var(--pottle-band-opacity,.18)}
.gauge .best{fill:var(--accent);stroke:var(--pottle-paper,none)}
.senses,.steps{list-style:none}
.senses li{display:flex;flex-wrap:wrap;align-items:baseline;gap:0 .6em;padding:.2em 0;border-top:1px solid var(--rule)}
.senses{border-bottom:1px solid var(--rule);margin:.4em 0}
.senses b{font-style:italic;font-weight:inherit;min-width:.8em}
.meaning{flex:1 1 7em}
.share{min-width:4.6em;text-align:end}
.steps{margin:.3em 0}
.steps li{padding:.2em 0 .2em 1.1em;text-indent:-1.1em}
.factor{overflow-wrap:anywhere}
cite{font-style:italic}
details{margin:.4em 0}
summary{cursor:pointer;padding:.2em 0;width:fit-content}
a{color:inherit}
:focus-visible{outline:2px solid var(--ink,currentColor);outline-offset:2px}
`
  .trim()
  .replaceAll('\n', '')

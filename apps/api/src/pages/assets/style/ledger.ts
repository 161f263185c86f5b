/** The page as a ledger: what an entry is about stands left of a red margin line, the entry itself right of it. */
export const ledger: string = `
.masthead, main, .colophon { max-width: 68rem; margin: 0 auto; padding: 0 1.25rem; }
.masthead { display: flex; flex-wrap: wrap; align-items: end; gap: 0.3rem 2rem; padding-top: 1rem; padding-bottom: 0.7rem; }
.masthead .name { display: flex; align-items: end; gap: 0.5rem; font-size: 1.6rem; line-height: 1; color: var(--ink); text-decoration: none; letter-spacing: 0.01em; }
.masthead .name svg { width: 1.6rem; height: 1.9rem; }
.masthead nav { flex: 1 1 20rem; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0 1.2rem; }
nav a { display: inline-block; padding: 0.2rem 0; color: var(--ink); }
@media (max-width: 30rem) {
  .masthead { padding-top: 0.7rem; padding-bottom: 0.4rem; }
  .masthead .name { font-size: 1.35rem; }
  .masthead nav a { font-size: 0.95rem; }
  nav ul { gap: 0 0.9rem; }
}
nav a[aria-current] { text-decoration: none; border-bottom: 0.2rem solid var(--margin); padding-bottom: 0; }
main { border-top: 0.22rem solid var(--ink); position: relative; padding-bottom: 2rem; display: block; }
main::before { content: ""; position: absolute; left: 1.25rem; right: 1.25rem; top: 0.15rem; border-top: 1px solid var(--ink); }
.opening { padding: 2rem 0 1.8rem; border-bottom: 1px solid var(--feint); display: grid; gap: 0.6rem; }
.opening.first > div { display: grid; gap: 0.8rem; }
.opening h1 { font-size: clamp(1.8rem, 1.1rem + 3vw, 2.9rem); line-height: 1.1; }
.opening p { font-size: 1.2rem; color: var(--quiet); max-width: 44rem; text-wrap: balance; }
.opening p.small { font-size: 0.95rem; }
.opening.first { gap: 1.2rem 2rem; padding-bottom: 1rem; }
@media (min-width: 56rem) { .opening.first { grid-template-columns: minmax(0, 1fr) auto; align-items: end; } .opening.first > div { padding-bottom: 1.2rem; } }
.entry { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.8rem; padding: 1.5rem 0; border-bottom: 1px solid var(--feint); }
.entry:last-child { border-bottom: 0; }
.entry > * { min-width: 0; }
.entry > .body, .body-gap { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1rem; align-content: start; }
.entry > header { display: grid; gap: 0.3rem; align-content: start; }
.entry > header p { color: var(--quiet); font-size: 0.9rem; line-height: 1.45; }
.lead > header h1 { font-style: italic; font-size: 1.5rem; }
.lead > header h1 small { display: block; font-style: normal; color: var(--quiet); margin-bottom: 0.2rem; }
@media (min-width: 56rem) {
  .entry { grid-template-columns: 15rem minmax(0, 1fr); gap: 0; padding: 0; }
  .entry > header { padding: 1.8rem 1.6rem 1.8rem 0; border-right: 3px double var(--margin); }
  .entry > .body { padding: 1.8rem 0 1.8rem 1.8rem; }
}
.answer { font-size: clamp(2rem, 1.2rem + 3.4vw, 3.4rem); line-height: 1.15; max-width: none; text-wrap: balance; }
.answer small { display: block; font-size: 0.6em; line-height: 1.3; padding-top: 0.15em; }
.answer a { color: inherit; text-decoration-thickness: 0.04em; text-underline-offset: 0.14em; }
.answer + p { font-size: 1.1rem; margin-top: 0.5rem; }
.settings { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 7.5rem), 1fr)); border-top: 2px solid var(--ink); border-bottom: 2px solid var(--ink); }
.settings div { padding: 0.5rem 0.8rem 0.6rem 0; }
.settings dt { color: var(--quiet); font-size: 0.9rem; }
.settings dd { margin: 0; font-size: 1.9rem; line-height: 1.2; }
.settings dd small { display: block; color: var(--quiet); }
.notes { list-style: none; padding: 0; display: grid; gap: 0.5rem; }
.notes li { padding-left: 1.1rem; text-indent: -1.1rem; }
.notes li::before { content: "\\00b6"; display: inline-block; width: 1.1rem; text-indent: 0; color: var(--margin); }
.caution { border: 2px solid var(--warn); padding: 0.7rem 1rem; display: grid; gap: 0.2rem; max-width: 42rem; }
.caution h2 { color: var(--warn); font-size: 1.05rem; }
.colophon { border-top: 1px solid var(--ink); padding-top: 1rem; padding-bottom: 2.5rem; display: grid; gap: 0.6rem; color: var(--quiet); font-size: 0.9rem; }
.colophon nav a { color: var(--link); }
details > summary { cursor: pointer; padding: 0.35rem 0; }
details > summary:hover { text-decoration: underline; text-underline-offset: 0.16em; }
details[open] > summary { margin-bottom: 0.5rem; }
.jump { display: flex; flex-wrap: wrap; gap: 0.2rem 1rem; list-style: none; padding: 0; }
.jump a { display: inline-block; min-width: 1.5rem; padding: 0.15rem 0; }
.units { list-style: none; padding: 0; columns: 3 11rem; column-gap: 1.8rem; }
.units li { padding: 0.2rem 0; border-bottom: 1px solid var(--feint); break-inside: avoid; }
.run { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0 1.1rem; }
.run li { padding: 0.2rem 0; }
.contents { list-style: none; padding: 0; max-width: 34rem; }
.contents li { display: flex; align-items: baseline; gap: 0.4rem; padding: 0.25rem 0; max-width: none; }
.contents li::before { content: ""; order: 1; flex: 1; border-bottom: 2px dotted var(--quiet); }
.contents span { order: 2; }
.two { display: grid; gap: 1rem 2rem; grid-template-columns: repeat(auto-fit, minmax(min(100%, 18rem), 1fr)); }
.plain { list-style: none; padding: 0; }
.plain li { padding: 0.35rem 0; border-bottom: 1px solid var(--feint); max-width: none; }
`

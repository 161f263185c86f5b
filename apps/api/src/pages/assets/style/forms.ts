/** Forms: lines to write on. Controls are at least 44 CSS pixels high (WCAG 2.2, 2.5.8 asks for 24). */
export const forms: string = `
form { display: grid; gap: 1rem; }
.field { display: grid; gap: 0.2rem; align-content: start; min-width: 0; }
.field .hint { color: var(--quiet); font-size: 0.84rem; line-height: 1.4; }
input, select, textarea, button { font: inherit; color: inherit; border-radius: 0; }
input, select, textarea {
  width: 100%; box-sizing: border-box; min-height: 2.6rem; padding: 0.35rem 0.6rem;
  background: var(--field); border: 1px solid var(--quiet); border-bottom: 2px solid var(--ink);
}
textarea { min-height: 11rem; line-height: 1.5; resize: vertical; }
input[name="phrase"] { font-size: 1.25rem; min-height: 3rem; }
[aria-invalid="true"] { border: 2px solid var(--warn); }
button {
  min-height: 2.6rem; padding: 0.35rem 1.3rem; background: var(--ink); color: var(--paper); border: 2px solid var(--ink); cursor: pointer;
}
button:hover { background: var(--paper); color: var(--ink); }
button.copy { min-height: 2rem; padding: 0.1rem 0.8rem; font-size: 0.84rem; background: none; color: var(--ink); border: 1px solid var(--ink); }
button.copy:hover { background: var(--ink); color: var(--paper); }
legend { padding: 0; font-size: 1.1rem; }
fieldset { border: 0; padding: 0; display: grid; gap: 0.5rem; min-width: 0; }
details .row + .row { margin-top: 1rem; }
details > .hint { margin-bottom: 0.5rem; }
.hint { color: var(--quiet); font-size: 0.84rem; }
.row { display: grid; gap: 1rem; grid-template-columns: repeat(auto-fit, minmax(min(100%, 8.5rem), 1fr)); align-items: start; }
.row .press { align-self: end; }
.row .field:has(.fault) { grid-column: 1 / -1; }
@media (max-width: 46rem) { .row:has(.fault) .field { grid-column: 1 / -1; } }
form.ask .row { grid-template-columns: minmax(5.5rem, 1fr) minmax(9rem, 1.6fr); }
form.ask .row .press { grid-column: 1 / -1; }
form.ask .row .press button { width: 100%; }
.row .field:has(:is([name="dish"], [name="units"], [name="oven"])) { grid-column: 1 / -1; }
.row.loaf-of .field:has([name="place"]) { grid-column: 1 / -1; }
@media (min-width: 46rem) {
  form.ask .row { grid-template-columns: minmax(8rem, 1fr) minmax(11rem, 1.6fr) auto; }
  form.ask .row .press { grid-column: auto; align-self: start; padding-top: 1.75rem; }
  form.ask .row .press button { width: auto; min-width: 11rem; }
  .row .field:has(:is([name="dish"], [name="units"], [name="oven"])) { grid-column: auto; }
  .row.loaf-of .field:has([name="place"]) { grid-column: auto; }
  .row.loaf-of { grid-template-columns: repeat(2, minmax(0, 1.2fr)) repeat(2, minmax(0, 0.7fr)) minmax(12rem, 1.7fr); }
  .row.receipt-of { grid-template-columns: minmax(11rem, 2fr) minmax(8rem, 1fr) minmax(11rem, 1.6fr); }
}
.tries { display: flex; flex-wrap: wrap; gap: 0.2rem 1.2rem; list-style: none; padding: 0; }
.tries li { padding: 0.15rem 0; }
.fault { color: var(--warn); font-size: 0.95rem; line-height: 1.4; max-width: 40rem; }
.fault::before { content: "\\00d7\\00a0"; }
.faults { border: 2px solid var(--warn); padding: 0.8rem 1.1rem 1rem; display: grid; gap: 0.7rem; }
.faults h2, .faults h1 { color: var(--warn); }
.read { font-size: 1.3rem; line-height: 1.8; }
.read del, .read ins { text-decoration: none; }
.read .unread { text-decoration: underline wavy var(--warn) 0.1em; text-underline-offset: 0.25em; text-decoration-skip-ink: none; font-style: normal; }
.read .understood { font-style: italic; }
.copyable { display: grid; gap: 0.3rem; }
.copyable figcaption { min-height: 2.25rem; display: flex; flex-wrap: wrap; gap: 0.3rem 1rem; align-items: center; justify-content: space-between; }
.copyable pre { white-space: pre-wrap; overflow-wrap: anywhere; user-select: all; -webkit-user-select: all; background: var(--wash); border-left: 3px solid var(--feint); padding: 0.6rem 0.8rem; line-height: 1.45; }
.copyable pre.prose { font-family: inherit; font-size: 0.92rem; }
[aria-busy="true"] { cursor: progress; }
`

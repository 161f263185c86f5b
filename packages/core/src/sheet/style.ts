/**
 * The look of the printed sheet: an account book. A ruled ledger with a red margin line, old-style letters, nothing that a printer must
 * flood with ink, and nothing that has to be fetched.
 */
export const style: string = `
:root { --ink: #1d1a16; --faint: #6b645a; --rule: #b9b0a2; --margin: #9c2f24; --paper: #fffdf8 }
* { box-sizing: border-box }
html { font: 10.5pt/1.42 "Iowan Old Style", "Palatino Linotype", Palatino, "URW Palladio L", "P052", "Book Antiqua", Georgia, serif; color: var(--ink); background: #e9e5dc }
body { margin: 0 auto; max-width: 210mm; padding: 14mm 15mm 16mm; background: var(--paper) }
h1 { font-size: 21pt; font-weight: 500; line-height: 1.12; margin: 0; letter-spacing: -0.005em }
h2 { font-size: 10.5pt; font-weight: 600; font-variant-caps: small-caps; letter-spacing: 0.05em; margin: 0 0 1.2mm; break-after: avoid }
p, ol, ul, dl { margin: 0 0 1.5mm }
header { border-bottom: 3px double var(--ink); padding-bottom: 2.5mm; margin-bottom: 4mm; display: flex; align-items: baseline; justify-content: space-between; gap: 8mm; flex-wrap: wrap }
header p { margin: 0; color: var(--faint); font-style: italic }
section { margin-bottom: 4.5mm }
.words { font-size: 11.5pt; line-height: 1.6; text-align: justify; hyphens: auto; white-space: pre-wrap; overflow-wrap: anywhere; margin-bottom: 5mm }
.words u { text-decoration: underline solid 0.5pt; text-underline-offset: 0.18em }
.words em { font-style: normal; text-decoration: underline dotted 0.7pt; text-underline-offset: 0.18em }
sup { font-size: 0.62em; line-height: 0; font-style: normal; font-variant-numeric: lining-nums; padding-left: 0.08em; white-space: nowrap }
a { color: inherit; text-decoration: none }
sup a { color: var(--margin) }
table { border-collapse: collapse; width: 100%; border-top: 3px double var(--ink); border-bottom: 3px double var(--ink); font-variant-numeric: lining-nums tabular-nums }
caption { text-align: left; color: var(--faint); font-size: 9pt; padding-bottom: 1mm; caption-side: top }
caption strong { display: block; color: var(--ink); font-size: 10.5pt; font-weight: 600; font-variant-caps: small-caps; letter-spacing: 0.05em }
th, td { text-align: left; vertical-align: top; padding: 0.8mm 2mm 0.7mm; line-height: 1.3; border-bottom: 0.5pt solid var(--rule) }
thead th { font-size: 9pt; font-weight: 400; font-style: italic; color: var(--faint); border-bottom: 0.7pt solid var(--ink) }
tbody tr:last-child > * { border-bottom: 0 }
tr { break-inside: avoid }
th:first-child { text-align: right; font-weight: 400; color: var(--margin); padding-left: 0; width: 7mm; border-right: 0.7pt solid var(--margin) }
thead th:first-child { color: var(--faint) }
.off { font-weight: 600; width: 17% }
.off small { font-weight: 400; white-space: nowrap }
.thing { width: 11% }
.said { font-style: italic; width: 18% }
.between { white-space: nowrap; width: 12%; color: var(--faint); font-size: 9pt }
.sense { font-size: 9pt; line-height: 1.32 }
small, .note { font-size: 8.7pt; color: var(--faint); line-height: 1.3 }
.note { display: block; color: var(--ink); font-style: italic }
.pair { display: grid; grid-template-columns: 1fr 1fr; column-gap: 9mm }
.pair section { break-inside: avoid }
dl { display: grid; grid-template-columns: max-content 1fr; column-gap: 3mm; row-gap: 0.6mm }
dt { font-style: italic; color: var(--faint) }
dd { margin: 0 }
ol, ul { padding-left: 5.5mm }
ol li, ul li { padding-left: 0.8mm; margin-bottom: 0.7mm; break-inside: avoid }
ol li::marker { color: var(--margin); font-variant-numeric: lining-nums }
.order { column-count: 2; column-gap: 9mm; font-size: 9.4pt; line-height: 1.35 }
.order li b { font-weight: 600 }
.why { color: var(--faint) }
.sources { font-size: 7.8pt; line-height: 1.25; column-count: 3; column-gap: 6mm }
.sources li { margin-bottom: 0.3mm }
.sources li { overflow-wrap: anywhere }
footer { border-top: 0.7pt solid var(--ink); padding-top: 1.2mm; color: var(--faint); font-size: 8.2pt }
@media (max-width: 640px) { body { padding: 6mm 4mm } .pair { grid-template-columns: 1fr } .between, .said, thead th:nth-child(4), thead th:nth-child(5) { display: none } .sources, .order { column-count: 1 } }
@media print {
  @page { size: A4; margin: 12mm 15mm 11mm }
  html { background: none; font-size: 9.3pt; line-height: 1.36 }
  body { max-width: none; padding: 0; background: none }
  .words { font-size: 10.5pt; line-height: 1.5; margin-bottom: 3mm }
  section { margin-bottom: 2.6mm }
  a { text-decoration: none }
}
`

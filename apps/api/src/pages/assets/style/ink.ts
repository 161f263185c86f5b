/** Colours of an account book: iron-gall ink on rag paper, feint blue lines, a red margin. Text has a contrast of 7 to 1 or more. */
export const ink: string = `
:root {
  color-scheme: light dark;
  --paper: #fbf9f3;
  --field: #fffefb;
  --ink: #20252d;
  --quiet: #4a525c;
  --feint: #b9c6cc;
  --margin: #a8322f;
  --link: #1d4468;
  --wash: #eef0ea;
  --warn: #8a2420;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: #17191d;
    --field: #1f2227;
    --ink: #ece7da;
    --quiet: #b9bdc0;
    --feint: #48525a;
    --margin: #d9807a;
    --link: #a9cdec;
    --wash: #22262b;
    --warn: #f0a7a0;
  }
}
@media print {
  :root {
    --paper: #ffffff;
    --field: #ffffff;
    --ink: #000000;
    --quiet: #333333;
    --feint: #9a9a9a;
    --margin: #a8322f;
    --link: #000000;
    --wash: #ffffff;
    --warn: #000000;
  }
}
`

import { demoReceipts, dishShapes, type Plan, type SheetOptions, workSheet } from '@pottle/core'
import { command } from '../command.js'
import { UsageError } from '../fault.js'
import { formatFrom, type Given, numberOf, type Options, oneOf } from '../options.js'
import { endOfInput, readText } from '../read-text.js'
import { dishForms, readDish } from '../sheet/dish.js'
import { fixForms, readFixes, readLimit } from '../sheet/fix.js'
import { formatOf, formats, render } from '../sheet/format.js'
import type { Terminal } from '../terminal.js'
import { writeFile } from '../write-file.js'
import { jsonOption, settingOptions } from './shared.js'

const demos = demoReceipts.map(({ id }) => id)
const units = ['metric', 'us', 'uk'] as const
const ovens = ['conventional', 'fan', 'gas'] as const

const options = {
  ...settingOptions,
  title: { value: 'TITLE', short: 't', says: 'What the sheet is called.' },
  format: { value: 'FORMAT', short: 'f', says: `${formats.join(', ')}; by the ending of --output, or text, where none is given.` },
  output: { value: 'FILE', short: 'o', says: 'Write to a file.' },
  scale: { value: 'FACTOR', short: 's', says: 'Make so much of it: 2, 0.5, 1/3.' },
  guests: { value: 'NUMBER', short: 'g', says: 'Make enough for so many.' },
  serves: { value: 'NUMBER', says: 'How many the receipt feeds as it stands; with --guests.' },
  limit: { value: 'THING=AMOUNT', says: 'Scale to what there is least of: cream=300ml, egg=3.' },
  dish: { value: 'DISH', short: 'd', many: true, says: `The dish at hand: ${dishForms}.` },
  units: { value: 'UNITS', short: 'u', says: `${units.join(', ')}; metric where none is given.` },
  eggs: { value: 'CLASS', says: 'The eggs at hand, such as egg-uk-l or egg-us-large.' },
  oven: { value: 'OVEN', says: `${ovens.join(', ')}; conventional where none is given.` },
  fix: { value: 'CHOICE', many: true, says: `Take a choice out of the tables' hands, as ${fixForms}.` },
  coverage: { value: 'SHARE', says: 'How much of the doubt the ends are to hold; 0.9 where nothing is said.' },
  demo: { value: 'NAME', says: `Work a receipt of ours instead of a file: ${demos.join(', ')}.` },
  json: { ...jsonOption.json, says: 'The same as --format json.' },
} as const satisfies Options

type Asked = Given<typeof options>

function planFrom({ scale, guests, serves, limit, dish, eggs, fix, ...asked }: Asked): Plan {
  const dishes = dish.map(readDish)
  return {
    scale,
    guests: numberOf('guests', guests),
    serves: numberOf('serves', serves),
    limit: limit === undefined ? undefined : readLimit(limit),
    dish: dishes.length === 0 ? undefined : dishes.length === 1 ? dishes[0] : dishes,
    units: oneOf('units', asked.units, units),
    eggClass: eggs,
    oven: oneOf('oven', asked.oven, ovens),
    fixed: fix.length === 0 ? undefined : readFixes(fix),
  }
}

/** A demo receipt brings its own title, year and place. */
function demo(name: string): { readonly text: string } & Pick<SheetOptions, 'year' | 'place' | 'title'> {
  const id = oneOf('demo', name, demos)
  return demoReceipts.find((row) => row.id === id)!
}

const hint = `Type or paste the words of a receipt, then press ${endOfInput} on a line of its own.`

async function receiptFor(words: readonly string[], given: Asked, terminal: Terminal): Promise<ReturnType<typeof demo>> {
  if (words.length > 1)
    throw new UsageError(`"${words[1]!.slice(0, 40)}"`, 'give one file; a receipt that is typed goes to the standard input')
  if (given.demo === undefined) return { text: await readText(words[0], terminal, hint) }
  if (words.length > 0) throw new UsageError('--demo', 'give a file or a receipt of ours, not both')
  return demo(given.demo)
}

/** `pottle sheet receipt.txt --year 1690 --scale 1/2` */
export const sheetCommand = command({
  name: 'sheet',
  takes: '[FILE]',
  summary: 'Work a whole receipt, from a file or the standard input, into a sheet to cook from.',
  about: [
    'Each measured thing becomes a line with what to measure off, between which ends the truth lies, and why; then the batch, the eggs, the dishes, the oven, the order of work, and the sources.',
    `Dishes by name: ${dishShapes.map(({ id }) => id).join(', ')}.`,
  ],
  options,
  examples: [
    { says: 'A receipt of 1690, half of it', line: 'pottle sheet receipt.txt --year 1690 --scale 1/2' },
    { says: 'A page to print', line: 'pottle sheet receipt.txt --year 1690 --title "An Almond Tart" -o tart.html' },
    { says: 'From the standard input', line: "echo 'Take a pint of cream and the yolks of six eggs' | pottle sheet -y 1690" },
    { says: 'For the dish and the eggs at hand', line: "pottle sheet receipt.txt -y 1690 --dish 'round 23cm x 4cm' --eggs egg-uk-l" },
    { says: 'By the wine pint, with eggs of 52 g', line: 'pottle sheet receipt.txt -y 1690 --fix pint=wine --fix egg=52g' },
    { says: 'For American spoons and cups', line: 'pottle sheet --demo seed-buns-1790 --units us' },
    { says: 'The lines for a spreadsheet', line: 'pottle sheet --demo almond-tart-1690 --format csv > tart.csv' },
  ],
  parameters: {
    'plan.eggClass': '--eggs',
    'plan.fixed': '--fix',
    'plan.fixed.standards': '--fix',
    'plan.fixed.sizes': '--fix',
    'plan.fixed.lines': '--fix line',
    'plan.fixed.densities': '--fix',
    'plan.dish': '--dish',
    'plan.dish.id': '--dish',
    'plan.scale': '--scale',
    'plan.guests': '--guests',
    'plan.serves': '--serves',
    'plan.limit': '--limit',
    'plan.units': '--units',
    'plan.oven': '--oven',
  },
  async run({ words, given, terminal, page }) {
    const { output, year, place, title, coverage } = given
    const format = formatFrom(given, formats, 'json') ?? (output === undefined ? undefined : formatOf(output)) ?? 'text'
    const plan = planFrom(given)
    const { text, ...own } = await receiptFor(words, given, terminal)
    const sheet = workSheet(text, {
      year: year ?? own.year,
      place: place ?? own.place,
      title: title ?? own.title,
      coverage: numberOf('coverage', coverage),
      plan,
    })
    const written = render(sheet, format, output === undefined ? page : { ...page, bold: (words) => words, quiet: (words) => words })
    return output === undefined ? written : writeFile(output, written, terminal)
  },
})

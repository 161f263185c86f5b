import type { Command } from './command.js'
import { exitMeanings } from './exit.js'
import { hang, table, wrap } from './layout/index.js'
import type { Option } from './options.js'
import type { Page } from './terminal.js'

const helpOption: readonly [string, Option] = ['help', { says: 'Show this help.', short: 'h' }]

/** An example is a line to be copied, so it is never broken by us; what it does stands above it. */
function exampleLines(examples: Command['examples'], { width, quiet }: Page): readonly string[] {
  return examples.flatMap(({ says, line }, i) => [
    ...(i > 0 ? [''] : []),
    ...wrap(says, width - 4).map((row) => quiet(`  # ${row}`)),
    `  ${line}`,
  ])
}

function optionRows(options: readonly (readonly [string, Option])[]): readonly (readonly string[])[] {
  return options.map(([name, { says, value, short, many }]) => [
    `${short ? `-${short}, ` : '    '}--${name}${value ? ` ${value}` : ''}`,
    many ? `${says} May be given more than once.` : says,
  ])
}

function exitLines({ width, bold }: Page): readonly string[] {
  return [
    bold('Exit codes'),
    ...table(
      [{ align: 'right' }, { wraps: true }],
      exitMeanings.map(([code, says]) => [String(code), says]),
      width,
    ),
  ]
}

/** The help of one command: usage, what it does, its options, and examples that can be run as they stand. */
export function helpFor(one: Command, page: Page): string {
  const { width, bold } = page
  const lines = [
    ...hang('Usage: ', `pottle ${one.name} ${one.takes} [options]`.replace('  ', ' '), width),
    ...one.about.flatMap((text) => ['', ...wrap(text, width)]),
    '',
    bold('Options'),
    ...table([{ drawn: true }, { wraps: true }], optionRows([...Object.entries(one.options), helpOption]), width),
    '',
    bold('Examples'),
    ...exampleLines(one.examples, page),
    '',
    ...exitLines(page),
  ]
  return `${lines.join('\n')}\n`
}

/** The help of the whole program. */
export function helpForAll(commands: readonly Command[], page: Page): string {
  const { width, bold } = page
  const lines = [
    ...hang('Usage: ', 'pottle COMMAND [words] [options]', width),
    '',
    ...wrap(
      'Turns the measures of old English cookery books into modern ones, with a band that says how sure that is and the sources that it rests on.',
      width,
    ),
    '',
    bold('Commands'),
    ...table(
      [{ ink: bold }, { wraps: true }],
      commands.map(({ name, summary }) => [name, summary]),
      width,
    ),
    '',
    bold('Everywhere'),
    ...table(
      [{ drawn: true }, { wraps: true }],
      [
        ['-h, --help', 'Show the help; pottle COMMAND --help shows that of a command.'],
        ['-V, --version', 'Show the version of the program and of its tables.'],
        ['    --json', 'Write JSON for other programs, and errors as problem objects (RFC 9457).'],
      ],
      width,
    ),
    '',
    bold('Examples'),
    ...exampleLines(
      commands.flatMap(({ examples }) => examples.slice(0, 1)),
      page,
    ),
    '',
    ...exitLines(page),
    '',
    bold('Environment'),
    ...table(
      [{}, { wraps: true }],
      [
        ['NO_COLOR', 'set to anything: no bold or faint letters, which appear on a terminal only and never say anything by themselves'],
        ['COLUMNS', 'the width of a line where the output is no terminal; 80 where it is not set'],
      ],
      width,
    ),
  ]
  return `${lines.join('\n')}\n`
}

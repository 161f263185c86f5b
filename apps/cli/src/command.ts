import type { Exit } from './exit.js'
import type { Given, Options } from './options.js'
import type { Page, Terminal } from './terminal.js'

/** A command line that can be typed as it stands, and what it does. */
export interface Example {
  readonly says: string
  readonly line: string
}

/** What a command is called with. */
export interface Call<Named extends Options = Options> {
  /** The words that are no options. */
  readonly words: readonly string[]
  readonly given: Given<Named>
  readonly terminal: Terminal
  /** How the standard output is set. */
  readonly page: Page
}

/** What a command answers: text for the standard output, or an exit code where it has written by itself. */
export type Reply = string | Exit

export interface Command<Named extends Options = Options> {
  readonly name: string
  /** What stands behind the name in the usage line: `WORDS`. */
  readonly takes: string
  /** One line for the list of commands. */
  readonly summary: string
  /** Paragraphs for the command's own help. */
  readonly about: readonly string[]
  readonly options: Named
  readonly examples: readonly Example[]
  /** What the library calls an option by, where it has another name here: `phrase` is `the phrase`. */
  readonly parameters?: Readonly<Record<string, string>>
  run(call: Call<Named>): Reply | Promise<Reply>
}

/** Checks a command against its own options, and lets it stand in a list with others. */
export function command<const Named extends Options>(one: Command<Named>): Command {
  return one as unknown as Command
}

/** A command, an option or a word that is not one of ours, or does not fit. */
export class UsageError extends Error {
  constructor(
    /** The option or part of the command line at fault: `--dish`. */
    readonly at: string,
    /** What was wrong and what would be right. */
    readonly detail: string,
  ) {
    super(at === '' ? detail : `${at}: ${detail}`)
  }
}

/** A well-put question that these tables can't answer. */
export class NoAnswer extends Error {}

/** A file that can't be read or written. */
export class FileError extends Error {}

/** What the process ends with; `--help` prints these lines. */
export const exits = {
  done: 0,
  noAnswer: 1,
  wrongUsage: 2,
  file: 3,
  ownFault: 70,
  interrupted: 130,
} as const

export type Exit = (typeof exits)[keyof typeof exits]

/** What each means, for the help. */
export const exitMeanings: readonly (readonly [Exit, string])[] = [
  [exits.done, 'done; also where the reader of the output has stopped reading'],
  [exits.noAnswer, 'the question has no answer, the words could not be read, or some lines of a stream failed'],
  [exits.wrongUsage, 'wrong usage: an unknown command or option, or a value that is out of range'],
  [exits.file, 'a file could not be read or written'],
  [exits.ownFault, 'a fault of the program itself'],
  [exits.interrupted, 'stopped by Ctrl-C (by SIGTERM: 143); the lines written before it are whole'],
]

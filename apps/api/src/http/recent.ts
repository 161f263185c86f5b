/** So many bytes of answers are kept in all, and an answer of more than a part of that is not worth keeping. */
const most = 16_000_000
const mostOfOne = 100_000

/** An answer as it is sent. */
export type Written = Uint8Array<ArrayBuffer>

/** Answers that were given lately, by what was asked. */
export interface Recent {
  get(asked: string): Written | undefined
  keep(asked: string, answer: Written): void
}

/**
 * Keeps what was answered lately, as bytes: of the questions that reach a server, many are asked again and again, and none has another answer
 * before the next release. What was not asked for the longest time goes first.
 */
export function keepRecent(): Recent {
  const answers = new Map<string, Written>()
  let bytes = 0
  const forget = (asked: string, answer: Written): void => {
    answers.delete(asked)
    bytes -= asked.length + answer.length
  }
  return {
    get: (asked) => {
      const answer = answers.get(asked)
      if (answer === undefined) return undefined
      // A map gives its entries in the order in which they came, so that this one becomes the youngest.
      answers.delete(asked)
      answers.set(asked, answer)
      return answer
    },
    keep: (asked, answer) => {
      if (answer.length > mostOfOne || answers.has(asked)) return
      answers.set(asked, answer)
      bytes += asked.length + answer.length
      for (const [oldest, written] of answers) {
        if (bytes <= most) break
        forget(oldest, written)
      }
    },
  }
}

/** So many bytes of answers are kept in each of two generations, and an answer of more than a part of that is not worth keeping. */
const most = 8_000_000
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
 * before the next release. What is asked goes into the young generation; once that is full it is the old one, and what was old and not asked
 * since is gone. To keep them in the order of their last use instead would cost each answer more than finding it does.
 */
export function keepRecent(): Recent {
  let young = new Map<string, Written>()
  let old = new Map<string, Written>()
  let bytes = 0
  const keep = (asked: string, answer: Written): void => {
    if (answer.length > mostOfOne || young.has(asked)) return
    bytes += asked.length + answer.length
    if (bytes > most) {
      old = young
      young = new Map()
      bytes = asked.length + answer.length
    }
    young.set(asked, answer)
  }
  return {
    get: (asked) => {
      const answer = young.get(asked)
      if (answer !== undefined) return answer
      const aged = old.get(asked)
      if (aged !== undefined) keep(asked, aged)
      return aged
    },
    keep,
  }
}

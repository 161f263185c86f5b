/** So many bytes of answers are kept in each of two generations, and an answer of more than a part of that is not worth keeping. */
const most = 8_000_000
const mostOfOne = 100_000
/** So many questions are known to have been asked once; a power of two. */
const slots = 1 << 14

/** An answer as it is sent. */
export type Written = Uint8Array<ArrayBuffer>

/** Answers that were given lately, by what was asked. */
export interface Recent {
  get(asked: string): Written | undefined
  /** Keeps an answer if this is not the first time that it was given. */
  keep(asked: string, answer: Written): void
}

function hashOf(text: string): number {
  let hash = text.length
  for (let i = 0; i < text.length; i++) hash = (Math.imul(hash, 31) + text.charCodeAt(i)) | 0
  return hash
}

/** Tells what was met before from what is new. Now and then two that share a hash are taken for one: an answer is kept that need not be. */
function acquaintance(): (text: string) => boolean {
  const met = new Int32Array(slots)
  return (text) => {
    const hash = hashOf(text)
    const slot = hash & (slots - 1)
    if (met[slot] === hash) return true
    met[slot] = hash
    return false
  }
}

/**
 * Keeps what was answered lately, as bytes: of the questions that reach a server, many are asked again and again, and none has another answer
 * before the next release. Many others are never asked again, and to keep their answers would cost a tenth of making them.
 *
 * What is asked goes into the young generation; once that is full it is the old one, and what was old and not asked since is gone. To keep them
 * in the order of their last use instead would cost each answer more than finding it does.
 */
export function keepRecent(): Recent {
  let young = new Map<string, Written>()
  let old = new Map<string, Written>()
  let bytes = 0
  const isMet = acquaintance()
  const store = (asked: string, answer: Written): void => {
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
      if (aged !== undefined) store(asked, aged)
      return aged
    },
    keep: (asked, answer) => {
      if (answer.length <= mostOfOne && isMet(asked)) store(asked, answer)
    },
  }
}

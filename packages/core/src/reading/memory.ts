import type { Reading } from './reading.js'

/**
 * Phrases read lately. Readings never change, and kitchens ask for *a pint of cream* again and again.
 *
 * Two slots a hash and no chains: a phrase that is new costs a store, and a stream of new ones holds no more than this many.
 */
const size = 4096
const texts: string[] = new Array(size).fill('')
const readings: (Reading | undefined)[] = new Array(size).fill(undefined)

function slotOf(text: string): number {
  let hash = text.length
  const end = Math.min(text.length, 64)
  for (let i = 0; i < end; i++) hash = (Math.imul(hash, 31) + text.charCodeAt(i)) | 0
  return hash & (size - 1)
}

/** The reading of a phrase that was read lately. */
export function recall(text: string): Reading | undefined {
  const slot = slotOf(text)
  if (texts[slot] === text) return readings[slot]
  return texts[slot ^ 1] === text ? readings[slot ^ 1] : undefined
}

/** The newest takes its slot; what it displaces moves next door if there is room. */
export function remember(text: string, reading: Reading): void {
  const slot = slotOf(text)
  const beside = slot ^ 1
  if (texts[slot] !== '' && texts[beside] === '') {
    texts[beside] = texts[slot]!
    readings[beside] = readings[slot]
  }
  texts[slot] = text
  readings[slot] = reading
}

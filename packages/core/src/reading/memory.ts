import type { Reading } from './reading.js'

/**
 * Phrases read lately. Readings never change, and kitchens ask for *a pint of cream* again and again.
 *
 * One slot a hash and no chains: a phrase that is new costs a store, and a stream of new ones holds no more than this many.
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

export function recall(text: string): Reading | undefined {
  const slot = slotOf(text)
  return texts[slot] === text ? readings[slot] : undefined
}

export function remember(text: string, reading: Reading): void {
  const slot = slotOf(text)
  texts[slot] = text
  readings[slot] = reading
}

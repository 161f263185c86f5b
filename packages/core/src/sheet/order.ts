import type { FoundTime } from '../reading/index.js'
import type { SheetLine, SheetStep } from './sheet.js'

/** Where one thing to do ends and the next begins: after a full stop, colon or semicolon, and before *then* or *after that*. */
const joint = /[.;:!?]{1,3}(?=\s|$)|,?\s{1,3}(?:and\s{1,3})?(?=(?:then|afterwards?|after\s{1,3}that|when\s{1,3}it\s{1,3}is|lastly)\b)/giu
/** Points behind these end no sentence. */
const shortened = /(?:^|[\s(])(?:lb|lbs|oz|ozs|dr|qt|pt|gal|no|st|viz|mr|mrs|i|e|[ivxlcj]{1,8}|\d{1,4})$/iu

/** Between shillings and pence there is no end either: *2s. 3d.*. */
const shillings = /\d\s?s$/iu
/** A heading belongs to what stands under it. */
const heading = /^[\s.;:]{0,8}(?:ingredients|mode|method|directions)\s?$/iu
/** A list of ingredients is one thing to lay out, to its full stop. */
const listing = /^[\s.;:]{0,8}ingredients\b/iu

interface Piece {
  readonly start: number
  readonly end: number
}

/** The pieces of the text between its joints, without the white space around them. */
function piecesOf(text: string): readonly Piece[] {
  const pieces: Piece[] = []
  let from = 0
  const close = (end: number): void => {
    const piece = text.slice(from, end)
    const start = from + piece.length - piece.trimStart().length
    if (piece.trim() !== '') pieces.push({ start, end: start + piece.trim().length })
    from = end
  }
  for (const { 0: mark, index } of text.matchAll(joint)) {
    if (isNoJoint(text, from, index, mark)) continue
    close(index + (/^[.;:!?]/.test(mark) ? mark.length : mark[0] === ',' ? 1 : 0))
  }
  close(text.length)
  return pieces
}

/** Whether a mark joins what stands before it to what stands behind. */
function isNoJoint(text: string, from: number, index: number, mark: string): boolean {
  const before = text.slice(Math.max(from, index - 12), index)
  const start = text.slice(from, Math.min(index, from + 24))
  if (mark === '.' && (shortened.test(before) || (shillings.test(before) && /^\.\s?\d/.test(text.slice(index, index + 3))))) return true
  return (index - from < 24 && heading.test(start)) || (mark === ';' && listing.test(start))
}

/** A joint inside a measure is none: *1 lb. 4 oz.*, *an egg; leave out the white*. */
function unbroken(pieces: readonly Piece[], lines: readonly Piece[]): readonly Piece[] {
  const whole: Piece[] = []
  let next = 0
  for (const piece of pieces) {
    const last = whole.at(-1)
    while (next < lines.length && last && lines[next]!.end <= last.end) next++
    const line = lines[next]
    const cut = last && line && line.start < last.end && line.end > last.end
    if (cut) whole[whole.length - 1] = { start: last.start, end: piece.end }
    else whole.push(piece)
  }
  return whole
}

/** Deals out a list in the order of the text, piece by piece. */
function dealer<Item extends Piece>(items: readonly Item[]): (piece: Piece) => readonly Item[] {
  let next = 0
  return ({ end }) => {
    const from = next
    while (next < items.length && items[next]!.start < end) next++
    return items.slice(from, next)
  }
}

/**
 * The order of work as far as the text gives it: its sentences and clauses, each with the lines it uses and the time it states.
 *
 * The words are those of the text; nothing is put in and nothing left out but the white space between.
 */
export function orderOf(text: string, lines: readonly SheetLine[], times: readonly FoundTime[]): readonly SheetStep[] {
  const ordered = [...lines].sort((a, b) => a.start - b.start)
  const usedIn = dealer(ordered)
  const statedIn = dealer(times)
  return unbroken(piecesOf(text), ordered).map((piece, i) => ({
    number: i + 1,
    ...piece,
    text: text.slice(piece.start, piece.end),
    lines: usedIn(piece).map(({ number }) => number),
    minutes: statedIn(piece).find(({ minutes }) => minutes !== null)?.minutes ?? null,
  }))
}

import type { Entry } from '@pottle/embed/view'

/** All lengths are in pixels, at the usual 16 to an em: an estimate, on the generous side, of how a browser sets the page. */
const paper = { sides: 32, topAndBottom: 40 }
/** Of the wider faces that a system puts in the place of ours. */
const letter = 7.2
/** Frames narrower than a small phone are as if so wide: they scroll. */
const narrowest = 200

/** What each part takes: its line, and the air around it. */
const part = {
  words: { line: 27, air: 4 },
  answer: { line: 44, air: 4 },
  also: { line: 24, air: 8 },
  band: { line: 21, air: 0 },
  gauge: { line: 78, air: 0 },
  sense: { line: 21, air: 8 },
  senses: { line: 0, air: 14 },
  note: { line: 21, air: 6 },
  /** The closed disclosure and the imprint. */
  foot: { line: 64, air: 0 },
} as const

/** The figures of a meaning stand beside its label. */
const besideLabel = 150

/** How tall the small page of an entry stands in a frame of a width, its disclosure closed. */
export function heightFor({ words, setting, also, band, senses, notes }: Entry, width: number): number {
  const inner = Math.max(width, narrowest) - paper.sides
  const tall = ({ line, air }: { line: number; air: number }, text = ' ', room = inner): number =>
    text === '' ? 0 : Math.ceil((text.length * letter) / room) * line + air
  const all = [
    // Larger letters than the rest.
    tall(part.words, words + setting, inner * 0.8),
    tall(part.answer),
    tall(part.also, also.join(', ')),
    tall(part.band, band?.text),
    band ? tall(part.gauge) : 0,
    senses.length > 0 ? tall(part.senses) : 0,
    ...senses.map(({ label }) => tall(part.sense, label, inner - besideLabel)),
    ...notes.map((note) => tall(part.note, note)),
    tall(part.foot),
  ]
  return paper.topAndBottom + all.reduce((sum, height) => sum + height, 0)
}

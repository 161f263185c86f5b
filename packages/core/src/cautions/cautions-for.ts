import { badOption, requireFields, requireWord } from '../error.js'
import { once } from '../once.js'
import { type CautionRow, cautions } from '../tables/index.js'
import { Keys } from './find.js'
import { deedKey, deedWords, nounKey, nounWords } from './fold.js'
import { nameHeat, nameKey, nameThing, nounKeys, spokenHeats } from './names.js'

/** A danger that a receipt touches, with what to do about it and who says so. */
export type Caution = CautionRow

/** What is known of a receipt. Everything may be left out; `text` is searched for whatever the rest did not name. */
export interface CautionQuestion {
  /** Things by any name that the tables know, singular or plural. */
  readonly things?: readonly string[]
  /** What is done, in the words of receipts: *pickled*, *potted*. */
  readonly methods?: readonly string[]
  /** Whether eggs or parts of them are in it. */
  readonly eggs?: boolean
  /** The oven: a heat's id, or words for it. */
  readonly heat?: string
  /** The words of the receipt. */
  readonly text?: string
}

interface Touched {
  readonly things: Set<string>
  readonly classes: Set<string>
  readonly deeds: Set<string>
  readonly heats: Set<string>
}

/** The rows with their nouns and deeds as keys, once for all questions. */
const keyed = once(() =>
  cautions.map((row) => ({
    row,
    things: (row.touches.things ?? []).map(nounKey),
    deeds: (row.touches.methods ?? []).map(deedKey),
  })),
)

const nouns = once(() => new Keys(nounKeys()))
const spokenDeeds = once(() => new Keys([...keyed().flatMap(({ deeds }) => deeds), ...spokenHeats().keys()]))

const sizes = new Set(['size', 'bigness', 'greatness', 'largeness', 'magnitude', 'big', 'large', 'great'])
const numbers = new Set(['a', 'an', 'the', 'half', 'two', 'three', 'small', 'large', 'good'])

/** A brine that will bear an egg has none in it. */
const bearing = new Set(['bear', 'beare', 'bears', 'float', 'floats', 'swim'])

/** The words of a text without what it only likens to: no egg goes in with *butter the size of an egg*. */
function withoutLikenings(words: readonly string[]): readonly string[] {
  const kept: string[] = []
  for (let at = 0; at < words.length; at++) {
    kept.push(words[at]!)
    const likens = sizes.has(words[at]!) && (words[at + 1] === 'of' || words[at + 1] === 'as')
    let object = likens ? at + 2 : at + 1
    while (numbers.has(words[object] ?? '')) object++
    const bears = bearing.has(words[at]!) && object > at + 1 && words[object] === 'egg'
    if (!likens && !bears) continue
    at = Math.max(at, nouns().endAt(words, object) - 1)
  }
  return kept
}

function touchedBy(question: CautionQuestion): Touched {
  const touched: Touched = { things: new Set(), classes: new Set(), deeds: new Set(), heats: new Set() }
  const add = (things: readonly string[], classes: readonly string[]) => {
    for (const thing of things) touched.things.add(thing)
    for (const one of classes) touched.classes.add(one)
  }
  for (const thing of question.things ?? []) {
    const named = nameThing(thing)
    add(named.things, named.classes)
  }
  if (question.eggs) add(['egg'], ['egg'])
  for (const method of question.methods ?? []) touched.deeds.add(deedKey(method))
  const heat = question.heat === undefined ? undefined : nameHeat(question.heat)
  if (heat) touched.heats.add(heat)
  if (!question.text) return touched
  const words = deedWords(question.text)
  for (const noun of nouns().longest(withoutLikenings(nounWords(words)))) {
    const named = nameKey(noun)
    add(named.things, named.classes)
  }
  for (const deed of spokenDeeds().all(words)) {
    touched.deeds.add(deed)
    const spoken = spokenHeats().get(deed)
    if (spoken) touched.heats.add(spoken)
  }
  return touched
}

/** Whether one of the words of a field is there; a field that asks nothing is always met. */
function met(asked: readonly string[], there: ReadonlySet<string>): boolean {
  return asked.length === 0 || asked.some((one) => there.has(one))
}

function isTouched({ row, things, deeds }: ReturnType<typeof keyed>[number], touched: Touched): boolean {
  const { classes = [], heats = [], eggs } = row.touches
  const asksWhat = things.length + classes.length > 0
  const what = !asksWhat || things.some((one) => touched.things.has(one)) || classes.some((one) => touched.classes.has(one))
  return what && (!eggs || touched.classes.has('egg')) && met(heats, touched.heats) && met(deeds, touched.deeds)
}

/**
 * The cautions that a receipt touches, in the order of the table: by what is in it, what is done with it and how the oven stands.
 *
 * Pure, and linear in the length of the text. It warns of what the table knows and is no food-safety authority: that a receipt gets no
 * caution does not make it safe.
 *
 * @throws PottleError `bad-option` for a field that is not of its type
 * @example cautionsFor({ things: ['laurel leaves'] }).map(({ id }) => id)                   // ['cherry-laurel']
 * @example cautionsFor({ things: ['a loin of veal'], heat: 'slack' }).map(({ id }) => id)   // ['slow-oven-meat']
 */
export function cautionsFor(question: CautionQuestion): readonly Caution[] {
  const { things = [], methods = [] } = requireFields('question', question)
  if (!Array.isArray(things)) throw badOption('things', 'give a list of names')
  if (!Array.isArray(methods)) throw badOption('methods', 'give a list of words')
  for (const word of [...things, ...methods, question.text ?? '', question.heat ?? '']) requireWord('question', word)
  const touched = touchedBy(question)
  return keyed()
    .filter((one) => isTouched(one, touched))
    .map(({ row }) => row)
}

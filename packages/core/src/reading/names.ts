import {
  coins,
  comparisons,
  eggs,
  type MeasureWordRow,
  measures,
  numbers,
  type ThingWordRow,
  things,
  vessels,
  words,
} from '../tables/index.js'
import { singulars } from './spelling.js'

/** A row of names that readings may meet. */
export type NameRow = MeasureWordRow | ThingWordRow

type MeasureClass = MeasureWordRow['class']

/** The rows of another table, as far as names go. */
interface Source {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
}

const plainName = (id: string): string => id.replaceAll('-', ' ')

/** *large wineglass* is a wineglass that is large: words that the grammar reads by itself are no names. */
const readByGrammar = /^(?:large|small|big|good|great|two|both|half|few|little|pretty|heaped|english|scots|scotch) | (?:of|on) /

/**
 * The measures of another table, so that a row added there can be read: a new name for a known measure, or a new measure.
 * Names that begin with a standard (*wine pint*) or end in a known measure are read in two parts, and need no row.
 */
function* fromTable(rows: readonly Source[], cls: MeasureClass, known: ReadonlyMap<string, MeasureWordRow>): Generator<NameRow> {
  const labels = new Set(Array.from(known.values(), ({ label }) => label))
  for (const row of rows) {
    const label = plainName(row.id)
    const row0 = known.get(`${cls}:${label}`) ?? known.get(`${cls}:${row.id}`)
    const parts = label.split(' ')
    const twofold = row0 === undefined && parts.length > 1 && labels.has(parts.at(-1)!)
    if (twofold || readByGrammar.test(label)) continue
    const all = row.names.map((name) => name.toLowerCase()).filter((name) => /^[\p{L}' -]+$/u.test(name) && !readByGrammar.test(name))
    // Plurals are read by rule: "combs" listed for the coomb would leave none for the cock.
    const names = all.filter((name) => !singulars(name).some((one) => one === label || all.includes(one)))
    const bare = cls === 'object' || cls === 'coin'
    yield row0 ? { ...row0, names } : { id: row.id, label, class: cls, names, ...(!bare && { needs: 'of' as const }) }
  }
}

/**
 * Eggs of every bird but the hen, by the name of the bird before them and behind: *goose eggs*, *eggs of a goose*.
 *
 * A bird added to the table of eggs can be read without another word.
 */
const birdEggs: readonly ThingWordRow[] = eggs.slice(1).map(({ id, names }) => {
  const birds = names.map((name) => name.toLowerCase().replace(/ egg$/, ''))
  return {
    id: `${id}-egg`,
    label: `${plainName(id)} egg`,
    names: [...names, ...birds.flatMap((bird) => ['', 'a ', 'the '].map((article) => `egg of ${article}${bird}`))],
    count: 'each',
  }
})

/** The names of things that are eggs, whoever laid them. */
export const eggNames: ReadonlySet<string> = new Set(['egg', ...birdEggs.map(({ label }) => label)])

const numberWords = new Set(numbers.flatMap(({ id, names }) => [id, ...names]))

/** Dozens and hundreds are read as numbers; a mease and a cade are words for so many of a thing. */
const isNumber = (name: string): boolean => name.split(/[ -]/).some((word) => numberWords.has(word))

/** Every name: the vocabulary of reading first, then what the tables of measures, vessels, coins and sizes add to it. */
export function allNames(): NameRow[] {
  const known = new Map(words.map((row) => [`${row.class}:${row.label}`, row]))
  // What one table calls a vessel may be a spoon, a cup or a hand to another.
  for (const row of words)
    if (['spoon', 'cup', 'hand', 'piece'].includes(row.class)) known.set(`cup:${row.label}`, known.get(`cup:${row.label}`) ?? row)
  for (const row of words) if (row.class === 'piece') known.set(`capacity:${row.label}`, row)
  return [
    ...words,
    ...things,
    ...birdEggs,
    ...fromTable(
      measures.filter(({ kind }) => kind === 'weight'),
      'weight',
      known,
    ),
    ...fromTable(
      measures.filter(({ kind }) => kind === 'capacity'),
      'capacity',
      known,
    ),
    ...fromTable(
      measures
        .filter(({ kind, id }) => kind === 'count' && !isNumber(id))
        .map((row) => ({ ...row, names: row.names.filter((name) => !isNumber(name)) })),
      'piece',
      known,
    ),
    ...fromTable(vessels, 'cup', known),
    ...fromTable(coins, 'coin', known),
    ...fromTable(
      comparisons.map(({ id, names }) => ({ id, label: id, names })),
      'object',
      known,
    ),
  ]
}

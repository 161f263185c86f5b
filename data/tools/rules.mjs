/** Faults within a row that no type tells: nobody named who says so, figures that fall, years that run backwards, weights that do not add up. */
import { readValue, units } from './forms.mjs'
import { inside, partsOf, say } from './say.mjs'

/** Tables of words and places claim no figure, so their rows carry no source; `sources` are the sources. */
const sourceless = ['places', 'words', 'numbers', 'particles', 'spellings', 'things', 'sources']
/** Grades that rest on no text, so that there is nothing to have read. */
const ungrounded = ['practice', 'judgement']

/** @returns {{table: string, row: string, said: string}[]} */
export function findRuleFaults(tables) {
  const everywhere = Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) => [
      ...attestationFaults(table, row),
      ...partsOf(row).flatMap(({ path, part }) => orderFaults(part).map((said) => say(table, row, inside(path, said)))),
    ]),
  )
  return [...everywhere, ...standardFaults(tables), ...measureFaults(tables), ...weightFaults(tables), ...priceFaults(tables)]
}

function attestationFaults(table, row) {
  if (sourceless.includes(table)) return []
  const claims = partsOf(row).filter(({ part }) => Array.isArray(part.source))
  if (claims.length === 0) return [say(table, row, 'it names no source and no grade: say who says so, and how well it is attested')]
  return claims.flatMap(({ path, part }) => claimFaults(part).map((said) => say(table, row, inside(path, said))))
}

function claimFaults({ source, grade, checked }) {
  const faults = []
  if (source.length === 0) faults.push('no source is named: list at least one, by its id in sources.json')
  if (checked === 'none' && !ungrounded.includes(grade))
    faults.push(`a ${grade} rests on a text: say whether it was read ("read") or recalled ("memory")`)
  return faults
}

function orderFaults({ low, best, high, years }) {
  const faults = []
  const ends = [low, best, high].filter((end) => typeof end === 'number')
  if (ends.some((end, i) => i > 0 && end < ends[i - 1])) faults.push(`low, best and high are ${ends.join(', ')}: they must rise`)
  if (Array.isArray(years) && years[0] > years[1]) faults.push(`the years ${years[0]} to ${years[1]} run backwards`)
  return faults
}

function numberOf({ ratio }) {
  const [over, under = '1'] = ratio.split('/')
  return Number(over) / Number(under)
}

function standardFaults({ standards = [] }) {
  return standards.flatMap((row) => {
    const value = readValue(row.value)
    const ends = (row.ends ?? []).map(readValue)
    const faults = []
    if (units[value.unit] !== row.quantity) faults.push(say('standards', row, `"${row.value}" is no ${row.quantity}`))
    if (ends.some(({ unit }) => unit !== value.unit)) faults.push(say('standards', row, 'its ends and its value are in different units'))
    const [low, best, high] = [ends[0] ?? value, value, ends[1] ?? value].map(numberOf)
    if (low > best || best > high)
      faults.push(say('standards', row, `the value ${row.value} does not lie between its ends ${row.ends.join(' and ')}`))
    return faults
  })
}

function measureFaults({ measures = [] }) {
  return measures.filter(({ senses }) => senses.length === 0).map((row) => say('measures', row, 'senses is empty: write at least one'))
}

/** Weights share one whole. */
function weightFaults({ usage = [], 'loaf-usage': loaves = [] }) {
  const rows = [...usage.map((row) => ['usage', row]), ...loaves.map((row) => ['loaf-usage', row])]
  return rows.flatMap(([table, row]) => {
    const weights = Object.values(row.weights)
    const sum = weights.reduce((all, weight) => all + weight, 0)
    const faults = []
    if (weights.some((weight) => weight <= 0)) faults.push(say(table, row, 'a weight is not above 0: leave out what has none'))
    if (Math.abs(sum - 1) > 1e-6) faults.push(say(table, row, `its weights add up to ${Number(sum.toFixed(6))}: they must add up to 1`))
    return faults
  })
}

/** A row of prices has one for each of its years. */
function priceFaults({ 'wheat-prices': prices = [] }) {
  return prices.flatMap((row) => {
    const [from, to] = row.years
    const count = to - from + 1
    if (row.shillings.length === count) return []
    return [
      say('wheat-prices', row, `it has ${row.shillings.length} prices for the ${count} years from ${from} to ${to}: write one for each`),
    ]
  })
}

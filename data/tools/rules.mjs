/** Faults that no shape can catch: rows without a source, figures out of order, years that overlap, weights that do not add up. */
import { checks, grades, ratioPattern, sourceless, ungrounded, units } from '../schema.mjs'
import { partsOf, say } from './say.mjs'

/** @returns {{table: string, row: string, said: string}[]} */
export function findRuleFaults(tables) {
  const everywhere = Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) => [
      ...attestationFaults(table, row),
      ...partsOf(row).flatMap(({ path, part }) => partFaults(table, row, path, part)),
    ]),
  )
  return [...everywhere, ...standardFaults(tables), ...usageFaults(tables), ...senseFaults(tables)]
}

function attestationFaults(table, row) {
  if (sourceless.includes(table)) return []
  const claims = partsOf(row).filter(({ part }) => 'source' in part || 'grade' in part || 'checked' in part)
  if (claims.length === 0) return [say(table, row, 'it names no source and no grade: say who says so, and how well it is attested')]
  return claims.flatMap(({ path, part }) => claimFaults(part).map((said) => say(table, row, `${path && `${path}: `}${said}`)))
}

function claimFaults({ source, grade, checked }) {
  // A citation on its own (which book printed the degree) is no claim of a figure.
  if (grade === undefined && checked === undefined && !Array.isArray(source)) return []
  const faults = []
  if (!Array.isArray(source) || source.length === 0) faults.push('no source is named: list at least one, by its id in sources.json')
  if (!grades.includes(grade)) faults.push(`the grade is ${JSON.stringify(grade) ?? 'missing'}: write one of ${grades.join(', ')}`)
  if (!checks.includes(checked)) faults.push(`"checked" is ${JSON.stringify(checked) ?? 'missing'}: write one of ${checks.join(', ')}`)
  if (checked === 'none' && grades.includes(grade) && !ungrounded.includes(grade))
    faults.push(`a ${grade} rests on a text: say whether it was read ("read") or recalled ("memory")`)
  return faults
}

function partFaults(table, row, path, part) {
  const faults = []
  const add = (said) => faults.push(say(table, row, `${path && `${path}: `}${said}`))
  const { low, best, high, years } = part
  const ends = [low, best, high].filter((end) => typeof end === 'number')
  if (ends.some((end, i) => i > 0 && end < ends[i - 1])) add(`low, best and high are ${ends.join(', ')}: they must rise`)
  if (Array.isArray(years) && years[0] > years[1]) add(`the years ${years[0]} to ${years[1]} run backwards`)
  if (ends.some((end) => !Number.isFinite(end))) add('a figure is not a number')
  return faults
}

const meet = (a, b) => a[0] <= b[1] && b[0] <= a[1]
const yearsOf = ({ years }) => years ?? [0, 9999]
const listOf = (names) => [...(names ?? [])].sort().join()
const inBase = (text) => {
  const [over, under = '1'] = text.split(' ')[0].split('/')
  return Number(over) / Number(under)
}
const unitOf = (text) => text.split(' ')[1]
const readable = (text) => typeof text === 'string' && ratioPattern.test(text.split(' ')[0]) && unitOf(text) in units

/** Calls `found` for each pair of rows with the same key whose years meet. */
function overlaps(rows, keyOf, found) {
  return [...groupBy(rows, keyOf).values()].flatMap((group) =>
    group.flatMap((row, i) => group.slice(i + 1).flatMap((other) => (meet(yearsOf(row), yearsOf(other)) ? found(row, other) : []))),
  )
}

function groupBy(rows, keyOf) {
  const groups = new Map()
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row])
  return groups
}

function standardFaults({ standards = [] }) {
  const single = standards.flatMap((row) => {
    const faults = []
    if (readable(row.value) && units[unitOf(row.value)] !== row.quantity)
      faults.push(say('standards', row, `"${row.value}" is no ${row.quantity}`))
    if (!row.ends?.every(readable) || !readable(row.value)) return faults
    if (row.ends.some((end) => unitOf(end) !== unitOf(row.value)))
      faults.push(say('standards', row, 'its ends and its value are in different units'))
    const [low, best, high] = [row.ends[0], row.value, row.ends[1]].map(inBase)
    if (low > best || best > high)
      faults.push(say('standards', row, `the value ${row.value} does not lie between its ends ${row.ends.join(' and ')}`))
    return faults
  })
  const same = ({ label, family, place }) => [family, label, place].join('|')
  const twice = (row, other) => [say('standards', row, `"${other.id}" is the same standard in the same place, and their years overlap`)]
  return [...single, ...overlaps(standards, same, twice)]
}

function usageFaults({ usage = [] }) {
  const sums = usage.flatMap((row) => {
    const sum = Object.values(row.weights ?? {}).reduce((all, weight) => all + weight, 0)
    return Math.abs(sum - 1) < 1e-6 ? [] : [say('usage', row, `its weights add up to ${Number(sum.toFixed(6))}: they must add up to 1`)]
  })
  const same = ({ family, things, measures, place }) => [family, listOf(things), listOf(measures), place].join('|')
  const unclear = (row, other) => {
    const [a, b] = [yearsOf(row), yearsOf(other)]
    const nested = (a[0] >= b[0] && a[1] <= b[1]) || (b[0] >= a[0] && b[1] <= a[1])
    const alike = a[1] - a[0] === b[1] - b[0]
    return nested && !alike
      ? []
      : [say('usage', row, `"${other.id}" rules the same use and their years overlap: let one end where the other begins`)]
  }
  return [...sums, ...overlaps(usage, same, unclear)]
}

function senseFaults({ measures = [] }) {
  return measures.flatMap((row) => {
    const same = ({ of, ratio, things, place }) => [of, ratio, listOf(things), place].join('|')
    return overlaps(row.senses ?? [], same, (a, b) => [
      say('measures', row, `"${a.id}" and "${b.id}" say the same in the same years: keep one`),
    ])
  })
}

import { describe, expect, test } from 'vitest'
import { countSenses, findFaults } from '../../data/tools/faults.mjs'

type Row = Record<string, unknown>
type Tables = Record<string, readonly Row[]>

const attested = { source: [{ id: 'nicholson-1912' }], grade: 'handbook', checked: 'read' }
const nicholson = { id: 'nicholson-1912', type: 'book', title: 'Men and Measures', custom: { short: 'Nicholson', seen: 'a transcription' } }
const unseen = { id: 'lost-1600', type: 'book', title: 'A Book Not Seen', custom: { short: 'Lost', seen: 'not seen; recalled' } }
const kent = { id: 'kent', label: 'Kent' }
const wine = { id: 'gallon.wine', label: 'wine gallon', family: 'gallon', quantity: 'volume', value: '231 in3', ...attested }
const ale = { ...wine, id: 'gallon.ale', label: 'ale gallon', value: '282 in3' }
const sense = { id: 'pint', label: 'an eighth', of: 'gallon', ratio: '1/8', ...attested }
const pint = { id: 'pint', label: 'pint', kind: 'capacity', names: ['pynt'], senses: [sense] }
const use = {
  id: 'cream',
  family: 'gallon',
  things: ['cream'],
  weights: { 'gallon.wine': 0.7, 'gallon.ale': 0.3 },
  reason: 'A reason.',
  ...attested,
}
const good = {
  id: 'cream',
  label: 'cream',
  names: ['creame'],
  classes: ['dairy'],
  density: { low: 0.98, best: 1, high: 1.02 },
  ...attested,
}

const sound: Tables = {
  sources: [nicholson, unseen],
  places: [kent],
  standards: [wine, ale],
  measures: [pint],
  usage: [use],
  goods: [good],
}

/** The sound tables with one of them replaced. */
const but = (table: string, ...rows: Row[]): Tables => ({ ...sound, [table]: rows })
const said = (tables: Tables): string[] => findFaults(tables).map((fault) => `${fault.table} ${fault.row}: ${fault.said}`)

/** What was done to the tables, and the words that must be in the complaint. */
const broken: readonly [string, Tables, RegExp][] = [
  ['a thing by another spelling', but('usage', { ...use, things: ['creame'] }), /"creame" is a spelling of the good "cream"/],
  [
    'a use before its standard',
    { ...but('standards', { ...wine, years: [1500, 1825] }, ale), usage: [{ ...use, years: [1400, 1700] }] },
    /that holds from 1500 to 1825 alone/,
  ],
  [
    'a use outside its standard',
    {
      ...but('standards', { ...wine, place: 'kent' }, ale),
      usage: [{ ...use, place: 'surrey' }],
      places: [kent, { id: 'surrey', label: 'Surrey' }],
    },
    /that holds in kent alone/,
  ],
  ['a row without a source', but('standards', { ...wine, source: undefined }, ale), /standards gallon\.wine: .*no source is named/],
  ['a row with an empty list of sources', but('standards', { ...wine, source: [] }, ale), /no source is named/],
  ['a row without a grade', but('standards', { ...wine, grade: undefined }, ale), /grade is missing: write one of statute, standard/],
  ['an unknown grade', but('standards', { ...wine, grade: 'certain' }, ale), /grade is "certain": write one of statute/],
  ['an unknown way of checking', but('usage', { ...use, checked: 'maybe' }), /checked is "maybe": write one of read, memory, none/],
  ['a handbook that nobody looked into', but('usage', { ...use, checked: 'none' }), /a handbook rests on a text/],
  ['a table of its own that names no source', { ...sound, candles: [{ id: 'tallow' }] }, /candles tallow: it names no source and no grade/],
  ['a dangling source', but('usage', { ...use, source: [{ id: 'nobody-1700' }] }), /"nobody-1700" is not in sources\.json/],
  [
    'a dangling source inside a row',
    but('measures', { ...pint, senses: [{ ...sense, source: [{ id: 'nobody-1700' }] }] }),
    /senses "pint": the source/,
  ],
  ['a reading of what was not seen', but('usage', { ...use, source: [{ id: 'lost-1600' }] }), /lost-1600 was not seen: write "memory"/],
  ['an id used twice', but('standards', wine, ale, { ...ale, label: 'beer gallon' }), /the id "gallon\.ale" is used twice/],
  ['a row without an id', but('places', { label: 'Kent' }), /places number 1: id is missing/],
  ['a sense id used twice', but('measures', { ...pint, senses: [sense, { ...sense, ratio: '1/4' }] }), /the sense id "pint" is used twice/],
  [
    'a name of two measures',
    but('measures', pint, { ...pint, id: 'quart', senses: [{ ...sense, id: 'quart' }] }),
    /the name "pynt" also belongs to "pint"/,
  ],
  [
    'a name that is another measure',
    but('measures', { ...pint, names: ['quart'] }, { ...pint, id: 'quart', names: [], senses: [{ ...sense, id: 'q' }] }),
    /"quart" also belongs/,
  ],
  ['a name in capitals', but('measures', { ...pint, names: ['Pynt'] }), /names has "Pynt": write it in lower case/],
  [
    'a standard twice in the same years',
    but('standards', wine, ale, { ...wine, id: 'gallon.wine-again', years: [1700, 1750] }),
    /same standard in the same place/,
  ],
  ['years that run backwards', but('standards', { ...wine, years: [1825, 1707] }, ale), /the years 1825 to 1707 run backwards/],
  [
    'a density that falls',
    but('goods', { ...good, density: { low: 1, best: 0.98, high: 1.02 } }),
    /density: low, best and high are 1, 0\.98, 1\.02: they must rise/,
  ],
  ['ends on one side of the value', but('standards', { ...wine, ends: ['232 in3', '240 in3'] }, ale), /does not lie between its ends/],
  ['ends in another unit', but('standards', { ...wine, ends: ['3700 ml', '3800 ml'] }, ale), /in different units/],
  ['an unknown place', but('usage', { ...use, place: 'lyonesse' }), /the place "lyonesse" is not in places\.json/],
  ['a place within an unknown one', but('places', { ...kent, within: 'englnad' }), /"englnad" is not in places\.json/],
  [
    'places within each other',
    but('places', { ...kent, within: 'surrey' }, { id: 'surrey', label: 'Surrey', within: 'kent' }),
    /it lies within itself/,
  ],
  [
    'a sense of an unknown standard',
    but('measures', { ...pint, senses: [{ ...sense, of: 'gallon.beer' }] }),
    /"gallon\.beer" is no standard and no family/,
  ],
  ['a use of an unknown family', but('usage', { ...use, family: 'galon' }), /no standard is of the family "galon"/],
  ['a use of an unknown standard', but('usage', { ...use, weights: { 'gallon.beer': 1 } }), /"gallon\.beer" is not in standards\.json/],
  [
    'a use of an unknown measure',
    but('usage', { ...use, measures: ['pinte'] }),
    /measures names "pinte", which is not in measures\.json: did you mean "pint"\?/,
  ],
  [
    'weights that do not add up',
    but('usage', { ...use, weights: { 'gallon.wine': 0.7, 'gallon.ale': 0.2 } }),
    /its weights add up to 0\.9/,
  ],
  [
    'two uses for the same years',
    but('usage', use, { ...use, id: 'cream-again' }),
    /"cream-again" rules the same use and their years overlap/,
  ],
  [
    'uses whose years cross',
    but('usage', { ...use, years: [1500, 1700] }, { ...use, id: 'late', years: [1650, 1800] }),
    /let one end where the other begins/,
  ],
  [
    'senses that say the same',
    but('measures', { ...pint, senses: [sense, { ...sense, id: 'pint.again' }] }),
    /say the same in the same years/,
  ],
  ['a value without a unit', but('standards', { ...wine, value: '231' }, ale), /value has "231": write a number and its unit/],
  ['a value in words', but('standards', { ...wine, value: 'some in3' }, ale), /such as "231 in3"/],
  ['an unknown unit', but('standards', { ...wine, value: '231 cubits' }, ale), /use one of the units in3, ml/],
  ['a unit of another quantity', but('standards', { ...wine, value: '231 gr' }, ale), /"231 gr" is no volume/],
  [
    'a ratio that is no number',
    but('measures', { ...pint, senses: [{ ...sense, ratio: 'half' }] }),
    /ratio has "half": write a number or a fraction/,
  ],
  [
    'a field that nobody knows',
    but('usage', { ...use, reasons: 'x' }),
    /the row has "reasons", which is no field there: did you mean "reason"\?/,
  ],
  ['a field that is missing', but('usage', { ...use, reason: undefined }), /reason is missing/],
  [
    'a field that nobody could mean',
    but('usage', { ...use, colour: 'red' }),
    /has "colour", which is no field there: its fields are id, family/,
  ],
  ['a source by its name alone', but('usage', { ...use, source: 'nicholson-1912' }), /source is "nicholson-1912": write it so: \[\{ "id"/],
  [
    'one source without its list',
    but('usage', { ...use, source: { id: 'lost-1600' } }),
    /write a list, in square brackets: \[\{ "id": "lost-1600" \}\]/,
  ],
  [
    'one name without its list',
    but('goods', { ...good, names: 'creame' }),
    /names is "creame": write a list, in square brackets: \["creame"\]/,
  ],
  ['years in words', but('standards', { ...wine, years: '1707-1824' }, ale), /years is "1707-1824": write it so: \[1707, 1824\]/],
  ['one year of two', but('standards', { ...wine, years: [1707] }, ale), /years is \[1707\]: write 2 of them/],
  ['a number with a comma', but('goods', { ...good, density: { low: '0,98', best: 1, high: 1.02 } }), /density, low is "0,98": .*: 0\.98/],
  ['a number for a spread', but('goods', { ...good, density: 1.01 }), /density is 1\.01: write it so: \{ "low": 0\.9, "best": 1/],
  ['a spread without an end', but('goods', { ...good, density: { low: 0.9, best: 1 } }), /density: high is missing: write a number/],
  [
    'a fraction as a number',
    but('measures', { ...pint, senses: [{ ...sense, ratio: 0.5 }] }),
    /ratio is 0\.5: write it in quotation marks: "0\.5"/,
  ],
  ['a grade with a capital', but('usage', { ...use, grade: 'Handbook' }), /grade is "Handbook": write "handbook"/],
  ['a field with nothing in it', but('usage', { ...use, note: null }), /note is null: leave it out/],
  ['an empty text', but('usage', { ...use, note: '' }), /note is empty: write something, or leave it out/],
  ['an empty list that may be left out', but('usage', { ...use, things: [] }), /things is empty: write at least one, or leave it out/],
  [
    'a row that is none',
    { ...sound, places: [kent, 'surrey'] as unknown as Row[] },
    /places number 2: the row is "surrey": write it so: \{ "id"/,
  ],
  ['a weight of nothing', but('usage', { ...use, weights: { 'gallon.wine': 1, 'gallon.ale': 0 } }), /a weight is not above 0/],
  [
    'a heat that is none, in a table of other rows',
    {
      ...sound,
      heats: [{ id: 'slow', rank: 4, label: 'slow', names: [], ends: [270, 300], ...attested }],
      'heat-witnesses': [{ id: 'w', phrase: 'a slack oven', heat: 'slwo', goods: 'tarts', year: 1796, ...attested }],
      'heat-relations': [],
    },
    /heat names "slwo", which is not in heats\.json or heat-relations\.json: did you mean "slow"/,
  ],
  [
    'prices for other years',
    { ...sound, 'wheat-prices': [{ id: 'eton', series: 'eton', years: [1690, 1699], shillings: [40, 41], ...attested }] },
    /it has 2 prices for the 10 years from 1690 to 1699/,
  ],
  ['a measure without a sense', but('measures', { ...pint, senses: [] }), /senses is empty: write at least one/],
]

describe('the checker of the tables', () => {
  test('has nothing to say of sound tables', () => expect(said(sound)).toEqual([]))

  test.each(broken)('refuses %s', (_, tables, words) => expect(said(tables).join('\n')).toMatch(words))

  test('lets a narrower rule stand inside a wider one', () => {
    expect(said(but('usage', { ...use, years: [1500, 1700] }, { ...use, id: 'inner', years: [1600, 1650] }))).toEqual([])
  })

  test('tells the simplest faults first, and not what follows from them', () => {
    const both = { ...but('standards', { ...wine, years: '1707' }, ale), usage: [{ ...use, weights: { 'gallon.beer': 1 } }] }
    expect(said(both)).toEqual(['standards gallon.wine: years is "1707": write it so: [1707, 1824]'])
  })

  test('counts a sense by a family once for each of its standards', () => expect(countSenses(sound)).toBe(2))
})

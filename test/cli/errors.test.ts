/** What is said when something is wrong, where it is said, and what the process ends with. */
import { tmpdir } from 'node:os'
import { describe, expect, test } from 'vitest'
import { ask } from './ask.js'

const folder = tmpdir()
const receipt = 'Take half a pint of cream, two eggs and a penny white loaf.'

/** A command line divided at blanks, `_` standing for a blank in a word; what it ends with; what it must say. */
const wrong: readonly (readonly [string, number, ...string[]])[] = [
  ['', 2, 'Usage: pottle COMMAND'],
  ['convrt a pint', 2, '"convrt": there is no such command', 'convert'],
  ['a_pottle_of_cream', 2, "pottle convert 'a pottle of cream'"],
  ['--yaer 1690', 2, 'begin with a command'],
  ['convert', 2, 'the phrase: give the words'],
  ['convert a pint --yaer 1690', 2, '--yaer: there is no such option', '--year', 'Try: pottle convert --help'],
  ['convert a pint --year', 2, '--year: it needs a value, YEAR'],
  ['convert a pint --year --json', 2, '"detail":"it needs a value, YEAR'],
  ['convert a pint --full=yes', 2, '--full: it takes no value'],
  [
    'convert a pint -y 3000 -p lodnon --coverage 2 --to grm',
    2,
    '--year: 3000',
    '--place: "lodnon"',
    '--coverage:',
    '--to: "grm"',
    'london',
  ],
  ['convert a pint --coverage much', 2, '--coverage: "much" is not a number'],
  ['convert zzyzx gibbd', 1, 'the phrase: states no measure', 'not read', 'nearest'],
  ['convert a pint --to mass', 1, '--to: to turn volume into mass'],
  ['heat a zzyzx', 1, 'there are', 'more'],
  ['heat slow --year soon', 2, '--year: "soon" is not a year'],
  ['sugar zzyzx', 1, 'names no height of boiled sugar'],
  ['warmth zzyzx', 1, 'names no warmth of a liquid'],
  ['loaf penny white', 2, '--year: give the year of the loaf'],
  ['loaf peny white -y 1690', 2, '"peny": it is no coin or kind', 'penny'],
  ['loaf penny twopenny -y 1690', 2, 'the words name two: penny and twopenny'],
  ['loaf -y 1690 --coin guinea', 2, '--coin: "guinea"'],
  ['loaf -y 1905', 1, '--year: these tables of bread end with 1900'],
  ['loaf -y 1690 --market fair', 2, '--market: "fair" won\'t do; choose london, town, country'],
  ['loaf -y 1690 --svg /nowhere/loaf.svg', 3, "can't be written: there is no such file or folder"],
  ['measures frikin', 1, 'is not a measure of these tables; the nearest are firkin'],
  ['measures --kind sizes', 2, '--kind: "sizes" won\'t do; choose weight'],
  ['sources zzyzx', 1, 'is in none of the'],
  ['sheet nowhere.txt', 3, "nowhere.txt: can't be read: there is no such file or folder"],
  [`sheet ${folder}`, 3, "can't be read: it is a folder"],
  ['sheet one.txt two.txt', 2, '"two.txt": give one file'],
  ['sheet one.txt --demo almond-tart-1690', 2, '--demo: give a file or a receipt of ours, not both'],
  ['sheet --demo tart', 2, '--demo: "tart" won\'t do; choose almond-tart-1690'],
  ['sheet --format pdf', 2, '--format: "pdf" won\'t do; choose text, markdown'],
  ['sheet --json --format csv', 2, '"--json"', 'it contradicts --format csv'],
  ['sheet --scale 0', 2, '--scale: "0" won\'t do; give a number from 0.001 to 1000 or a fraction such as "1/3"'],
  ['sheet --scale 2 --guests 8', 2, '--guests: --scale and --guests both scale the receipt'],
  ['sheet --serves 4', 2, '--serves: it tells how many the receipt feeds, which scales nothing without --guests'],
  ['sheet --guests some', 2, '--guests: "some" is not a number'],
  ['sheet --eggs large', 2, '--eggs: "large" is not a class of egg'],
  ['sheet --eggs egg-uk-l --fix egg=50g', 2, '--fix egg: --eggs and --fix egg contradict each other'],
  ['sheet --dish smal-tart', 2, '--dish: "smal-tart" is not a dish', 'small-tart'],
  ['sheet --dish round', 2, '--dish: "round" has no measures; a round dish needs diameter x depth'],
  ['sheet --dish round_9_x_2', 2, '--dish: "round 9 x 2" has no unit; say mm, cm or in'],
  ['sheet --dish round_9in', 2, 'has 1 measure; a round dish needs diameter x depth'],
  ['sheet --dish round_1mm_x_9mm', 2, '--dish diameter: "1 mm" is 1 mm'],
  ['sheet --fix pint', 2, '--fix: "pint" has no NAME=VALUE'],
  ['sheet --fix pnt=wine', 2, '--fix pnt: "pnt" is not a measure', 'pint'],
  ['sheet --fix pint=zzyzx', 2, '--fix pint: the pint has no sense by "zzyzx"'],
  ['sheet --fix spoonful=15', 2, '--fix: "spoonful=15" needs a unit'],
  ['sheet --fix line_9=ale', 2, '--fix line 9: the receipt has 3 lines'],
  ['sheet --limit cream', 2, '--limit: "cream" is no thing and amount'],
  ['sheet --limit butter=3g', 2, '--limit thing: the receipt measures no butter'],
  ['stream now', 2, '"now": the questions are read from the standard input'],
  ['stream --fields valu', 2, '--fields: no answer has a field "valu"', 'value'],
  ['stream --first-line 0', 2, '--first-line: "0" is no number of a line'],
]

describe('what is wrong is said on the standard error', () => {
  test.each(wrong.map(([line, code, ...told]) => [line, code, told] as const))('pottle %s', async (line, code, told) => {
    const words = line === '' ? [] : line.split(' ').map((word) => word.replaceAll('_', ' '))
    const { exit, out, err } = await ask(words, { stdin: receipt, columns: 100 })
    expect(exit).toBe(code)
    expect(out).toBe('')
    const flat = err.replace(/\s+/g, ' ')
    for (const words of told) expect(flat).toContain(words)
    if (!line.includes('--json') && line !== '') expect(/Try: pottle .*--help/.test(err)).toBe(code === 2)
  })

  test.each(wrong.filter(([line]) => line !== '').map(([line, code]) => [line, code] as const))(
    'as a problem in JSON: pottle %s --json',
    async (line, code) => {
      const words = line.split(' ').map((word) => word.replaceAll('_', ' '))
      const { exit, out, err } = await ask([...words, '--json'], { stdin: receipt })
      expect(exit).toBe(code)
      expect(out).toBe('')
      const problem = JSON.parse(err)
      expect(problem).toMatchObject({
        type: expect.stringMatching(/^\/problems\/[a-z-]+$/),
        title: expect.any(String),
        detail: expect.any(String),
      })
      // Names of the library's options that are not those of the command line would send people astray.
      expect(err).not.toContain('plan.')
    },
  )

  test('every command line here is looked at', () => expect(wrong.length).toBeGreaterThan(50))
})

test('a receipt that is no UTF-8 is refused, not guessed at', async () => {
  const { exit, err } = await ask(['sheet'], { stdin: new Uint8Array([0x63, 0x61, 0x66, 0xe9]) })
  expect(exit).toBe(3)
  expect(err).toContain('not text in UTF-8')
})

test('an empty receipt is told as one', async () => {
  const { exit, err } = await ask(['sheet'], { stdin: '' })
  expect(exit).toBe(2)
  expect(err).toContain('the receipt: the text is empty')
})

test('a text without one measure is still a sheet', async () => {
  const { exit, out } = await ask(['sheet'], { stdin: 'Boil it well and serve it hot.' })
  expect(exit).toBe(0)
  expect(out).toContain('Boil it well and serve it hot.')
})

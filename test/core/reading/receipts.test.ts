import { readReceipt } from '@core/reading'
import { describe, expect, test } from 'vitest'

const found = (text: string): string[] =>
  readReceipt(text).measures.map(
    ({ amount, measure, thing }) =>
      `${amount ? (amount.low === amount.high ? amount.low : `${amount.low}-${amount.high}`) : '?'} ${measure} ${thing}`,
  )

describe('a receipt of Saltmarsh Hall', () => {
  const text = [
    'Take halfe a pecke of fine flower, iij pounds of currans, a pinte of good ale yest, ten egges, leauing out foure of the whites, and a',
    'little salt; knead it with as much warme milke as will make it a stiffe paste. Let it lye an houre and a halfe before the fire, then make',
    'it in two great cakes an inch thick, and set them in an ouen as hot as for manchet. They will be baked in two houres. Eate them twice a day.',
  ].join(' ')
  const reading = readReceipt(text)

  test('finds the measures in order', () => {
    expect(found(text)).toEqual(['0.5 peck flour', '3 pound currant', '1 pint yeast', '10 none egg'])
    expect(reading.measures.at(-1)?.eggs).toEqual({ whole: 6, yolks: 4, whites: 0 })
  })

  test('finds heats, times and lengths', () => {
    expect(reading.heats).toMatchObject([{ phrase: 'an ouen as hot as for manchet', heat: 'as-for-manchet' }])
    expect(reading.times.map(({ minutes }) => minutes)).toEqual([
      { low: 90, high: 90 },
      { low: 120, high: 120 },
    ])
    expect(reading.lengths).toMatchObject([{ phrase: 'an inch thick', measure: 'inch' }])
  })

  test('names what has no amount, once', () => {
    expect(reading.unmeasured.map(({ thing }) => thing)).toEqual(['salt', 'milk', 'paste'])
  })
})

describe('heights of sugar and warmths of liquids', () => {
  const told = (text: string): string[] => readReceipt(text).warmths.map(({ of, phrase, words }) => `${of} ${phrase}: ${words}`)

  test('are found in running prose, inside measures and beside them', () => {
    const text = [
      'Boil a pound of sugar to a candy height, or till it blows; then put to it a pint of creme blood-warm, and half a pint of lukewarm milk.',
      'Let it stand till it be something more than milk-warm.',
    ].join(' ')
    expect(told(text)).toEqual([
      'sugar candy height: candy height',
      'sugar blows: blow',
      'liquid blood-warm: blood warm',
      'liquid lukewarm: lukewarm',
      'liquid something more than milk-warm: something more than milk warm',
    ])
    expect(found(text)).toEqual(['1 pound sugar', '1 pint cream', '0.5 pint milk'])
    expect(readReceipt(text).unmeasured).toEqual([])
  })

  test('are not made of words that mean something else', () => {
    expect(
      told('Boil the beef till it is tender, and put the pearl barley to it with a thread of mace; when it boils up, crack four eggs.'),
    ).toEqual([])
    expect(told('Take white sugar-candy and a ball of thread. Warm the milk, and serve it hot.')).toEqual([])
    expect(told('Boil your gruel till it is smooth.')).toEqual([])
  })

  test('heats of an oven are compared, tried and counted in degrees', () => {
    const heats = (text: string): string[] => readReceipt(text).heats.map(({ phrase }) => phrase)
    expect(heats('Bake it in an oven something slower than for bread.')).toEqual(['an oven something slower than for bread'])
    expect(heats('Set it in when your oven will turn white paper yellow in five minutes.')).toEqual([
      'your oven will turn white paper yellow in five minutes',
    ])
    expect(heats('Bake it in a quick, but not scorching, oven.')).toEqual(['a quick, but not scorching, oven'])
    expect(heats('Bake at 400 degrees for ten minutes.')).toEqual(['at 400 degrees'])
    expect(heats('Bake it in gem pans 25 minutes at 375 degrees. Keep the water at 90 degrees.')).toEqual(['at 375 degrees'])
    expect(readReceipt('Let your oven be of a good soaking heat.').heats[0]?.heat).toBe('moderate')
    expect(heats('Heat the oven to 350 degrees F. and put it in.')).toEqual(['the oven to 350 degrees F'])
    expect(heats('Let them grow softer than butter, and stir with hotter water.')).toEqual([])
  })
})

describe('words that lean on earlier words', () => {
  test.each([
    ['Six pounds of plums, three of sugar, one of honey.', ['6 pound plum', '3 pound sugar', '1 pound honey']],
    ['Two wine-glassfuls of basil vinegar, one ditto of walnut ketchup.', ['2 wineglass basil vinegar', '1 wineglass ketchup']],
    ['A pound of suet, ditto flour, ditto raisins.', ['1 pound suet', '1 pound flour', '1 pound raisin']],
    [
      'To every gallon of water a pound of honey; boil it; to every gallon put a pint of ale.',
      ['1 gallon water', '1 pound honey', '1 gallon water', '1 pint ale'],
    ],
  ])('%s', (text, expected) => {
    expect(found(text)).toEqual(expected)
  })

  test('a measure is of the last thing that was told by it', () => {
    expect(found('Six gallons of water and ten pounds of honey; let it work; to every gallon a gill of brandy.')).toEqual([
      '6 gallon water',
      '10 pound honey',
      '1 gallon water',
      '1 gill brandy',
    ])
  })

  test('another sort goes by the name of the first', () => {
    expect(
      found(
        'A pottle of white wine, and a quart of red. Four pounds of plums, and a dozen green ones. Bake it in a great dish or six small ones.',
      ),
    ).toEqual(['1 pottle white wine', '1 quart wine', '4 pound plum', '12 none plum'])
  })

  test('weights and likenings go on', () => {
    expect(
      found('The weight of four eggs in flour, of three in sugar, and of two in butter; to a pint of juice the weight of it in sugar.'),
    ).toEqual(['4 weight-of-eggs flour', '3 weight-of-eggs sugar', '2 weight-of-eggs butter', '1 pint juice', '1 equal-weight sugar'])
    expect(found('Ginger, an ounce; cayenne, half as much; mace, the same. Butter the size of a walnut or two small ones.')).toEqual([
      '1 ounce ginger',
      '0.5 as-much cayenne pepper',
      '1 as-much mace',
      '1 bigness of a walnut butter',
    ])
  })

  test('of each is of those that were told together', () => {
    const { measures } = readReceipt('Take equal quantities of treacle and sugar, say a pound of each.')
    expect(measures.at(-1)).toMatchObject({ measure: 'pound', amount: { low: 1 }, things: ['treacle', 'sugar'], each: true })
  })

  test('so much to a larger measure is no range', () => {
    expect(found('Mash six gallons to a bushel, and put in rennet as much as a walnut shell will hold.')).toEqual([
      '6 gallon null',
      '1 bushel null',
      '1 bigness of a walnut shell rennet',
    ])
    expect(readReceipt('Do therto safroun, and do hony in the pot.').unmeasured.map(({ thing }) => thing)).toEqual(['saffron', 'honey'])
    expect(readReceipt('Put sugar as much as it will beare.').unmeasured.map(({ thing }) => thing)).toEqual(['sugar'])
  })

  test('one of a plural is one of the measure before', () => {
    expect(found('Two ounces of sugar, and one of bitter almonds.')).toEqual(['2 ounce sugar', '1 ounce bitter almond'])
    expect(found('Four lemons; grate two of the lemons.')).toEqual(['4 none lemon'])
  })

  test('a beast is weighed and not counted besides', () => {
    expect(found('Roast a turkey of twelve pounds; take a piece of beef weighing about 8 lb.')).toEqual(['12 pound turkey', '8 pound beef'])
  })

  test('other ones are of the same kind of thing, not of the same sort', () => {
    expect(found('Take two ounces of bitter almonds, and the same quantity of sweet ones.')).toEqual([
      '2 ounce bitter almond',
      '1 as-much almond',
    ])
  })

  test('likenesses name nothing that goes in', () => {
    const { unmeasured } = readReceipt('Beat it as white as milk, clear as amber, like jelly, till it is thick as cream.')
    expect(unmeasured).toEqual([])
  })

  test('the like of the same points back', () => {
    const { measures } = readReceipt('Take half a pound of almonds, as much pine kernels, and the like quantity of dates.')
    expect(measures.map(({ reference }) => reference?.thing)).toEqual([undefined, 'almond', 'pine kernel'])
    expect(measures[1]?.reference?.amount).toEqual({ low: 0.5, high: 0.5 })
  })
})

describe('parts of things', () => {
  const parts = (text: string) => readReceipt(text).measures.map(({ amount, part, thing }) => `${amount!.low} ${part ?? ''} ${thing}`)

  test('are shared by the fruit that stands beside', () => {
    expect(parts('Put in the juice of one lemon and two oranges, and the rind of a lemon and six cloves.')).toEqual([
      '1 juice lemon',
      '2 juice orange',
      '1 rind lemon',
      '6  clove',
    ])
  })

  test('that go without saying are parts of what was counted before', () => {
    expect(
      parts('Squeeze in the juice of four lemons, and put in the rinds of but two; add the peel of an orange and the juice of three.'),
    ).toEqual(['4 juice lemon', '2 rind lemon', '1 peel orange', '3 juice orange'])
    expect(parts('Take six oranges, and grate two of the rinds.')).toEqual(['6  orange', '2 rind orange'])
  })

  test('are none where nothing was counted', () => {
    expect(parts('Take a pint of cream, and the juice of two. Grate two of the rinds.')).toEqual(['1  cream'])
  })
})

describe('lists', () => {
  test.each([
    [
      'Sugar, 3 oz.; candied peel, 2 oz.; brandy, 1 wineglassful; eggs, 5: 2 hours.',
      ['3 ounce sugar', '2 ounce candied peel', '1 wineglass brandy', '5 none egg'],
    ],
    ['1 lb. butter. 2 cupfuls sugar. 1 teaspoonful soda. 6 eggs.', ['1 pound butter', '2 cup sugar', '1 teaspoonful soda', '6 none egg']],
    ['Figs a pound, raisins of the sun stoned a pound, mace an ounce bruised.', ['1 pound fig', '1 pound raisin', '1 ounce mace']],
    ['Suet, currants and crumbs, each 8 oz.', ['8 ounce suet']],
    ['2 lb flour\n1 pint milk\n3 eggs', ['2 pound flour', '1 pint milk', '3 none egg']],
    ['A quart of creme and yolkes of eyroun xij; a pound of butter and eggs.', ['1 quart cream', '12 none egg', '1 pound butter']],
    ['Take of egges vj and swynge hem, of suger a pound, and of butter half a pound.', ['6 none egg', '1 pound sugar', '0.5 pound butter']],
    [
      'Yolks of eggs xx and half a pound of sugar; nutmeg, ½ grated; lemons, 2, and sack.',
      ['20 none egg', '0.5 pound sugar', '0.5 none nutmeg', '2 none lemon'],
    ],
    [
      'R. Rhubarb ℥j. ʒij, syrup of poppies ʒij. Sage and rue, of each M. j. of aniseed ℥ss.',
      ['1.25 ounce rhubarb', '2 drachm syrup of poppy', '1 handful sage', '0.5 ounce aniseed'],
    ],
    ['1 teaspoonful of salt, ½ do. of pepper, 2 do. flour.', ['1 teaspoonful salt', '0.5 teaspoonful pepper', '2 teaspoonful flour']],
    [
      'Take of the best Jesuits bark 1 oz.; squills, half an ounce; hemlock two handfuls.',
      ['1 ounce jesuits bark', '0.5 ounce squill', '2 handful hemlock'],
    ],
    ['A penny loaf grated, the rind of a lemon, two twopenny French rolls.', ['1 penny loaf loaf', '1 none lemon', '2 twopenny roll roll']],
    ['Take a spoonful every morning, and 20 drops in a glass of wine each night.', ['1 spoonful null', '20 drop null', '1 glass wine']],
  ])('%s', (text, expected) => {
    expect(found(text)).toEqual(expected)
  })
})

describe('how many a receipt is enough for', () => {
  test.each([
    ['Sufficient for 6 or 7 persons.', [6, 7]],
    ['To feed one hundred and thirty persons, take five quarts of oysters.', [130, 130]],
    ['This will serve a score of guests. The last was for two people.', [20, 20]],
    ['Sufficient for a family of 8 or 9 persons.', [8, 9]],
    ['Enough for a table of twelve covers.', [12, 12]],
    ['For a messe of iiij persones, take a capon.', [4, 4]],
    ['Seasonable at any time. Serves six.', [6, 6]],
  ])('%s', (text, [low, high]) => {
    const { serves } = readReceipt(text)
    expect(serves?.amount).toEqual({ low, high })
    expect(text.slice(serves?.start, serves?.end)).toBe(serves?.phrase)
  })

  test.each([
    'Take a pound for every six persons.',
    'An ounce for each person.',
    'Serve it to four persons, for two hours.',
    'Good for the people.',
    'It serves two purposes.',
  ])('is not told by: %s', (text) => expect(readReceipt(text).serves).toBeNull())
})

describe('numbers that measure no ingredient', () => {
  test.each([
    'Turn them three or four times.',
    'See page 33, and the 4th receipt of chapter vi.',
    'This will make three dozen of cakes and serve ten persons.',
    'Cut it in two, and lay it in a dish.',
    'Boil it in two or three waters.',
    'Roll it out with a pint bottle, and cut it with a wine glass.',
    'Roll them into balls the size of a walnut.',
    'Boil it till it will bear an egg.',
    'It costs sixpence.',
    'Buy it at sixpence a pound.',
    'He came in the year 1672.',
    'To make three gallons of orange wine.',
    'Boil a half-pound pudding an hour.',
    'Make it up to the quantity of a penny loaf.',
    'See Vol. ii. p. 145, Plate II. fig. 3.',
    'Quarter the apples, and score the meat.',
    'Tun it up in a ten gallon vessel.',
    'Enough for a moderate man, or a man of sixty.',
  ])('%s', (text) => {
    expect(found(text)).toEqual([])
  })

  test('how often is not how long', () => {
    expect(readReceipt('Stir it twice a day, and every hour a little; shift the water every third day.').times).toEqual([])
  })
})

test('ice is a thing that is had, and no thing where a cake is iced', () => {
  const named = (text: string): string[] => readReceipt(text).unmeasured.map(({ thing }) => thing)
  expect(named('Ice the cake, ice it over, and set it upon ice.')).toEqual(['ice'])
})

test('a time may end in another', () => {
  expect(readReceipt('Keep it a twelvemonth.').times[0]?.minutes?.low).toBe(525960)
  expect(readReceipt('Let it stand iiij houres, or vj at the moste.').times[0]?.minutes).toEqual({ low: 240, high: 360 })
  expect(readReceipt('Boil it two hours, or three eggs will curdle.').times[0]?.minutes).toEqual({ low: 120, high: 120 })
})

test('offsets are UTF-16 offsets into the text as it was given', () => {
  const text = '🥚 A poſſet of Saltmarſh: take ſix ſpoonfuls of ſack, and ½ pint of cream'
  for (const { start, end, phrase } of readReceipt(text).measures) expect(text.slice(start, end)).toBe(phrase)
  expect(found(text)).toEqual(['6 spoonful sack', '0.5 pint cream'])
})

test('a text that is none is refused', () => {
  expect(() => readReceipt(undefined as unknown as string)).toThrow(expect.objectContaining({ code: 'bad-option' }))
})

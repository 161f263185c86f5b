import { readPhrase } from '@core/reading'
import { describe, expect, test } from 'vitest'

/** amount: one number, or two for a range. */
type Row = [phrase: string, amount: number | [number, number] | null, measure: string | null, thing: string | null, more?: object]

function check(rows: Row[]): void {
  test.each(rows)('%s', (phrase, amount, measure, thing, more = {}) => {
    const range = amount === null ? null : Array.isArray(amount) ? { low: amount[0], high: amount[1] } : { low: amount, high: amount }
    expect(readPhrase(phrase)).toMatchObject({ amount: range, measure, thing, ...more })
  })
}

describe('weights, vessels, spoons and hands', () => {
  check([
    ['a pottle of cream', 1, 'pottle', 'cream', { kind: 'measured', qualifier: null, eggs: null }],
    ['three quarters of a pound of butter', 0.75, 'pound', 'butter'],
    ['half a quarter of an ounce of saffron', 0.125, 'ounce', 'saffron'],
    ['a pound and a half of currants', 1.5, 'pound', 'currant'],
    ['a pint and half of milk', 1.5, 'pint', 'milk'],
    ['a pound of flour and a half', 1.5, 'pound', 'flour'],
    ['two and a half pounds of veal', 2.5, 'pound', 'veal'],
    ['2 1/2 lb. sugar', 2.5, 'pound', 'sugar'],
    ['3-1/2 oz. of almonds', 3.5, 'ounce', 'almond'],
    ['1½ pints of ale', 1.5, 'pint', 'ale'],
    ['⅔ cup of milk', 2 / 3, 'cup', 'milk'],
    ['1,200 lb. of salt', 1200, 'pound', 'salt'],
    ['1·5 lb. of sugar', 1.5, 'pound', 'sugar'],
    ['1/2. lb. of sugar', 0.5, 'pound', 'sugar'],
    ['1 lb ½ of sugar', 1.5, 'pound', 'sugar'],
    ['1 pint & ½ of milk', 1.5, 'pint', 'milk'],
    ['one pound three quarters of sugar', 1.75, 'pound', 'sugar'],
    ['a quarter and half of a pound of butter', 0.375, 'pound', 'butter'],
    ['a quarter or half a pound of butter', [0.25, 0.5], 'pound', 'butter'],
    ['a pint or a quart of cream', [1, 2], 'pint', 'cream'],
    ['a quart, or three pints, of water', [1, 1.5], 'quart', 'water'],
    ['a pound wanting two ounces of sugar', 0.875, 'pound', 'sugar'],
    ['a pint less a gill of cream', 0.75, 'pint', 'cream'],
    ['a pottell & a pynte of creame', 1.25, 'pottle', 'cream'],
    ['a pint and half a pint of milk', 1.5, 'pint', 'milk'],
    ['a quarterne of an ounce of mace', 0.25, 'ounce', 'mace'],
    ['a quarterne of sugar', 1, 'quartern', 'sugar'],
    ['a head of garlick', 1, 'head', 'garlic'],
    ['a bundle of sweet herbs', 1, 'bundle', 'sweet herbs'],
    ['a comb of wheat', 1, 'coomb', 'wheat'],
    ['a pint bason full of milk', 1, 'pint', 'milk'],
    ['20 drops', 20, 'drop', null],
    ['a tonne of wyne', 1, 'tun', 'wine'],
    ['two-thirds of a cupful of rice', 2 / 3, 'cup', 'rice'],
    ['six wine-glassfuls of brandy', 6, 'wineglass', 'brandy'],
    ['a tea cup full of yeast', 1, 'teacup', 'yeast'],
    ['two table-spoonfuls of vinegar', 2, 'tablespoonful', 'vinegar'],
    ['a handful or two of sage', [1, 2], 'handful', 'sage'],
    ['two blades of mace', 2, 'blade', 'mace'],
    ['a race of ginger', 1, 'race', 'ginger'],
    ['two cloves of garlic', 2, 'clove', 'garlic'],
    ['twelve rolls', 12, 'none', 'roll'],
    ['a sage leaf or two', [1, 2], 'leaf', 'sage'],
    ['a half-peck of pease', 0.5, 'peck', 'pea'],
    ['cinnamon water, a gill', 1, 'gill', 'cinnamon water'],
    ['the third part of a pint of cream', 1 / 3, 'pint', 'cream'],
    ['two third parts of a pound of sugar', 2 / 3, 'pound', 'sugar'],
    ['a pint and a third part of a pint of ale', 4 / 3, 'pint', 'ale'],
    ['a pound and a quarter of an ounce of mace', 1 + 1 / 64, 'pound', 'mace'],
    ['a pint of vinegar and powder of ginger', 1, 'pint', 'vinegar'],
    ['a quarter of cloves', 1, 'quarter', 'clove'],
    ['half a quarter of cloves', 0.5, 'quarter', 'clove'],
    ['an ounce and half a quarter of saffron', 1.125, 'ounce', 'saffron'],
    ['an ounce and half a quarter of an ounce of saffron', 1.125, 'ounce', 'saffron'],
    ['a quart, ale measure, of yeast', 1, 'quart', 'yeast', { standard: 'ale' }],
    ['four of the largest lemons', 4, 'none', 'lemon'],
    ['as many apples as will fill half a bushel', 0.5, 'bushel', 'apple'],
    ['two pounds want one ounce of sugar', 31 / 16, 'pound', 'sugar'],
    ['2 1-2 cups of flour', 2.5, 'cup', 'flour'],
    ['an egg-spoonful of mustard', 1, 'egg spoonful', 'mustard'],
    ['two egg-shells full of water', 2, 'eggshell', 'water'],
    ['half a compressed yeast cake', 0.5, 'cake', 'yeast'],
    ['a comb of honey', 1, 'none', 'honeycomb'],
    ['a hundredweight and 28 lb. of flour', 1.25, 'hundredweight', 'flour'],
    ['the iiijth parte of an ounce of safron', 0.25, 'ounce', 'saffron'],
    ['the 6th part of a gallon of ale', 1 / 6, 'gallon', 'ale'],
    ['a race of ginger or two', [1, 2], 'race', 'ginger'],
    ['half a pint of stale ale barm', 0.5, 'pint', 'barm'],
    ['half a peck of flour, less by a pint', 7 / 16, 'peck', 'flour'],
    ['from a gill to a pint of cream', [1, 4], 'gill', 'cream'],
    ["a score of cocks' combs", 20, 'none', 'cockscomb'],
    ['four pettitoes', 4, 'none', "pig's foot"],
    ['half an ounce, or thereabouts, of isinglass', 0.5, 'ounce', 'isinglass', { qualifier: 'about' }],
    ['the finest sugar beat and sifted, one pound', 1, 'pound', 'sugar'],
    ['twelve oranges weighing six pounds', 6, 'pound', 'orange'],
    ['2 galls. of water', 2, 'gallon', 'water'],
    ['four ounces of galls', 4, 'ounce', 'oak gall'],
    ['100 of oysters', 100, 'none', 'oyster'],
    ['half a 100 of walnuts', 50, 'none', 'walnut'],
    ['a nutmeg and half', 1.5, 'none', 'nutmeg'],
    ['1 doz. each of lemons and oranges', 12, 'none', 'lemon', { things: ['lemon', 'orange'], each: true }],
    ["butter equal in size to a hen's egg", 1, 'bigness of an egg', 'butter'],
    ['sugar in weight equal to four eggs', 4, 'weight-of-eggs', 'sugar'],
    ['sugar equal in weight to the apples', 1, 'equal-weight', 'sugar', { reference: { thing: 'apple' } }],
    ['the weight of a nutmeg in cloves', 1, 'weight of a nutmeg', 'clove'],
    ['half a pint of sack, wanting two spoonfuls', 0.5, 'pint', 'sack', { qualifier: 'scant' }],
    ['two handfuls of borage floures', 2, 'handful', 'borage flower'],
    ['six pounds wanting a quarter of cherries', 5.75, 'pound', 'cherry'],
    ['half a dozen spoonfuls, or eight, of white wine', [6, 8], 'spoonful', 'white wine'],
    ['the quantity of a French walnut of butter', 1, 'bigness of a walnut', 'butter'],
    ['betwixt 8 and 10 ounces of suet', [8, 10], 'ounce', 'suet'],
    ['lib. iij et semis of suger', 3.5, 'pound', 'sugar'],
    ['a quart of her owne broth', 1, 'quart', 'broth'],
    ['Peruvian bark, in fine powder, one ounce', 1, 'ounce', 'peruvian bark'],
    ['tincture of jalap, 1 drachm', 1, 'drachm', 'tincture of jalap'],
    ['half a gill of infusion of senna', 0.5, 'gill', 'infusion of senna'],
    ['rose leaves, a peck', 1, 'peck', 'rose'],
    ['a leg of a lamb', 1, 'none', 'leg of lamb'],
    ['a dram a piece of musk and civet', 1, 'drachm', 'musk', { things: ['musk', 'civet'], each: true }],
    ['half a gallon, or a little more, of ale', 0.5, 'gallon', 'ale', { qualifier: 'good' }],
    ['the weyght of xij pens of saffron', 12, 'weight of a penny', 'saffron'],
    ['juice and grated rind of one lemon', 1, 'none', 'lemon', { portions: ['juice', 'rind'] }],
    ['half a quire of rice-paper', 0.5, 'quire', 'rice paper'],
    ['3 lb wt of flower', 3, 'pound', 'flour'],
    ['a bushel of flour, wanting a quart', 31 / 32, 'bushel', 'flour'],
    ['of butter half a pound', 0.5, 'pound', 'butter'],
    ['a piece of beef weighing about ten pounds', 10, 'pound', 'beef', { qualifier: 'about' }],
    ['a turkey that weighs 12 lb.', 12, 'pound', 'turkey'],
    ['1 dessert-spoonful chutney', 1, 'dessertspoonful', 'chutney'],
    ['1 teasp. baking powder', 1, 'teaspoonful', 'baking powder'],
    ['as much salt as you can take up between your finger and thumb', 1, 'pinch', 'salt'],
    ['as much orris as you can take up with two fingers and a thumb', 1, 'pugil', 'orris'],
  ])
})

describe('spellings', () => {
  check([
    ['a pynte of creme', 1, 'pint', 'cream'],
    ['ij pownds of suger', 2, 'pound', 'sugar'],
    ['halfe an ownce of gynger', 0.5, 'ounce', 'ginger'],
    ['a quarte of swete mylke', 1, 'quart', 'milk'],
    ['an vnce of cloues', 1, 'ounce', 'clove'],
    ['foure sponefulls of vergis', 4, 'spoonful', 'verjuice'],
    ['a galoun of whyte wyne', 1, 'gallon', 'white wine'],
    ['half a pound of buttyr', 0.5, 'pound', 'butter'],
    ['a ſpoonful of ſugar', 1, 'spoonful', 'sugar'],
    ['ye weight of a groat of saffroun', 1, 'weight of a groat', 'saffron'],
    ['two handefulles of perseley', 2, 'handful', 'parsley'],
    ['a pound of reysons of the sunne', 1, 'pound', 'raisin'],
    ['a spōful of honie', 1, 'spoonful', 'honey'],
    ['half a pint of Roſe-water', 0.5, 'pint', 'rose water'],
  ])
})

describe('numerals', () => {
  check([
    ['iiij lb. of flour', 4, 'pound', 'flour'],
    ['xviij oz. of honey', 18, 'ounce', 'honey'],
    ['lb. j di of sugar', 1.5, 'pound', 'sugar'],
    ['iij li. di of rice', 3.5, 'pound', 'rice'],
    ['℥ ij of cinnamon', 2, 'ounce', 'cinnamon'],
    ['cinnamon ʒss', 0.5, 'drachm', 'cinnamon'],
    ['five and twenty pounds of beef', 25, 'pound', 'beef'],
    ['twenty-four oysters', 24, 'none', 'oyster'],
    ['three score walnuts', 60, 'none', 'walnut'],
    ['half a score of nutmegs', 10, 'none', 'nutmeg'],
    ["a baker's dozen of rolls", 13, 'none', 'roll'],
    ['half a hundred of oranges', 50, 'none', 'orange'],
    ['a dozen and a half of figs', 18, 'none', 'fig'],
    ['two or three hundred oysters', [200, 300], 'none', 'oyster'],
    ['3-1/2 dozens of oysters', 42, 'none', 'oyster'],
  ])
})

describe('ranges and compounds', () => {
  check([
    ['two or three pounds of mutton', [2, 3], 'pound', 'mutton'],
    ['six to eight ounces of suet', [6, 8], 'ounce', 'suet'],
    ['5-6 ounces of suet', [5, 6], 'ounce', 'suet'],
    ['four, five, or six lemons', [4, 6], 'none', 'lemon'],
    ['between two and three quarts of broth', [2, 3], 'quart', 'broth'],
    ['a lemon or two', [1, 2], 'none', 'lemon'],
    ['half a pound or three quarters of a pound of bacon', [0.5, 0.75], 'pound', 'bacon'],
    ['a pint and a gill of milk', 1.25, 'pint', 'milk', { parts: [{ measure: 'pint' }, { measure: 'gill' }] }],
    ['2lb 3oz of sugar', 2.1875, 'pound', 'sugar'],
  ])
})

describe('hands of the centuries', () => {
  check([
    // About 1390: thorn, yogh and the sign of the drachm for it, numerals with j, di. for dimidium.
    ['ye ȝolkes of vj. eyren', 6, 'none', 'egg', { eggs: { whole: 0, yolks: 6, whites: 0 } }],
    ['þe ʒolkes of xij eyroun', 12, 'none', 'egg', { eggs: { whole: 0, yolks: 12, whites: 0 } }],
    ['di. lb. of sugre', 0.5, 'pound', 'sugar'],
    ['an vnce & di. of maces', 1.5, 'ounce', 'mace'],
    ['oz. iiij of canelle', 4, 'ounce', 'cinnamon'],
    ['iiij l. of sugre', 4, 'pound', 'sugar'],
    ['l. eyren', 50, 'none', 'egg'],
    // About 1500: raised letters in braces, strokes for letters left out.
    ['j q^{ter} of a pound of sugar', 0.25, 'pound', 'sugar'],
    ['iij q^{ters} of a li. of peper', 0.75, 'pound', 'pepper'],
    ['vj spōfull of vyneger', 6, 'spoonful', 'vinegar'],
    ['iij li. di. of suger', 3.5, 'pound', 'sugar'],
    // About 1600: the physician's signs, manipuli and pugilli, number behind measure.
    ['ʒij of mace', 2, 'drachm', 'mace'],
    ['℥ss of cloves', 0.5, 'ounce', 'clove'],
    ['M. ij of sage', 2, 'handful', 'sage'],
    ['P. j of saffron', 1, 'pugil', 'saffron'],
    ['rosemary man. ij', 2, 'handful', 'rosemary'],
    // Eight drachms to the ounce, three scruples to the drachm, half a one behind the numeral: Culpeper 1653, Weights and Measures.
    ['sena ℥j ʒij', 1.25, 'ounce', 'senna'],
    ['two drachms and a scruple of myrrh', 7 / 3, 'drachm', 'myrrh'],
    ['cinnamon water ℥iss', 1.5, 'ounce', 'cinnamon water'],
    ['laudanum gutt. xx', 20, 'drop', 'opium'],
    ['cloves and mace, ana ℥j', 1, 'ounce', 'clove', { things: ['clove', 'mace'], each: true }],
    // About 1660: ye and yt, raised letters, colons for points, long s.
    ['yᵉ whites of 4 eggs', 4, 'none', 'egg', { eggs: { whole: 0, yolks: 0, whites: 4 } }],
    ['y^e juice of 2 lemmons', 2, 'none', 'lemon', { part: 'juice' }],
    ['a q^t of creame', 1, 'quart', 'cream'],
    ['½ a pᵈ of ſugar', 0.5, 'pound', 'sugar'],
    ['3 q:rs of a pound of ſugar', 0.75, 'pound', 'sugar'],
    ['one gal: of water', 1, 'gallon', 'water'],
    // About 1720 and after: pence with d., rolls and loaves, hyphens everywhere.
    ['ij d. worth of safron', 2, 'pennyworth', 'saffron'],
    ['iij peny worthe of safron', 3, 'pennyworth', 'saffron'],
    ['a pynte of rhenish wyne', 1, 'pint', 'Rhenish wine'],
    ['a 2d. loaf', 1, 'twopenny loaf', 'loaf'],
    ['the crumb of a French roll', 1, 'none', 'French roll', { part: 'crumb' }],
    ['half-a-pint of milk', 0.5, 'pint', 'milk'],
    ['2 bush. of malt', 2, 'bushel', 'malt'],
    ['a rather stale loaf', 1, 'none', 'loaf'],
    // About 1861: counts without a plural, spoonfuls without an article.
    ['6 allspice', 6, 'none', 'allspice'],
    ['dessert-spoonful', 1, 'dessertspoonful', null],
    ['1–1½ pints', [1, 1.5], 'pint', null],
  ])
})

describe('words that shift an amount', () => {
  check([
    ['about a pint of cream', 1, 'pint', 'cream', { qualifier: 'about' }],
    ['better than a pint of cream', 1, 'pint', 'cream', { qualifier: 'good' }],
    ['rather more than a pint of cream', 1, 'pint', 'cream', { qualifier: 'good' }],
    ['a pint, more or less, of cream', 1, 'pint', 'cream', { qualifier: 'about' }],
    ['a pint and no more of cream', 1, 'pint', 'cream', { qualifier: null }],
    ['near upon a quart of milk', 1, 'quart', 'milk', { qualifier: 'scant' }],
    ['a good quart of milk', 1, 'quart', 'milk', { qualifier: 'good' }],
    ['a good half pint of milk', 0.5, 'pint', 'milk', { qualifier: 'good' }],
    ['scant pint of milk', 1, 'pint', 'milk', { qualifier: 'scant' }],
    ['near a quart of milk', 1, 'quart', 'milk', { qualifier: 'scant' }],
    ['two heaped teaspoonfuls of soda', 2, 'teaspoonful', 'soda', { qualifier: 'heaped' }],
    ['a small handful of thyme', 1, 'handful', 'thyme', { qualifier: 'small' }],
    ['six large apples', 6, 'none', 'apple', { qualifier: 'large' }],
    ['a rounded teaspoonful of soda', 1, 'teaspoonful', 'soda', { qualifier: 'rounded' }],
    ['a teaspoonful, heaped, of soda', 1, 'teaspoonful', 'soda', { qualifier: 'heaped' }],
    ['large tablespoonful of yeast', 1, 'tablespoonful', 'yeast', { qualifier: 'large' }],
    ['not quite half a pound of butter', 0.5, 'pound', 'butter', { qualifier: 'scant' }],
    ['not above a pint of milk', 1, 'pint', 'milk', { qualifier: 'scant' }],
    ['no less than three pounds of sugar', 3, 'pound', 'sugar', { qualifier: 'good' }],
    ['at least a pint of milk', 1, 'pint', 'milk', { qualifier: 'good' }],
    ['a pint at the most of milk', 1, 'pint', 'milk', { qualifier: 'scant' }],
    ['a pint or rather more of milk', 1, 'pint', 'milk', { qualifier: 'good' }],
    ['a pound or something under of butter', 1, 'pound', 'butter', { qualifier: 'scant' }],
    ['four pounds and upwards of beef', 4, 'pound', 'beef', { qualifier: 'good' }],
    ['a pint of milk or thereabouts', 1, 'pint', 'milk', { qualifier: 'about' }],
    ['a pint, good measure, of milk', 1, 'pint', 'milk', { qualifier: 'good' }],
    ['a pound of butter good weight', 1, 'pound', 'butter', { qualifier: 'good' }],
    ['two pounds of suet, small', 2, 'pound', 'suet', { qualifier: null }],
  ])
})

describe('counts', () => {
  check([
    ['four lemons', 4, 'none', 'lemon', { kind: 'counted' }],
    ['half a nutmeg', 0.5, 'none', 'nutmeg'],
    ['1/3 of a small nutmeg', 1 / 3, 'none', 'nutmeg'],
    ['the juice of two lemons', 2, 'none', 'lemon', { part: 'juice' }],
    ['the rind and the juice of 2 lemons', 2, 'none', 'lemon', { part: 'juice', portions: ['rind', 'juice'] }],
    ["two lemons' juice", 2, 'none', 'lemon', { part: 'juice' }],
    ['sixscore oysters', 120, 'none', 'oyster'],
    ['the rinds of but two oranges', 2, 'none', 'orange', { part: 'rind' }],
    ['half a pound of poudre gynger', 0.5, 'pound', 'ginger'],
    ['a leg of young pork', 1, 'none', 'leg of pork'],
    ['two bay leaves', 2, 'none', 'bay leaf'],
    ['an old cock', 1, 'none', 'cock'],
    ['a hundred of eggs', 100, 'none', 'egg', { tale: 'hundred', eggs: { whole: 100, yolks: 0, whites: 0 } }],
    ['half a hundred walnuts', 50, 'none', 'walnut', { tale: 'hundred' }],
    ['a quarter of a hundred of oysters', 25, 'none', 'oyster', { tale: 'hundred' }],
    ['two great hundreds of oranges', 200, 'none', 'orange', { tale: 'long hundred' }],
    ['a hundred of sugar', 1, 'hundred', 'sugar', { kind: 'measured' }],
    ['a hundred pounds of sugar', 100, 'pound', 'sugar'],
    ['a hundred weight of sugar', 1, 'hundredweight', 'sugar'],
  ])
})

test('what is poured shares no amount with what is not', () => {
  expect(readPhrase('a pint of vinegar and powder of ginger')).not.toHaveProperty('things')
  expect(readPhrase('half a pint of vinegar and sack').things).toEqual(['vinegar', 'sack'])
})

test('a number told to the last one is no tale', () => {
  expect(readPhrase('two hundred and fifty eggs').tale).toBeUndefined()
  expect(readPhrase('two hundred eggs').tale).toBeUndefined()
})

describe('standards, alternatives, and things that share an amount', () => {
  check([
    ['a wine pint of cream', 1, 'pint', 'cream', { standard: 'wine' }],
    ['a pint of cream, wine measure', 1, 'pint', 'cream', { standard: 'wine' }],
    ['a pound troy of pepper', 1, 'pound', 'pepper', { standard: 'troy' }],
    ['ten pints of wine measure', 10, 'pint', null, { standard: 'wine' }],
    ['ten pints of wine', 10, 'pint', 'wine', {}],
    ['a pint of wine measure of cream', 1, 'pint', 'cream', { standard: 'wine' }],
    ['a pint, wine measure', 1, 'pint', null, { standard: 'wine' }],
    ['a pint of milk by ale measure', 1, 'pint', 'milk', { standard: 'ale' }],
    ['a beer quart of milk', 1, 'quart', 'milk', { standard: 'beer' }],
    ['two quarts of milk (beer measure)', 2, 'quart', 'milk', { standard: 'beer' }],
    ['a pint (Scots measure) of milk', 1, 'pint', 'milk', { standard: 'scots' }],
    ['a pound of butter Scots weight', 1, 'pound', 'butter', { standard: 'scots' }],
    ['a bushel of wheat, according to the Winchester measure', 1, 'bushel', 'wheat', { standard: 'winchester' }],
    ['a pint of milk, imperial', 1, 'pint', 'milk', { standard: 'imperial' }],
    ['a quart of brandy, old wine measure', 1, 'quart', 'brandy', { standard: 'wine' }],
    ['a quart of milk, old measure', 1, 'quart', 'milk', { standard: 'old' }],
    ['a quart of old ale', 1, 'quart', 'ale', {}],
    ['a tron pound of butter', 1, 'pound', 'butter', { standard: 'tron' }],
    ['a wine glass of sack', 1, 'wineglass', 'sack'],
    ['a quart of sack or white wine', 1, 'quart', 'sack', { alternatives: ['white wine'] }],
    ['an ounce of cloves and mace', 1, 'ounce', 'clove', { things: ['clove', 'mace'] }],
    ['half an ounce each of cloves and mace', 0.5, 'ounce', 'clove', { things: ['clove', 'mace'], each: true }],
    ['sage, rue and mint, of each a handful', 1, 'handful', 'sage', { things: ['sage', 'rue', 'mint'], each: true }],
    ['ginger and nutmegs, ana, one ounce', 1, 'ounce', 'ginger', { things: ['ginger', 'nutmeg'], each: true }],
  ])
})

describe('money', () => {
  check([
    ['a penny white loaf grated', 1, 'penny loaf', 'loaf', { kind: 'priced' }],
    ['two penny loaves', 2, 'penny loaf', 'loaf'],
    ['two penny loaf', 1, 'twopenny loaf', 'loaf'],
    ['a rather stale twopenny loaf', 1, 'twopenny loaf', 'loaf'],
    ['three half-penny rolls', 3, 'halfpenny roll', 'roll'],
    ['half a penny loaf', 0.5, 'penny loaf', 'loaf'],
    ['four penny Naples biscuits', 4, 'penny Naples biscuit', 'Naples biscuit'],
    ['a pennyworth of saffron', 1, 'pennyworth', 'saffron'],
    ['two pennyworth of saffron', 2, 'pennyworth', 'saffron'],
    ["a groat's worth of mace", 4, 'pennyworth', 'mace'],
    ['sixpenny worth of cochineal', 6, 'pennyworth', 'cochineal'],
  ])
})

describe('comparisons', () => {
  check([
    ['a piece of butter as big as a walnut', 1, 'bigness of a walnut', 'butter', { kind: 'comparison' }],
    ['butter the size of an egg', 1, 'bigness of an egg', 'butter'],
    ['the bigness of a walnut of butter', 1, 'bigness of a walnut', 'butter'],
    ['butter the bigness of two walnuts', 2, 'bigness of a walnut', 'butter'],
    ['a lump of sugar about as large as a nutmeg', 1, 'bigness of a nutmeg', 'sugar'],
    ['as much mace as will lie on a sixpence', 1, 'as much as will lie on a sixpence', 'mace'],
    ["as much cayenne as will lie on a knife's point", 1, 'as much as will lie on the point of a knife', 'cayenne pepper'],
    ['soda to lie on a shilling', 1, 'as much as will lie on a shilling', 'soda'],
    ['rhubarb, as much as a sixpence will hold', 1, 'as much as will lie on a sixpence', 'rhubarb'],
    ['barm, as much as half an egg-shell will hold', 0.5, 'eggshell', 'barm'],
    ['as much flour as a teacup will hold', 1, 'teacup', 'flour'],
    ["butter rolled in flour as big as a turkey's egg", 1, 'bigness of a turkey egg', 'butter'],
    ['a piece of butter rolled in flour the size of an egg', 1, 'bigness of an egg', 'butter'],
    ['a bit of soda no bigger than a pea', 1, 'bigness of a pea', 'soda'],
    ['dough as large as your two fists', 2, 'bigness of a fist', 'dough'],
    ['as much in weight of sugar as of pulp', 1, 'equal-weight', 'sugar', { reference: { thing: 'pulp' } }],
    ['their weight and half their weight of sugar', 1.5, 'equal-weight', 'sugar'],
    ['a gobet of butter þe mountaunce of a walnote', 1, 'bigness of a walnut', 'butter'],
    ['butter half the size of an egg', 0.5, 'bigness of an egg', 'butter'],
    ["a shilling's weight of mace", 1, 'weight of a shilling', 'mace'],
    ['two groats weight of saffron', 2, 'weight of a groat', 'saffron'],
    ["half a crown's weight of jalap", 1, 'weight of a half-crown', 'jalap'],
    ['three penny weight of musk', 3, 'pennyweight', 'musk'],
    ['as much ale', 1, 'as-much', 'ale'],
    ['half as much lard', 0.5, 'as-much', 'lard'],
    ['the like quantity of sorrel', 1, 'as-much', 'sorrel'],
    ['as much sugar as butter', 1, 'as-much', 'sugar', { reference: { thing: 'butter' } }],
    ['their weight in sugar', 1, 'equal-weight', 'sugar'],
    ['twice their weight of sugar', 2, 'equal-weight', 'sugar'],
    ['three quarters of its weight of sugar', 0.75, 'equal-weight', 'sugar'],
    ['the weight of six eggs in sugar', 6, 'weight-of-eggs', 'sugar'],
    ['the weight of the whites of four eggs in flour', 4, 'weight-of-egg-whites', 'flour'],
    ['as many eggs as weigh the sugar', 1, 'equal-weight', 'egg', { reference: { thing: 'sugar' } }],
    ['as many blades of mace', 1, 'as-many', 'mace', { unit: 'blade' }],
    ['half as many lemons', 0.5, 'as-many', 'lemon'],
    ['as many ounces of sugar as eggs', 1, 'as-many', 'sugar', { unit: 'ounce', reference: { thing: 'egg' } }],
    ['double the quantity of butter', 2, 'as-much', 'butter'],
    ['one third the quantity of water', 1 / 3, 'as-much', 'water'],
    ['a third part as much honey', 1 / 3, 'as-much', 'honey'],
    ['as much again of wine', 1, 'as-much', 'wine'],
    ['its own weight of sugar', 1, 'equal-weight', 'sugar'],
    ['sugar the same weight', 1, 'equal-weight', 'sugar'],
    ['twice the weight of the fruit in sugar', 2, 'equal-weight', 'sugar', { reference: { thing: 'fruit' } }],
    ['the same weight', 1, 'equal-weight', null],
    ['double the quantity', 2, 'as-much', null],
    ['half as much', 0.5, 'as-much', null],
    ['sugar, flour and butter, of each a like quantity', 1, 'as-much', 'sugar', { things: ['sugar', 'flour', 'butter'] }],
    ['butter the quantity of a walnut', 1, 'bigness of a walnut', 'butter'],
    ['the weight of three groats and two pence in pepper', 3.5, 'weight of a groat', 'pepper'],
  ])
})

describe('heats, times, lengths and consistencies', () => {
  test.each([
    ['a slack oven', 'slow'],
    ['a very gentle oven', 'very-slow'],
    ['a pretty quick oven', 'moderate-quick'],
    ['an oven as hot as for manchet', 'as-for-manchet'],
    ['as hot an oven as for white bread', 'as-for-bread'],
    ['the oven, after the household bread is drawn', 'after-bread'],
    ['let not your oven be too hot', 'other'],
    ['an ouen whose heate is declining', null],
    ['a declyning ouen', 'falling'],
    ['a slow fire', 'slow'],
    ['an oven something slower than for bread', 'other'],
    ['a little hotter than for manchet', 'other'],
    ['an oven that will not brown paper', 'test-paper'],
    ['the paper browns in five minutes', 'test-paper'],
    ['pretty hot', 'moderate-quick'],
    ['not too quick', 'other'],
    ['as for tarts', 'other'],
    ['an oven of 350 degrees F.', 'other'],
    ['gas mark 4', 'other'],
    ['hot water', undefined],
  ])('%s', (phrase, heatClass) => {
    expect(readPhrase(phrase)).toMatchObject({ kind: 'heat', ...(heatClass && { heatClass }) })
  })

  test('words that name a thing and no oven are no heat of one', () => {
    expect(readPhrase('good butter').kind).toBe('vague')
    expect(readPhrase('a mild cheese').kind).toBe('vague')
  })

  test.each([
    ['boil it to a candy height', 'sugar', 'candy height'],
    ['boil your ſugar till it blowes', 'sugar', 'blow'],
    ['to the degree called feathered', 'sugar', 'feathered'],
    ['boyle it to a Manus Christi', 'sugar', 'manus christi'],
    ['soft ball', 'sugar', 'soft ball'],
    ['caramel', 'sugar', 'caramel'],
    ['milk-warm', 'liquid', 'milk warm'],
    ['blood warme', 'liquid', 'blood warm'],
    ['a little more than blood-warm', 'liquid', 'a little more than blood warm'],
    ['half boiling, half cold', 'liquid', 'half boiling half cold'],
    ['scalding hot', 'liquid', 'scalding hot'],
    ['boiling water', 'liquid', 'boiling'],
  ])('%s', (phrase, heatOf, heat) => {
    expect(readPhrase(phrase)).toMatchObject({ kind: 'heat', heatOf, heat })
  })

  test('a warmth beside a measure leaves the measure alone', () => {
    expect(readPhrase('half a pint of lukewarm milk')).toMatchObject({ kind: 'measured', measure: 'pint', thing: 'milk' })
    expect(readPhrase('a quart of scalding hot water')).toMatchObject({ kind: 'measured', measure: 'quart', thing: 'water' })
  })

  test.each([
    ['an hour and a half', 90, 90],
    ['a quarter of an hour', 15, 15],
    ['an houre or two', 60, 120],
    ['three or four days', 4320, 5760],
    ['five or six minutes', 5, 6],
  ])('%s', (phrase, low, high) => {
    expect(readPhrase(phrase)).toMatchObject({ kind: 'time', minutes: { low, high } })
  })

  check([
    ['a Paternoster while', 1, 'paternoster while', null, { kind: 'time' }],
    ['a mile-way', 1, 'mile way', null, { kind: 'time' }],
    ['two fingers broad', 2, 'finger', null, { kind: 'length' }],
    ['an inch and a half thick', 1.5, 'inch', null, { kind: 'length' }],
    ['as thick as a crown piece', 1, 'thickness of a crown', null, { kind: 'length' }],
    ['as thick as a pancake batter', null, 'consistency of batter', 'batter', { kind: 'consistency' }],
    ['the thickness of good cream', null, 'consistency of cream', 'cream', { kind: 'consistency' }],
  ])
})

test('things named without an amount are named, and have no figure', () => {
  expect(readPhrase('turkey eggs')).toMatchObject({ kind: 'vague', amount: null, thing: 'turkey egg' })
  expect(readPhrase('butter')).toMatchObject({ kind: 'vague', amount: null, thing: 'butter' })
})

describe('words that gave nothing', () => {
  const unreadOf = (phrase: string): string[] => readPhrase(phrase).unread.map(({ start, end }) => phrase.slice(start, end))

  test('an unknown thing is passed on as it stands, and said to be unknown', () => {
    expect(readPhrase('a pottle of glimmerwort').thing).toBe('glimmerwort')
    expect(unreadOf('a pottle of glimmerwort')).toEqual(['glimmerwort'])
  })

  test('words beside the measure are named', () => {
    expect(unreadOf('a pint of cream for Mistress Dorothy')).toEqual(['for', 'Mistress', 'Dorothy'])
  })

  test('how a thing is dressed is no lack', () => {
    expect(unreadOf('a pound of almonds, blanched and beaten')).toEqual([])
  })

  test.each(['', '   ', 'a zorp of butter', 'three', 'the steward of Saltmarsh Hall', 'a moderate man', 'a slow man'])(
    '"%s" states nothing',
    (phrase) => {
      expect(() => readPhrase(phrase)).toThrow(expect.objectContaining({ code: 'unreadable' }))
    },
  )

  test('the error names the words and the nearest measures', () => {
    try {
      readPhrase('one gallum of xyz')
    } catch (error) {
      expect(error).toMatchObject({ code: 'unreadable', words: { unread: ['gallum', 'xyz'], nearest: expect.arrayContaining(['gallon']) } })
    }
  })

  test('a phrase has at most 1000 characters', () => {
    expect(() => readPhrase('a'.repeat(1001))).toThrow(expect.objectContaining({ code: 'bad-option' }))
  })
})

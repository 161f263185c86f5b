import { type CautionQuestion, cautionsFor } from '@core/cautions'
import { convert } from '@pottle/core'
import { describe, expect, test } from 'vitest'

const ids = (question: CautionQuestion) => cautionsFor(question).map(({ id }) => id)

/**
 * What the authorities warn of: each thing with the caution that it must bring. US FDA on comfrey (2001), wild mushrooms, kidney beans (Bad Bug
 * Book), liquorice (2017) and decorations (2018); the California and Maryland poison centres on plants; Public Health England on daffodils
 * (2015); CDC on elder (1984); EMEA on rue (1999); EFSA on aluminium (2008); UK FSA on lead shot (2015); Reg. (EC) 999/2001 on brains; the
 * Wildlife and Countryside Act 1981; the BfR on potatoes and wild garlic; HPA on charcoal.
 */
const things: readonly (readonly [thing: string, caution: string])[] = [
  ['rue', 'rue'],
  ['herb of grace', 'rue'],
  ['savin', 'rue'],
  ['white hellebore', 'rue'],
  ['comfrey', 'comfrey'],
  ['comfrey leaves', 'comfrey'],
  ["colt's foot", 'comfrey'],
  ['monkshood', 'poison-plants'],
  ['foxglove leaves', 'poison-plants'],
  ['deadly nightshade', 'poison-plants'],
  ['daffodil bulbs', 'poison-plants'],
  ['meadow saffron', 'poison-plants'],
  ['yew berries', 'poison-plants'],
  ['wild garlic', 'wild-plants'],
  ['ramsons', 'wild-plants'],
  ['smallage', 'wild-plants'],
  ['alexanders', 'wild-plants'],
  ['rhubarb leaves', 'rhubarb-leaves'],
  ['rhubarb', 'rhubarb'],
  ['elderberries', 'elderberries'],
  ['elder bark', 'elderberries'],
  ['kidney beans', 'kidney-beans'],
  ['haricots', 'kidney-beans'],
  ['liquorice', 'liquorice'],
  ['stick liquorice', 'liquorice'],
  ['lye', 'lye'],
  ['quicklime', 'lye'],
  ['salicylic acid', 'salicylic'],
  ['borax', 'borax'],
  ['alum', 'alum'],
  ['volatile salts', 'alum'],
  ['spirits of hartshorn', 'alum'],
  ['vermilion', 'poison-drugs'],
  ['orpiment', 'poison-drugs'],
  ['red lead', 'poison-drugs'],
  ['white arsenic', 'poison-drugs'],
  ['gamboge', 'poison-drugs'],
  ['sugar of lead', 'poison-drugs'],
  ['verdigris', 'poison-drugs'],
  ['verdigris', 'copper'],
  ['brass kettle', 'copper'],
  ['halfpence', 'copper'],
  ['ambergris', 'ambergris'],
  ['musk', 'ambergris'],
  ['venison', 'lead-shot'],
  ['wild ducks', 'lead-shot'],
  ['partridges', 'lead-shot'],
  ['brains', 'brains-and-pith'],
  ['ox pith', 'brains-and-pith'],
  ['larks', 'wild-birds'],
  ["plover's eggs", 'wild-birds'],
  ['turtle', 'turtle'],
  ['sturgeon', 'turtle'],
  ['caviar', 'turtle'],
  ['laurel water', 'cherry-laurel'],
  ['sassafras', 'safrole'],
  ['saltpetre', 'saltpetre'],
  ['honey', 'honey'],
  ['pennyroyal', 'pennyroyal'],
  ['tansy', 'thujone'],
  // Buchanan, Forensic Medicine and Toxicology (arum; tartar emetic); Blyth 1895 §§ 332-333 (tobacco), § 634 (cantharides); Murrell, Aids
  // (colocynth); Colorado State University (broom).
  ['tartar emetic', 'poison-drugs'],
  ['Spanish flies', 'poison-drugs'],
  ['colocynth', 'poison-drugs'],
  ['broom buds', 'poison-plants'],
  ['tobacco leaves', 'poison-plants'],
  ['wake robin', 'poison-plants'],
]

/** Sentences of our own in the way of old books, each with a caution that it must bring. */
const receipts: readonly (readonly [text: string, caution: string])[] = [
  ['Boil the green pickles in a brass kettle with a few halfpence.', 'copper'],
  ['Set it to stew in a chafing-dish of coals.', 'charcoal-indoors'],
  ['Broil them over a charcoal fire.', 'charcoal-indoors'],
  ['Lay leaf gold upon the cakes with the white of an egg.', 'metal-leaf'],
  ['Gild the leaves and stick them in.', 'metal-leaf'],
  ['Gather your mushrooms in the morning from the pastures.', 'wild-mushrooms'],
  ['To make mushroom ketchup, take the mushrooms when they are full of juice.', 'wild-mushrooms'],
  ['Grate two nutmegs into the posset.', 'nutmeg'],
  ['To keep eggs a year, lay them in slaked lime and water.', 'eggs-kept'],
  ['Put the eggs down in water glass.', 'eggs-kept'],
  ['Fill the bottles with gooseberries, set the bottles in a kettle with hay between them.', 'steam-and-oven-canning'],
  ['Potatoes that have sprouted will do for the pudding.', 'green-potatoes'],
  ['Dust the dough with flour and taste the batter.', 'raw-flour'],
  ['Fry the fritters in a good deal of boiling lard.', 'hot-fat'],
  ['Pot the char and cover with clarified butter.', 'potted-food'],
  ['Take new milk from the cow for the syllabub.', 'raw-milk'],
  ['Whisk the raw yolks of the eggs into the dressing.', 'raw-egg'],
  ['An egg beat up in a glass of sherry, to be drunk fasting.', 'raw-egg'],
  ['Beat two eggs with sugar and pour a pint of warm ale to them.', 'raw-egg'],
  ['Mince the raw beef finely, and eat it on toast.', 'meat-temperatures'],
  ['Butter the size of a walnut, and eggs as you like.', 'egg-dishes'],
  ['Fill the canisters with peas and have them soldered down.', 'low-acid'],
]

/** Harmless things, and harmless sentences that come near a danger: what must not be warned of. */
const harmless: readonly (readonly [words: string, caution: string])[] = [
  ['elder flowers', 'elderberries'],
  ['elder vinegar', 'elderberries'],
  ['sweet almonds', 'bitter-almonds'],
  ['almond milk', 'bitter-almonds'],
  ['bay leaves', 'cherry-laurel'],
  ['broad beans', 'kidney-beans'],
  ['veal kidney', 'kidney-beans'],
  ['green peas', 'kidney-beans'],
  ['mint', 'pennyroyal'],
  ['isinglass', 'fish'],
  ['celery', 'wild-plants'],
  ['garlic', 'wild-plants'],
  ['carrots', 'wild-plants'],
  ['ducks', 'lead-shot'],
  ['chickens', 'lead-shot'],
  ['rabbits', 'lead-shot'],
  ['quails', 'wild-birds'],
  ['pigeons', 'wild-birds'],
  ['sparrow grass', 'wild-birds'],
  ['mock turtle', 'turtle'],
  ['salmon', 'turtle'],
  ['sweetbreads', 'brains-and-pith'],
  ['marrow', 'brains-and-pith'],
  ['lime juice', 'lye'],
  ['cream of tartar', 'alum'],
  ['baking powder', 'alum'],
  ['aniseed', 'liquorice'],
  ['saffron', 'poison-plants'],
  ['lemon', 'poison-drugs'],
  ['red currants', 'poison-drugs'],
  ['cream of tartar', 'poison-drugs'],
  ['a broom', 'poison-plants'],
]

const harmlessReceipts: readonly (readonly [text: string, caution: string])[] = [
  ['Stir it with a silver spoon in a silver dish.', 'metal-leaf'],
  ['Stew the mushrooms in butter with a little mace.', 'wild-mushrooms'],
  ['Grate a little nutmeg over it.', 'nutmeg'],
  ['Boil the potatoes in their skins and peel them.', 'green-potatoes'],
  ['Set the pan upon the fire and keep it stirring.', 'charcoal-indoors'],
  ['Beat six eggs with a pint of cream and bake it.', 'eggs-kept'],
  ['Let the ale work in the tub, then bottle it.', 'steam-and-oven-canning'],
  ['Put in the juice of a lime and a little bitter orange.', 'lye'],
  ['Boil a bunch of sparrow grass and lay it on toasts.', 'wild-birds'],
  ['Serve it in a mock turtle tureen.', 'turtle'],
  ['Drink it with a cup of coffee and rusks.', 'rue'],
  ['Take butter the size of a pullet’s egg, and barm as big as two small eggs.', 'egg-dishes'],
  ['An egg-spoonful of mustard, and brandy as much as an egg-shell holds.', 'egg-dishes'],
  ['Make a brine that will bear an egg.', 'egg-dishes'],
  ['Make it up in balls the size of a kidney bean.', 'kidney-beans'],
  ['Beat six eggs with a glass of sack, and bake it in tins.', 'raw-egg'],
  ['Beat six eggs with a glass of sack, and bake it in tins.', 'preserving'],
]

describe('what the authorities warn of', () => {
  test.each(things)('%s: %s', (thing, caution) => {
    expect(ids({ things: [thing] })).toContain(caution)
  })

  test.each(receipts)('%s', (text, caution) => {
    expect(ids({ text })).toContain(caution)
  })

  test('comes with a conversion of the thing too', () => {
    const answer = convert('an ounce of orpiment', { year: 1650 })
    expect(answer.cautions.map(({ id }) => id)).toContain('poison-drugs')
    expect(answer.cautions[0]!.sources.length).toBeGreaterThan(0)
  })
})

describe('what is harmless', () => {
  test.each(harmless)('%s brings no word of %s', (thing, caution) => {
    expect(ids({ things: [thing] })).not.toContain(caution)
    expect(ids({ text: `Take some ${thing} and dress them.` })).not.toContain(caution)
  })

  test.each(harmlessReceipts)('%s', (text, caution) => {
    expect(ids({ text })).not.toContain(caution)
  })

  test.each([
    'Take a pound of butter, half a pound of sugar and a little salt.',
    'Mix the flour with water and roll it out.',
    'Stew the pears in red wine with cinnamon and cloves.',
    'Boil the rice in water till it is tender.',
    'Slice the oranges and strew sugar over them.',
  ])('%s brings no caution at all', (text) => {
    expect(ids({ text })).toEqual([])
  })
})

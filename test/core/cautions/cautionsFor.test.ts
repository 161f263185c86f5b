import { type CautionQuestion, cautionsFor } from '@core/cautions'
import { cautions, findSource, goods, heatRelations, heats } from '@core/tables'
import { describe, expect, test } from 'vitest'

const ids = (question: CautionQuestion) => cautionsFor(question).map(({ id }) => id)

describe('a thing touches its cautions', () => {
  // What to warn of: FSA 2016 and EFSA 2016 (kernels), Accum 1820 (laurel, copper), EMA 2011 (thujone), NIH LiverTox (pulegone),
  // 21 CFR 189 (safrole), 21 CFR 172.160 (saltpetre), EFSA 2013 (borax), state and provincial health departments (honey).
  test.each([
    ['bitter almonds', 'bitter-almonds'],
    ['apricot kernel', 'bitter-almonds'],
    ['peach leaves', 'bitter-almonds'],
    ['laurel leaf', 'cherry-laurel'],
    ['tansy', 'thujone'],
    ['wormwood', 'thujone'],
    ['pennyroyal', 'pennyroyal'],
    ['rue', 'rue'],
    ['foxgloves', 'poison-plants'],
    ['rhubarb leaves', 'rhubarb-leaves'],
    ['sassafras', 'safrole'],
    ['tonka beans', 'safrole'],
    ['ambergris', 'ambergris'],
    ['saltpetre', 'saltpetre'],
    ['borax', 'borax'],
    ['alum', 'alum'],
    ['pearl-ash', 'alum'],
    ['pewter dish', 'pewter'],
    ['brass kettle', 'copper'],
    ['pipkin', 'lead-glaze'],
    ['honey', 'honey'],
    ['gamboge', 'poison-drugs'],
  ])('%s: %s', (thing, id) => {
    expect(ids({ things: [thing] })).toContain(id)
  })

  test.each([
    ['bitter almond', 'bitter almonds'],
    ['Laurel Leaf', 'laurel leaves'],
    ['peach-kernel', 'peach kernels'],
    ['salt petre', 'saltpetre'],
    ['hony', 'honey'],
    ['virgin honey', 'honey'],
    ['penny-royal', 'pennyroyal'],
    ['herb grace', 'rue'],
    ['ambergreece', 'ambergris'],
    ['tansie', 'tansy'],
    ["cherry-laurel's leaf", 'cherry laurel leaves'],
  ])('%s is %s to them', (variant, thing) => {
    expect(ids({ things: [variant] })).toEqual(ids({ things: [thing] }))
    expect(ids({ things: [variant] }).length).toBeGreaterThan(0)
  })

  test.each([
    'bay leaf',
    'light paste',
    'sweet almonds',
    'pine kernels',
    'mint',
    'raisins',
    'spinach',
    'castor sugar',
    'wheat flour',
    'butter',
    'oatmeal',
  ])('%s alone touches none', (thing) => {
    expect(ids({ things: [thing] })).toEqual([])
  })

  test('an unknown thing and an empty question touch none', () => {
    expect(ids({ things: ['moonbeams', ''] })).toEqual([])
    expect(ids({})).toEqual([])
    expect(ids({ heat: 'unheard of', methods: ['whistling'], text: '' })).toEqual([])
  })
})

describe('the examples of the docstring', () => {
  test('run', () => {
    expect(cautionsFor({ things: ['laurel leaves'] }).map(({ id }) => id)).toEqual(['cherry-laurel'])
    expect(cautionsFor({ things: ['a loin of veal'], heat: 'slack' }).map(({ id }) => id)).toEqual(['slow-oven-meat'])
  })
})

describe('what is done with it counts', () => {
  test('eggs are to be cooked through; raw ones call for pasteurised eggs', () => {
    expect(ids({ eggs: true })).toEqual(['egg-dishes'])
    expect(ids({ things: ['yolks of eggs'] })).toEqual(['egg-dishes'])
    expect(ids({ eggs: true, methods: ['syllabub'] })).toContain('raw-egg')
    expect(ids({ methods: ['syllabub'] })).not.toContain('raw-egg')
  })

  test('cream is a caution where it comes from the cow', () => {
    expect(ids({ things: ['cream'] })).toEqual([])
    expect(ids({ things: ['cream'], methods: ['from the cow'] })).toContain('raw-milk')
    expect(ids({ text: 'Take a quart of new milk from the cow.' })).toContain('raw-milk')
  })

  test('keeping food is no safe process, in jars least of all', () => {
    expect(ids({ methods: ['Pickling'] })).toContain('preserving')
    expect(ids({ things: ['mushrooms'], methods: ['bottled'] })).toEqual(expect.arrayContaining(['preserving', 'low-acid']))
    expect(ids({ things: ['gooseberries'], methods: ['bottled'] })).not.toContain('low-acid')
  })

  test('flour warns where dough may be tasted', () => {
    expect(ids({ things: ['flour'], methods: ['batter'] })).toContain('raw-flour')
  })

  test('hot fat, spirits and sugar', () => {
    expect(ids({ methods: ['fritters'] })).toContain('hot-fat')
    expect(ids({ things: ['brandy'], methods: ['set fire'] })).toContain('flame')
    expect(ids({ things: ['sugar'], methods: ['candy height'] })).toContain('hot-sugar')
    expect(ids({ things: ['brandy'] })).toEqual([])
  })
})

describe('the oven counts', () => {
  // USDA-FSIS, How Temperatures Affect Food (2020): roast no lower than 325 F; Danger Zone: 40 to 140 F.
  test.each(['slow', 'slack', 'a slack oven', 'very-slow', 'the cool oven'])('veal in %s', (heat) => {
    expect(ids({ things: ['veal'], heat })).toContain('slow-oven-meat')
  })

  test('veal in a hot oven, and custard in a slow one, are let be', () => {
    expect(ids({ things: ['veal'], heat: 'hot' })).not.toContain('slow-oven-meat')
    expect(ids({ things: ['cream'], heat: 'slow' })).toEqual([])
  })

  test('nothing perishable stays all night in a falling oven', () => {
    expect(ids({ things: ['milk'], heat: 'overnight' })).toContain('falling-oven')
    expect(ids({ things: ['milk'], heat: 'after.bread' })).toContain('falling-oven')
    expect(ids({ text: 'Set the milk in the oven when the bread is drawn.' })).toContain('falling-oven')
    expect(ids({ text: 'Set the milk in a falling oven.' })).toContain('falling-oven')
    expect(ids({ text: 'Let the hare stew all night in the oven.' })).toEqual(expect.arrayContaining(['falling-oven', 'slow-oven-meat']))
  })
})

describe('the words of a receipt', () => {
  const custard = `A custard of Saltmarsh Hall. Boil a pint of new milk, fresh from the cow, with two laurel leaves in a brass skillet; beat ſix
    eggs and ſtir them in. Bake it in a ſlow oven, and ſet it by till morning.`

  test('are searched for things, deeds and heats', () => {
    expect(ids({ text: custard })).toEqual(expect.arrayContaining(['egg-dishes', 'raw-milk', 'cherry-laurel', 'copper', 'danger-zone']))
  })

  test('name the eggs of a goose and no goose', () => {
    expect(ids({ text: 'Beat six goose eggs with a little flour.' })).toEqual(ids({ things: ['egg'] }))
  })

  test('name no blood where something is blood-warm', () => {
    expect(ids({ text: 'Let the water be blood-warm.' })).toEqual(ids({ text: 'Let the water be warm.' }))
  })

  test('must name a thing from end to end', () => {
    expect(ids({ text: 'Stir in the fresh butter and leave the pan.' })).toEqual([])
    expect(ids({ text: 'They ruefully led the party; many yewers came.' })).toEqual([])
    expect(ids({ text: 'a slow fire under the mutton' })).not.toContain('slow-oven-meat')
  })

  test('may be long', () => {
    expect(ids({ text: 'laurel leaves and honey with a slow '.repeat(8_000) })).toEqual(['honey', 'cherry-laurel'])
  })
})

describe('the table', () => {
  test('covers what the authorities warn of, with one voice each', () => {
    expect(cautions.length).toBeGreaterThanOrEqual(30)
    expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length)
  })

  test('every caution is brief, ends its sentence and points to someone who knows', () => {
    for (const { id, text } of cautions) {
      expect(text.length, id).toBeLessThan(320)
      expect(text.split(/[.!?] /).length, id).toBeLessThanOrEqual(3)
      expect(text, id).toMatch(/\.$/)
      expect(text, id).toMatch(/authority|poison centre|service says|law allows|oven thermometer/)
      expect(text, id).not.toMatch(/safe if|\bmg\b|grains?\b/)
    }
  })

  test('every source, class and heat that it names is in the tables', () => {
    const classes = new Set(goods.flatMap((row) => row.classes))
    const ovens = new Set([...heats, ...heatRelations].map((row) => row.id))
    for (const { id, source, touches } of cautions) {
      expect(
        source.filter((one) => !findSource(one.id)),
        id,
      ).toEqual([])
      expect(
        (touches.classes ?? []).filter((one) => !classes.has(one)),
        id,
      ).toEqual([])
      expect(
        (touches.heats ?? []).filter((one) => !ovens.has(one)),
        id,
      ).toEqual([])
    }
  })

  test('every thing and deed that it lists is found in a text, however many words it has', () => {
    for (const { id, touches } of cautions) {
      const { things = [''], classes, eggs, heats: ovens, methods = [''] } = touches
      const beside = {
        ...(classes && { things: [goods.find((row) => row.classes.includes(classes[0]!))!.names[0]!] }),
        ...(eggs && { eggs }),
        ...(ovens && { heat: ovens[0]! }),
      }
      for (const thing of things) expect(ids({ ...beside, text: `Take ${thing}, ${methods[0]}.` }), thing).toContain(id)
      for (const method of methods) expect(ids({ ...beside, text: `Take ${things[0]}; ${method}.` }), method).toContain(id)
    }
  })

  test('every caution can be touched by what it lists', () => {
    for (const { id, touches } of cautions) {
      const { things, classes, eggs, heats: ovens, methods } = touches
      const thing = things?.[0] ?? (classes && goods.find((row) => row.classes.includes(classes[0]!))!.names[0])
      const question = {
        ...(thing && { things: [thing] }),
        ...(eggs && { eggs }),
        ...(ovens && { heat: ovens[0]! }),
        ...(methods && { methods: [methods[0]!] }),
      }
      expect(ids(question), id).toContain(id)
    }
  })
})

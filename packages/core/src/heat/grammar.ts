import { keyOf, wordSet } from './words.js'

/** Words of a heat phrase that say nothing of the heat. */
const fillers: ReadonlySet<string> = wordSet(
  'a an the in into of to at with by on and or it them this that your his her some any oven ovens oue heat heats heate fire stove temper is be are was let ' +
    'must should made make keep kept set put bake baked baking baketh stand when then than for as so such but being heated kind sort rather only just gas mark ' +
    'place place such well one which have has had you do we i will would shall may can if from up very too not nor no first wood brick moist degree degrees use about ' +
    'almost nearly near',
)

/** Farther from a moderate oven. */
export const raising: ReadonlySet<string> = wordSet(
  'very verie exceeding exceedingly extreme extremely mighty right over most passing wondrous',
)
/** Nearer to a moderate oven. */
export const lowering: ReadonlySet<string> = wordSet(
  'pretty tolerably tolerable rather moderately fairly indifferent indifferently reasonable reasonably meetly something somewhat somwhat little bit quite',
)
export const negating: ReadonlySet<string> = wordSet('not nor neither never without no')
export const joining: ReadonlySet<string> = wordSet('or between betwixt to rather')
export const later: ReadonlySet<string> = wordSet('then afterwards afterward')
export const much: ReadonlySet<string> = wordSet('much far deal good great')

/** Words that praise an oven more than they heat it: they count where no stronger word stands. */
export const weak: ReadonlySet<string> = wordSet('good sound steady regular even mean low strong easy')

/** Words of comparison, the word they come from and the way they point. */
export const comparatives: ReadonlyMap<string, { readonly base: string; readonly way: 1 | -1 }> = new Map(
  (
    [
      ['hotter', 'hot', 1],
      ['whotter', 'hot', 1],
      ['quicker', 'quick', 1],
      ['brisker', 'brisk', 1],
      ['fiercer', 'fierce', 1],
      ['sharper', 'sharp', 1],
      ['warmer', 'warm', 1],
      ['stronger', 'strong', 1],
      ['slower', 'slow', -1],
      ['slacker', 'slack', -1],
      ['cooler', 'cool', -1],
      ['colder', 'cool', -1],
      ['softer', 'soft', -1],
      ['gentler', 'gentle', -1],
      ['milder', 'mild', -1],
      ['lower', 'low', -1],
    ] as const
  ).map(([word, base, way]) => [keyOf(word), { base, way }]),
)

export const than: ReadonlySet<string> = wordSet('than then')
export const after: ReadonlySet<string> = wordSet('after')
export const whenever: ReadonlySet<string> = wordSet('when once as whence from soon')
/** How a batch leaves the oven. */
export const removing: ReadonlySet<string> = wordSet(
  'drawn drawne draw drawing draweth withdrawn out forth removed taken done baked come comes comming coming came',
)
export const utmost: ReadonlySet<string> = wordSet('possible possibly can may might could ever')
export const enough: ReadonlySet<string> = wordSet('enough inough enow')
/** Words for vessels and makes of oven, which say nothing of the heat. */
export const noHeats: ReadonlySet<string> = wordSet('sweet close dutch portable tin reflector camp')
export const fires: ReadonlySet<string> = wordSet('fire fires coals hearth')
export const ovens: ReadonlySet<string> = wordSet('oven ovens oue')

/** Every word of the grammar: known, though it names no heat. */
export const grammatical: ReadonlySet<string> = new Set(
  [
    fillers,
    raising,
    lowering,
    negating,
    joining,
    later,
    much,
    weak,
    comparatives.keys(),
    than,
    after,
    whenever,
    removing,
    utmost,
    enough,
    fires,
    ovens,
  ].flatMap((words) => [...words]),
)

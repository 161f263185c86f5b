/**
 * How fast words are read: megabytes of receipts a second, and phrases a second, none of them seen before.
 *
 * A pass of a regular expression that only cuts the same text into words tells how fast the machine is: the ratio to it holds on others too.
 */
import { readPhrase, readReceipt } from '@pottle/core'
import { compare, perSecond } from './measure.mjs'

const receipt = [
  'To make the great cake of Saltmarsh Hall. Take half a pecke of fine flower, iij pounds of currans well washt, a pounde and a halfe of',
  'fresh butter, twelve egges, leaving out five of the whites, a pint and a gill of thick creame, halfe a pint of ale yest, as much mace as',
  'will lie on a sixpence, two nutmegs grated, and a piece of butter as big as a walnut. Mingle them well, let it stand an houre and a',
  'half before a gentle fire, then bake it in an oven as hot as for manchet, two hours or somewhat better. Sauce for it: sugar, 1/2 lb.;',
  'rose-water, 3 table-spoonfuls; the juice of two or three lemons; a penny white loaf grated; of cinnamon and ginger each half an ounce.',
].join(' ')

const prose = Array.from({ length: 400 }, () => receipt).join('\n\n')

let amount = 0

/** A new amount each time, so that nothing can be remembered. */
const fresh = (rest) => `${++amount % 1e9} ${rest}`

const words = /[\p{L}\p{N}]+/gu

const endings = [
  'pottles of cream',
  'lb. of the best fine sugar',
  'egges, leaving out three of the whites',
  'handfulls of rosemary flowers',
  'penny loaves',
]

export async function run() {
  let sink = 0
  const {
    prose: characters,
    cut,
    phrases,
  } = compare({
    prose: () => {
      readReceipt(prose)
      return prose.length
    },
    cut: () => {
      sink += prose.match(words).length
      return prose.length
    },
    phrases: () => {
      for (let i = 0; i < 1000; i++) readPhrase(fresh(endings[i % endings.length]))
      return 1000
    },
  })
  const million = (rate) => (rate / 1e6).toFixed(1).padStart(12)
  console.log('reading, by processor time:')
  console.log(
    `  ${million(characters)} million characters a second of receipts in period spelling, which is 1/${(cut / characters).toFixed(0)} of`,
  )
  console.log(`  ${million(cut)} for a regular expression that only finds the words`)
  console.log(`  ${perSecond(phrases)}  phrases, all different`)
  if (sink === 0) throw new Error('there were no words')
}

/** Pounds, stones, packed goods and counts, by statutes, juries and tables. */
import { holdRows, lb, oz, type Row } from './acceptance.js'

const e = 'england'
const s = 'scotland'
const nicholson = 'Nicholson 1912, ch. IX'
const tract = 'Tract on weights and measures, c. 1300'
const tables = 'Arithmetic tables of c. 1800-1830'
const culpeper = 'Culpeper 1653, Weights and Measures'
const jury = 'Cleland 1823, p. 207'
const bute = 'Cleland 1828, p. 218'
const panorama = 'Literary Panorama, Nov. 1814, p. 195'
const grain = lb / 7000

const pounds: readonly Row[] = [
  ['a pound of raisins', 1590, 'london', lb, 0.001, 'Proclamation of 16 December 1587'],
  ['a punde of sugar', 1600, e, lb, 0.001, 'Proclamation of 16 December 1587'],
  ['a troy pound of bread', 1590, e, 5760 * grain, 0.001, 'Proclamation of 16 December 1587: bread by troy'],
  ['one pound of wax', 1300, 'london', 6750 * grain, 0.001, tract],
  ['a pound of pepper', 1560, e, 6992 * grain, 0.001, 'Nicholson 1912, ch. VII: sixteen ounces of 437 grains'],
  ['a pound of butter', 1814, 'london', lb, 0.001, panorama],
  ['a pound of butter', 1814, e, 14 * oz, 'among', panorama],
  ['a pound of butter', 1814, e, 20 * oz, 'among', panorama],
  ['a pound of butter', 1750, e, 18 * oz, 'among', 'Webster 1913, butterweight'],
  ['a pound of butter', 1850, 'lancashire', 18 * oz, 0.001, 'Nicholson 1912, ch. VIII n. 28: and two copper pennies'],
  ['a pound of butter', 1880, 'lancashire', lb + (2 * oz) / 3, 0.001, 'Nicholson 1912, ch. VIII n. 28: and two bronze pennies'],
  ['a pound of sugar', 1850, 'cumberland', 18 * oz, 0.001, nicholson],
  ['a dish of butter', 1814, 'essex', 38 * oz, 0.06, panorama],
  ['a dish of butter', 1814, 'cambridgeshire', 27 * oz, 0.12, panorama],
  ['a pound of cheese', 1823, 'glasgow', 22.4375 * oz, 0.001, jury],
  ['a pound of fish', 1820, 'glasgow', 22.4375 * oz, 0.001, jury],
  ['a pound of beef', 1820, 'glasgow', 22.4375 * oz, 0.001, jury],
  ['a pound of meal', 1823, 'glasgow', 17.4375 * oz, 0.001, jury],
  ['a pound of barley', 1823, 'glasgow', lb, 0.001, jury],
  ['a pound of soap', 1823, 'glasgow', lb, 0.001, jury],
  ['a pound of beef', 1827, 'bute', 24 * oz, 0.001, bute],
  ['a pound of meal', 1700, 'edinburgh', 7609 * grain, 0.01, 'Nicholson 1912, ch. XI: sixteen ounces of 475.5 grains'],
  ['half an ounze of mace', 1600, e, oz / 2, 0.001, 'Enquire Within 1894, no. 662: spices are bought by avoirdupois'],
  ['a dram of saffron', 1653, e, 60 * grain, 0.001, culpeper],
  ['ʒij of rhubarb', 1653, 'london', 120 * grain, 0.001, culpeper],
  ['℥ iij of senna', 1653, 'london', 1440 * grain, 0.001, culpeper],
  ['℈ j of saffron', 1653, 'london', 20 * grain, 0.001, culpeper],
  ['a pennyweight of saffron', 1700, e, 24 * grain, 0.001, nicholson],
  ['a pennyweight of saffron', 1890, e, 24 * grain, 0.001, nicholson],
  ['iij li. di of sugar', 1600, e, 3.5 * lb, 0.001, nicholson],
  ['a pound of flour and a half', 1700, e, 1.5 * lb, 0.001, nicholson],
  ['half a quarter of a pound of sugar', 1650, e, lb / 8, 0.001, nicholson],
]

const stones: readonly Row[] = [
  ['a stone of wax', 1300, e, 8 * lb, 0.001, tract],
  ['a stone of sugar', 1300, e, 8 * lb, 0.001, tract],
  ['a stone of almonds', 1300, e, 8 * lb, 0.001, tract],
  ['a stone of cinnamon', 1310, e, 8 * lb, 0.001, tract],
  ['a stone of mutton', 1850, 'london', 8 * lb, 0.001, 'Encyclopaedia Britannica 1772, Stone'],
  ['a stone of fish', 1800, 'london', 8 * lb, 0.001, nicholson],
  ['a stone of beef', 1800, 'lancashire', 14 * lb, 0.001, tables],
  ['a stone of beef', 1772, s, 16 * lb, 0.001, 'Encyclopaedia Britannica 1772, Stone'],
  ['a stone of cheese', 1400, e, 16 * lb, 0.001, nicholson],
  ['a stone of potatoes', 1850, e, 14 * lb, 0.001, nicholson],
  ['a stone of butter', 1750, 'edinburgh', 9996, 0.005, 'Scottish Archive Network: sixteen pounds of the Edinburgh tron'],
  ['a stane of meal', 1700, 'edinburgh', 7889, 0.001, 'Nicholson 1912, ch. XI: sixteen Scots troy pounds'],
  ['a clove of cheese', 1431, e, 7 * lb, 0.001, '9 Hen. VI c. 8'],
  ['a clove of cheese', 1600, 'essex', 8 * lb, 0.001, 'Recorde 1543, in Nicholson 1912'],
  ['a clove of butter', 1800, 'suffolk', 8 * lb, 0.001, tables],
  ['a wey of cheese', 1450, e, 224 * lb, 0.001, '9 Hen. VI c. 8'],
  ['a wey of cheese', 1750, 'suffolk', 256 * lb, 0.001, 'Malynes 1622, p. 50'],
  ['a wey of cheese', 1750, 'suffolk', 336 * lb, 'among', 'Worlidge 1704, who gives it to the other county'],
  ['half a hundredweight of raisins', 1750, e, 56 * lb, 0.001, nicholson],
  ['a hundredweight of flour', 1850, 'america', 100 * lb, 0.001, nicholson],
  ['a pot of butter', 1670, e, 14 * lb, 0.001, '13 & 14 Car. II c. 26, recalled'],
  ['a firkin of butter', 1750, e, 56 * lb, 0.001, '13 & 14 Car. II c. 26'],
  ['a barrel of anchovies', 1805, e, 30 * lb, 0.001, tables],
  ['a puncheon of prunes', 1800, e, 1120 * lb, 0.001, tables],
  ['a loaf of sugar', 1700, e, 14 * lb, 0.001, 'David 1977, p. 139'],
  ['a boll of oatmeal', 1750, s, 140 * lb, 0.001, 'Scottish weights tables, recalled'],
  ['a gallon of honey', 1700, e, 12 * lb, 0.04, "The trade's twelve pounds, recalled"],
  ['a gallon of oil', 1750, e, 7.5 * lb, 0.04, 'Arithmetic books of the eighteenth century, recalled'],
  ['a bushel of wheat', 1750, e, 62.5 * lb, 0.06, 'Nicholson 1912: 500 pounds to the quarter'],
]

const counts: readonly Row[] = [
  ['a dozen of larks', 1700, e, 12, 0.001, 'A dozen'],
  ['two brace of partridges', 1700, e, 4, 0.001, 'A brace is two'],
  ['a couple of rabbits', 1700, e, 2, 0.001, 'A couple is two'],
  ['five score herrings', 1700, e, 100, 0.001, 'English Cyclopaedia: a score is twenty'],
]

holdRows('pounds and ounces', 'g', pounds)
holdRows('stones and packed goods', 'g', stones)
holdRows('counts', 'each', counts)

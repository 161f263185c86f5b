/**
 * Measures of the trades that cooks bought from: casks by the gauger's tables and the dictionaries, packed fish and fruit, local bushels,
 * Scots corn measures, baskets and bundles, things by tale, coins as weights and breadths. Where it can be, the source beside a figure is
 * another than the one that the row of the table cites.
 */
import { ale, corn, cubicInch, holdRows, imperial, lb, oz, type Row, wine } from './acceptance.js'

const e = 'england'
const s = 'scotland'
const us = 'america'
const webster = "Webster's Dictionary 1913"
const gauger = "A gauger's table of the Excise, c. 1800, in cubic inches"
const harrison = 'Harrison 1577, of liquid measures'
const wilderspin = 'Wilderspin, Infant System, ch. XII'
const tableBook = 'United States Table Book, c. 1830'
const archive = 'Scottish Archive Network, on capacity'
const arithmetic = 'Scottish school arithmetic of 1869'
const simmonds = 'Simmonds 1892'
const malynes = 'Malynes 1622, p. 50'
const grain = lb / 7000

const casks: readonly Row[] = [
  ['a kilderkin of beer', 1820, e, 5076 * cubicInch, 0.001, gauger],
  ['a barrel of beer', 1820, e, 10152 * cubicInch, 0.001, gauger],
  ['a hogshead of beer', 1820, e, 15228 * cubicInch, 0.001, gauger],
  ['a puncheon of beer', 1820, e, 20304 * cubicInch, 0.001, gauger],
  ['a butt of beer', 1820, e, 30456 * cubicInch, 0.001, gauger],
  ['a kilderkin of ale', 1750, e, 4794 * cubicInch, 0.001, gauger],
  ['a barrel of ale', 1750, e, 9588 * cubicInch, 0.001, gauger],
  ['a hogshead of ale', 1750, e, 14382 * cubicInch, 0.001, gauger],
  ['a barrel of ale', 1750, 'london', 9024 * cubicInch, 0.001, gauger],
  ['a hogshead of ale', 1750, 'london', 13536 * cubicInch, 0.001, gauger],
  ['a kilderkin of ale', 1577, e, 16 * ale, 0.001, harrison],
  ['a barrel of ale', 1577, e, 32 * ale, 0.001, harrison],
  ['a kilderkin of beer', 1577, e, 18 * ale, 0.001, harrison],
  ['a barrel of beer', 1577, e, 36 * ale, 0.001, harrison],
  ['a pottle of ale', 1577, e, (8 * ale) / 16, 0.001, `${harrison}: sixteen to the firkin`],
  ['a hogshead of wine', 1750, e, 63 * wine, 0.001, webster],
  ['a pipe of wine', 1750, e, 126 * wine, 0.001, webster],
  ['a butt of wine', 1750, e, 126 * wine, 0.001, webster],
  ['a butt of beer', 1750, e, 108 * ale, 0.001, webster],
  ['a tun of wine', 1750, e, 252 * wine, 0.001, webster],
  ['a tierce of wine', 1880, e, 35 * imperial, 0.001, webster],
  ['an anker of brandy', 1760, e, 10 * wine, 0.001, wilderspin],
  ['an anker of brandy', 1850, e, 8.5 * imperial, 0.025, `${webster}, which rounds`],
  ['a runlet of cider', 1690, e, 14.5 * wine, 'inside', `${webster}: three gallons to twenty`],
  ['a firkin of ale', 1640, e, 8 * ale, 0.001, tableBook],
  ['a firkin of beer', 1640, e, 9 * ale, 0.001, tableBook],
  ['a barrel of salmon', 1622, e, 42 * wine, 0.001, malynes],
  ['a barrel of herrings', 1622, e, 32 * wine, 0.02, malynes],
  ['a firkin of soap', 1600, e, 8 * ale, 0.001, malynes],
  ['a barrel of beer', 1830, us, 36 * ale, 0.001, `${tableBook}: three barrels to the butt of 108`],
  ['a hogshead of beer', 1830, us, 54 * ale, 0.001, tableBook],
  ['a tierce of wine', 1850, us, 42 * wine, 0.001, tableBook],
  ['a pipe of madeira', 1850, us, 126 * wine, 0.001, tableBook],
  ['a barrel of cider', 1850, us, 31.5 * wine, 0.001, webster],
  ['a barrel of apples', 1890, us, 3.75 * 1728 * cubicInch, 0.01, "Business Man's Encyclopedia: 3.75 cubic feet"],
  ['a firkin of eels', 1577, e, 10.5 * ale, 0.001, harrison],
]

const corns: readonly Row[] = [
  ['a bushel of wheat', 1850, e, 2218.192 * cubicInch, 0.001, 'Encyclopaedia Britannica 1911, Bushel'],
  ['a bushel of wheat', 1690, e, 2145.6 * cubicInch, 0.01, 'Willich 1802: the Exchequer bushel as the Commons gauged it in 1696'],
  ['a curnock of barley', 1688, e, 32 * corn, 0.001, 'English Cyclopaedia: the coomb is also called a cornook'],
  ['a tovet of beans', 1780, 'kent', 4 * corn, 0.001, 'English Cyclopaedia: the half bushel'],
  ['a load of wheat', 1750, e, 5 * 64 * corn, 0.001, wilderspin],
  ['a wey of salt', 1750, e, 40 * 8 * corn, 0.001, 'English Cyclopaedia: five quarters a wey'],
  ['a last of barley', 1750, e, 80 * 8 * corn, 0.001, wilderspin],
  ['a heaped bushel of apples', 1800, e, 1.25 * 8 * corn, 0.01, `${wilderspin}: five pecks by water measure`],
  ['a bushel of wheat', 1800, 'carlisle', 24 * corn, 0.001, 'Willich 1802'],
  ['a bushel of oats', 1800, 'chester', 40 * corn, 0.001, 'Willich 1802'],
  ['a lippie of pease', 1750, s, 2268, 0.01, archive],
  ['a forpet of barley', 1750, s, 3307, 0.01, `${archive}, a quarter of its peck`],
  ['a peck of beans', 1750, s, 9072, 0.01, archive],
  ['a peck of barley', 1750, s, 13229, 0.01, archive],
  ['a firlot of wheat', 1750, s, 36286, 0.01, archive],
  ['a boll of barley', 1750, s, 211664, 0.01, archive],
  ['a chalder of oats', 1750, s, 16 * 211664, 0.01, archive],
  ['a boll of wheat', 1850, s, 4 * 8 * corn, 0.03, `${webster}: four Winchester bushels`],
  ['a mutchkin of cream', 1780, s, 26.0509 * cubicInch, 0.01, arithmetic],
  ['a chopin of ale', 1780, s, 52.1017 * cubicInch, 0.01, arithmetic],
  ['a mutchkin of whisky', 1890, s, imperial / 8, 0.01, 'Kirkland 1927: an imperial pint'],
  ['a punnet of mushrooms', 1847, e, (Math.PI / 4) * 49 * cubicInch, 0.01, 'Johnson and Landreth 1847: seven inches by one'],
  ['a sieve of currants', 1847, e, 7 * imperial, 0.001, 'Johnson and Landreth 1847'],
  ['a spoonful of rose-water', 1577, e, 66 * grain, 'inside', `${harrison}: a drachm and six grains`],
  ['a taster of rosewater', 1653, e, 1.5 * 480 * grain, 0.01, 'Culpeper 1653: an ounce and a half'],
  ['a jigger of rum', 1895, us, wine / 64, 0.001, 'American book of mixed drinks, c. 1900: two ounces'],
]

const weights: readonly Row[] = [
  ['a firkin of butter', 1850, e, 56 * lb, 0.001, simmonds],
  ['a firkin of soap', 1850, e, 64 * lb, 0.001, simmonds],
  ['a boll of oatmeal', 1850, s, 140 * lb, 0.001, webster],
  ['a frail of raisins', 1600, e, 75 * lb, 'inside', webster],
  ['a frail of figs', 1700, e, 32 * lb, 'among', `${webster}; thirty pounds and more in the Otago Daily Times of 1939`],
  ['a barrel of flour', 1880, us, 196 * lb, 0.001, webster],
  ['a barrel of pork', 1890, us, 200 * lb, 0.001, 'Dyer 1896'],
  ['a barrel of oats', 1800, 'ireland', 14 * 14 * lb, 0.001, 'Dutton 1824, of Galway'],
  ['a stone of potatoes', 1800, 'ireland', 16 * lb, 0.001, 'Dutton 1824, of Galway'],
  ['a pound of butter', 1820, 'ireland', 20 * oz, 'inside', 'Dutton 1824: eighteen, twenty and twenty-four ounces'],
  ['a lippy of potatoes', 1880, s, 1.75 * lb, 0.001, 'New English Dictionary, Lippy'],
  ['a quintal of salt fish', 1850, e, 112 * lb, 0.001, 'Dictionary of Newfoundland English: two quintals, 224 pounds'],
  ['a hundred of sugar', 1750, e, 112 * lb, 0.001, 'Book of rates 1660: hundreds of 112 pounds'],
  ['a hundred of oranges', 1700, e, 120 * 130, 0.02, 'Proverb of the hundred, six score of all things but men, money and pins'],
  ['a livre of sugar', 1845, e, 18 * oz, 'among', 'Acton 1845'],
  ['the weight of three pennies in mace', 1870, e, oz, 0.02, 'Coinage of 1860: three bronze pence to the ounce'],
  ['the weight of a shilling of saffron', 1850, e, 5.6552, 0.02, 'A collector on the standards of sterling: grams of the coinage of 1816'],
  ['the weight of a sixpence of saffron', 1850, e, 2.8276, 0.02, 'A collector on the standards of sterling'],
  ['the weight of a half-crown of cinnamon', 1850, e, 14.138, 0.02, 'A collector on the standards of sterling'],
  ['the weight of a guinea of mace', 1790, e, 129.5 * grain, 0.02, 'Tables of the coins of all nations, c. 1830: 5 dwt 9 1/2 gr'],
  ['the weight of a half-guinea of mace', 1780, e, 64 * grain, 'inside', 'Brass weight of 1772, Leamington Spa: 2 dwt 16 gr'],
  ['the weight of a groat in saffron', 1500, e, 48 * grain, 0.05, 'Feavearyear: pennies of twelve grains from 1464'],
  ['the weight of a penny in saffron', 1380, e, 18 * grain, 0.05, 'Feavearyear: eighteen grains from 1351'],
]

const tales: readonly Row[] = [
  ['a cade of red herrings', 1700, e, 500, 0.001, 'New English Dictionary, from Chambers 1751'],
  ['a cade of herrings', 1690, e, 720, 'among', 'Fleetwood 1707'],
  ['a cade of sprats', 1700, e, 1000, 0.001, 'New English Dictionary, from Worlidge 1704'],
  ['a mease of herrings', 1780, e, 500, 0.001, 'New English Dictionary, from Young 1780'],
  ['a mease of herrings', 1890, 'isle-of-man', 615, 'among', "Whitaker's Almanack 1905: five hundreds of 123"],
  ['a hundred of herrings', 1880, e, 132, 0.001, `${simmonds}: five hundreds are 660`],
  ['five hundred of herrings', 1300, e, 600, 0.001, 'The cellaress of Barking: six score to the hundred'],
  ['a swill of herrings', 1880, e, 660, 0.001, simmonds],
  ['a warp of herrings', 1800, e, 4, 0.001, webster],
  ['a cast of herrings', 1800, e, 4, 0.001, webster],
  ['a stick of eels', 1500, e, 25, 0.001, webster],
  ['a pad of mackerel', 1850, e, 60, 0.001, simmonds],
  ['a hand of radishes', 1900, e, 21, 'inside', 'Otago Daily Times 1939: twelve to thirty'],
]

const breadths: readonly Row[] = [
  ['a span long', 1750, e, 9 * 25.4, 0.01, 'Table of long measure, c. 1830'],
  ['an ell', 1750, e, 45 * 25.4, 0.001, 'Wilderspin: five quarters of a yard'],
  ['the size of a florin', 1890, e, 29.46, 'inside', 'A collector with callipers: florins of 1887 to 1892'],
]

holdRows('casks of the gauger and the dictionaries', 'ml', casks)
holdRows('corn measures, baskets and small cups', 'ml', corns)
holdRows('packed goods and coins as weights', 'g', weights)
holdRows('things by tale', 'each', tales)
holdRows('lengths', 'mm', breadths)

/** Spoons, cups, hands, coins, likenesses, eggs, pieces, prices and packed spoons, by handbooks, mints and measured foods. */
import { holdRows, lb, oz, type Row, wine } from './acceptance.js'

const e = 'england'
const us = 'america'
/** What is left of an egg without its shell (New International Encyclopaedia 1902-5: shell 11, white 57, yolk 32). */
const contents = 0.89
const [white, yolk] = [0.57, 0.32]
const ten = lb / 10
const amar = 'Amar, JSIJ: 44 g, eggs before the modern breeds'
const acton = 'Acton 1845'
const kitchiner = 'Kitchiner 1830'
const enquire = 'Enquire Within 1894, nos 661-665'
const farmer = 'Farmer 1896, p. 28'
const leslie28 = 'Leslie 1828'
const leslie57 = 'Leslie 1857'
const peterson = 'Peterson 1856'
const parloa = 'Parloa 1880'
const buckeye = 'Buckeye 1877-80, p. 331'
const gillette = 'Gillette 1887'
const usda = 'USDA SR26'
const mint = 'Mint rate of 66 s to the troy pound from 1816'
const oldMint = 'Mint rate of 62 s to the troy pound, 1601-1816'
const clark = 'Clark 2004, in Allen & Unger'

const fluid: readonly Row[] = [
  ['ij sponefulles of rosewater', 1600, e, 23.4, 0.01, 'Culpeper 1653: three drachms of water to the spoon'],
  ['a spoonful of cream', 1750, e, wine / 256, 0.01, 'Pereira 1873, p. 68: a spoon alone is a table-spoon'],
  ['a tablespoonful of vinegar', 1830, e, wine / 256, 0.001, kitchiner],
  ['a large tablespoonful of brandy', 1837, 'philadelphia', wine / 256, 'inside', 'Leslie 1837: eight large ones to the gill'],
  ['a tablespoonful of yeast', 1836, us, wine / 32 / 5, 'among', 'New England Cook Book 1836: five to the gill'],
  ['a tablespoonful of milk', 1856, us, wine / 32 / 6, 'among', `${peterson}: six to the gill`],
  ['a table-spoonful of ketchup', 1890, e, 14.2065, 0.001, enquire],
  ['a dessert-spoonful of vinegar', 1830, e, wine / 512, 0.001, 'Pereira 1873, p. 68'],
  ['a tea-spoonful of ketchup', 1830, e, wine / 1024, 0.001, kitchiner],
  ['a teaspoonful of vanilla', 1900, us, wine / 768, 0.001, `${farmer}: three to the table-spoon`],
  ['a saltspoonful of cayenne', 1881, us, wine / 1024 / 4, 'inside', 'Campbell 1881: four even ones to the tea-spoon'],
  ['sixty drops of water', 1846, us, wine / 1024, 0.03, 'Beecher 1846'],
  ['a wine-glassful of brandy', 1830, e, wine / 64, 0.03, kitchiner],
  ['a wine glass of rose water', 1828, 'philadelphia', wine / 64, 0.001, leslie28],
  ['a tea-cup of milk', 1894, e, 170.478, 0.001, enquire],
  ['a tea-cup of milk', 1894, e, 255.7, 'inside', `${enquire}: some hold half as much more`],
  ['a tea-cupful of milk', 1836, us, 120, 0.01, 'New England Cook Book 1836: very little over a gill'],
  ['a teacup of flour', 1878, us, 177.4, 0.001, `${buckeye}: four for three coffee-cups`],
  ['a coffee-cupful of milk', 1880, us, wine / 16, 0.001, parloa],
  ['a tumbler of water', 1890, e, 284.131, 0.001, enquire],
  ['a tumblerful of milk', 1850, us, wine / 16, 0.001, leslie28],
  ['a cup of sugar', 1887, us, wine / 16, 0.001, gillette],
]

const dry: readonly Row[] = [
  ['a large tablespoonful of flour', 1830, e, oz / 2, 'inside', kitchiner],
  ['two large tablespoonfuls of ground cinnamon', 1856, us, oz, 'inside', peterson],
  ['a tablespoonful of salt', 1857, us, oz, 'inside', leslie57],
  ['a tablespoonful of soft butter', 1887, us, oz, 'inside', gillette],
  ['four level tablespoonfuls of flour', 1896, us, oz, 'inside', farmer],
  ['two level tablespoonfuls of butter', 1896, us, oz, 'inside', farmer],
  ['a large tablespoonful of grated horseradish', 1845, e, oz, 'inside', acton],
  ['a large teaspoonful of flour', 1830, e, (3 * oz) / 16, 'inside', kitchiner],
  ['a quart of flour', 1828, us, lb, 0.01, leslie28],
  ['a quart of Indian meal', 1828, us, lb * 1.125, 0.01, leslie28],
  ['a quart of powdered white sugar', 1828, us, (lb * 17) / 16, 0.01, leslie28],
  ['a quart of brown sugar', 1857, 'philadelphia', lb * 1.125, 0.01, leslie57],
  ['a pint of soft butter', 1878, us, lb, 0.01, 'Tyree 1878'],
  ['a quart of soft butter', 1857, 'philadelphia', 907.5, 0.01, `${usda}: 227 g to the cup, against Leslie's misprint`],
  ['two cups of granulated sugar', 1880, us, lb, 0.01, parloa],
  ['a pint of chopped meat', 1880, us, lb, 0.01, parloa],
  ['two cups of butter', 1880, us, lb, 0.01, parloa],
  ['a pint of rice', 1845, e, lb, 0.01, acton],
  ['a pint of quince juice', 1845, e, lb * 1.25, 0.06, acton],
  ['three quarters of a pint of bread-crumbs', 1845, e, 6 * oz, 0.05, acton],
  ['a quartern of flour', 1845, e, 3.5 * lb, 0.001, acton],
  ['a pint and a half of flour', 1837, us, lb * 0.75, 0.01, 'Leslie 1837'],
  ['4 1/3 cups of rye meal', 1896, us, lb, 0.01, farmer],
  ['4 1/3 cups of coffee', 1896, us, lb, 0.01, farmer],
  ['a hundred oysters', 1880, us, 200 * 9.463529 * 1.048, 'inside', `${parloa}: a hundred to two quarts`],
  ['a handful of sage', 1830, e, 2 * oz, 0.001, kitchiner],
  ['a handful of parsley', 1670, e, 30, 'inside', "Culpeper 1653: the apothecaries' handful, which Digby's is larger than"],
  ['butter the size of an egg', 1877, us, 2 * oz, 0.001, buckeye],
  ['a lump of butter the bigness of a walnut', 1750, e, oz * 0.75, 'inside', 'Kitchen tables: half an ounce to an ounce'],
  ['a nutmeg', 1700, e, oz / 7, 0.001, peterson],
  ['a clove of garlic', 1830, e, 3, 0.001, usda],
  ['the juice of two lemons', 1750, e, 96, 0.01, `${usda}: 48 g a lemon`],
  ['an onion', 1830, e, 2 * oz, 'inside', kitchiner],
  ['a square of chocolate', 1880, us, oz, 0.001, parloa],
  ['a mutton chop', 1849, e, 6 * oz, 0.001, 'Soyer 1849'],
]

const eggs: readonly Row[] = [
  ['xx eyren', 1550, e, 20 * 44 * contents, 0.01, amar],
  ['ten eggs', 1837, us, ten * 10 * contents, 0.001, 'Leslie 1837'],
  ['nine eggs', 1896, us, lb * contents, 0.001, farmer],
  ['ten eggs, leaving out four whites', 1830, e, ten * (10 * yolk + 6 * white), 0.001, leslie28],
  ['x egges, leaving out half the whites', 1830, e, ten * (10 * yolk + 5 * white), 0.001, leslie28],
  ['eight yolks and three whites', 1830, e, ten * (8 * yolk + 3 * white), 0.001, leslie28],
  ['nine eggs, but four whites', 1830, e, ten * (9 * yolk + 4 * white), 0.001, leslie28],
  ['seven eggs, the whites being put by', 1830, e, ten * 7 * yolk, 0.001, leslie28],
  ['the yolkys of vj eyren', 1550, e, 6 * 44 * yolk, 0.001, amar],
  ['the whytes of iiij egges', 1550, e, 4 * 44 * white, 0.001, amar],
  ['a goose egg', 1889, e, (lb / 4) * 0.86, 'among', 'Popular Science Monthly 1889: four to the pound'],
  ['a goose egg', 1907, e, 190.4 * 0.86, 'inside', 'Wiley 1907'],
  ['two duck eggs', 1861, e, 4 * 38 * 0.86, 'inside', 'Beeton 1861: one for two small eggs'],
  ['the weight of ten eggs in sugar', 1828, us, lb, 0.001, leslie28],
]

const coins: readonly Row[] = [
  [
    'as much cayenne as will lie on a sixpence',
    1830,
    e,
    0.25,
    0.02,
    'A cone on 19.4 mm by the slope of a fine powder (USP 1174), at 0.36 g/ml (USDA SR26)',
  ],
  ['the weight of three pennies in mace', 1870, e, oz, 0.01, 'Bronze coinage of 1860: three to the ounce'],
  ['the weight of a sovereign in cochineal', 1850, e, 7.988, 0.01, 'De Morgan: 5 dwt 3 1/4 gr'],
  ['the weight of a shilling of mace', 1850, e, (5760 / 66) * 0.06479891, 0.01, mint],
  ['the weight of a shilling of mace', 1750, e, (5760 / 62) * 0.06479891, 0.01, oldMint],
  ['the weight of half a crown of mace', 1720, e, 2.5 * (5760 / 62) * 0.06479891, 0.01, oldMint],
  ['the weight of a crown of sugar candy', 1700, e, 5 * (5760 / 62) * 0.06479891, 0.01, oldMint],
  ['the weight of a shilling in saffron', 1580, e, 6.221, 'inside', 'Hawkins 1841: 96 grains, worn by a tenth (Newton)'],
  ['the weight of a penny in ginger', 1800, e, oz, 0.01, 'The cartwheel penny weighs an ounce'],
  ['the weight of a penny in ginger', 1820, e, lb / 24, 0.01, 'De Morgan: 10 2/3 drams'],
  ['a pennyworth of pepper', 1532, e, lb / 20, 0.001, 'Calais provisions 1532: 40 lb for 66 s 8 d'],
  ['a groatsworth of pepper', 1532, e, lb / 5, 0.001, 'Calais provisions 1532: 40 lb for 66 s 8 d'],
  ['a pennyworth of saffron', 1532, e, lb / 192, 0.001, 'Calais provisions 1532: 4 lb for 64 s'],
  ['a pennyworth of saffron', 1532, e, oz / 19.3, 'inside', `${clark}: 19.3 d the ounce in 1532`],
  ['a pennyworth of cloves', 1532, e, lb / 60, 0.001, 'Calais provisions 1532: 80 lb for £20'],
  ['a pennyworth of ginger', 1675, e, 33.2, 0.001, clark],
  ['a pennyworth of sugar', 1725, e, 66, 0.001, clark],
  ['a pennyworth of currants', 1625, e, 99, 0.001, clark],
  ['a pennyworth of butter', 1775, e, 67, 0.001, clark],
  ['a pennyworth of suet', 1825, e, 60, 0.001, clark],
  ['a pennyworth of flour', 1675, e, lb / 1.83, 0.001, clark],
]

const loaves: readonly Row[] = [
  ['a penny white loaf', 1668, 'london', (20 / 3) * 31.1034768, 'inside', 'Bill of Mortality, 22-29 Dec 1668'],
  ['a penny white loaf', 1701, 'london', 7.7 * 31.1034768, 'inside', 'Bill of Mortality, 25 March 1701'],
  ['a manchet', 1580, e, 6 * oz, 'inside', 'Harrison 1577-87'],
  ['two penny rolls', 1845, e, 105, 0.03, `${acton}: their crumb beside two ounces`],
  ['a quartern loaf', 1780, 'london', 69.5 * oz, 0.001, '3 Geo. III c. 11'],
  ['a half-quartern loaf', 1780, e, 34.75 * oz, 0.001, '3 Geo. III c. 11'],
  ['a peck loaf', 1780, 'london', 278 * oz, 0.001, '31 Geo. II c. 29'],
  ['a quartern loaf', 1860, e, 4 * lb, 0.001, 'Nicholson 1912'],
  ['a pennyworth of bread', 1830, e, lb / 1.98, 0.15, clark],
]

const shapes: readonly Row[] = [
  ['the thickness of a shilling', 1850, e, 1.4, 'inside', '5.655 g of sterling silver on 23.6 mm'],
  ['the thickness of a penny', 1846, e, 2.5, 'inside', '18.9 g of copper on 34 mm'],
  ['the thickness of a penny', 1870, e, 1.5, 'inside', '9.45 g of bronze on 30.9 mm'],
  ['the thickness of a crown piece', 1846, e, 2.6, 'inside', '28.28 g of sterling silver on 38.6 mm'],
  ['half an inch thick', 1861, e, 12.7, 0.001, 'Yard of 1959'],
  ['a foot long', 1736, e, 304.8, 0.001, 'Yard of 1959'],
]

const times: readonly Row[] = [
  ['a mileway', 1450, e, 1200, 0.001, 'Chaucer, Astrolabe I.16: three to the hour'],
  ['half a mileway', 1440, e, 600, 0.001, 'Chaucer, Astrolabe I.16'],
  ['a Miserere while', 1669, e, 150, 'inside', 'Digby 1669: said very leisurely'],
  ['a Paternoster while', 1500, e, 25, 'inside', 'One modern reader: about twenty seconds'],
]

holdRows('spoons, cups and glasses', 'ml', fluid)
holdRows('dry spoons, quarts, hands and pieces', 'g', dry)
holdRows('eggs', 'g', eggs)
holdRows('coins and what they bought', 'g', coins)
holdRows('loaves', 'g', loaves)
holdRows('thicknesses', 'mm', shapes)
holdRows('whiles', 's', times)
holdRows('thickness of batters', '1', [['the thickness of good cream', 1830, e, 100 / 28, 0.01, `${kitchiner}: 28 g of flour to 100 ml`]])

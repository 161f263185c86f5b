/** Gallons, their parts and casks, by statutes and the books that restate them. */
import { ale, corn, cubicInch, holdRows, imperial, irish, type Row, scots, wine } from './acceptance.js'

const e = 'england'
const nicholson = 'Nicholson 1912, ch. VIII'
const wineAct = '5 Anne c. 27 s. 17'
const aleAct = '11 Will. III c. 15'
const cornAct = '8 & 9 Will. III c. 22'
const act24 = '5 Geo. IV c. 74'
const henry = '23 Hen. VIII c. 4'
const william = '1 Will. & Mary c. 24 s. 4'
const bryce = 'Bryce c. 1750, in Chambers'

const parts: readonly Row[] = [
  ['a gill of cream', 1750, e, wine / 32, 0.001, wineAct],
  ['half a gill of cream', 1750, e, wine / 64, 0.001, wineAct],
  ['half a pint of cream', 1700, e, wine / 16, 0.001, wineAct],
  ['a pynte of creame', 1600, e, wine / 8, 0.001, wineAct],
  ['a quarte of claret wyne', 1600, e, wine / 4, 0.001, wineAct],
  ['a potell of wyn', 1600, e, wine / 2, 0.001, nicholson],
  ['a wine gallon of sack', 1660, e, wine, 0.001, wineAct],
  ['a galon of wyne', 1600, e, wine, 0.001, wineAct],
  ['a gallon of wine', 1450, e, 224 * cubicInch, 0.03, 'Wybard 1650: the Guildhall gallon'],
  ['a pottle of ale', 1700, e, ale / 2, 0.001, aleAct],
  ['an ale pint of new milk', 1658, e, ale / 8, 0.001, 'The Compleat Cook 1658'],
  ['a pint of milk', 1750, e, ale / 8, 0.001, 'Arithmetic tables of c. 1800: milk by ale measure'],
  ['a pint of milk', 1750, e, wine / 8, 'among', 'Digby 1669: wine quarts of strokings'],
  ['a Winchester pint of milk', 1807, e, corn / 8, 0.001, 'Rundell 1807'],
  ['a pint of barm', 1660, e, wine / 8, 0.001, 'Digby 1669, Woolley 1672: ale yeast by the wine pint'],
  ['eight wine quarts of flour', 1669, e, wine * 2, 0.001, 'Digby 1669'],
  ['a pint of peas', 1710, e, corn / 8, 0.001, cornAct],
  ['a pottle of peas', 1700, e, corn / 2, 0.001, cornAct],
  ['half a pek of flower', 1700, e, corn, 0.001, cornAct],
  ['a Winchester bushel of wheat', 1750, e, corn * 8, 0.001, cornAct],
  ['a boschel of whete', 1600, e, corn * 8, 0.01, 'Standard bushel of 1496, 2144.8 in3'],
  ['a tuffet of oats', 1750, e, corn * 4, 0.001, nicholson],
  ['a strike of malt', 1750, e, corn * 16, 'among', nicholson],
  ['a coomb of wheat', 1750, e, corn * 32, 0.001, nicholson],
  ['a quarter of wheat', 1750, e, corn * 64, 0.001, nicholson],
  ['a pint of cream', 1845, e, imperial / 8, 0.001, 'Acton 1845, by her pint of rice'],
  ['a pint of milk', 1861, e, wine / 8, 'among', 'Beeton 1861, para. 77: a wine pint of sixteen ounces'],
  ['a pottle of milk', 1890, e, imperial / 2, 0.001, act24],
  ['a peck of flour', 1880, e, imperial * 2, 0.001, act24],
  ['a bushel of oats', 1880, e, imperial * 8, 0.001, act24],
  ['a quarter of wheat', 1880, e, imperial * 64, 0.001, act24],
  ['a heaped bushel of apples', 1830, e, 2815.49 * cubicInch, 0.001, `${act24}: a cone on 19.5 inches`],
  ['a bushel of apples', 1830, e, 2815.49 * cubicInch, 'among', `${act24}: fruit is heaped`],
  ['a bushel of apples', 1750, e, corn * 10, 'among', 'Nicholson 1912, ch. IX: a quarter more than struck'],
  ['a bushel of apples', 1890, e, imperial * 8, 0.001, '5 & 6 Will. IV c. 63: no heaped measure'],
  ['a quartern of gin', 1750, 'london', wine / 32, 0.001, nicholson],
  ['a noggin of rum', 1750, 'london', wine / 32, 0.001, nicholson],
  ['a gill of ale', 1890, 'yorkshire', imperial / 16, 0.001, `${nicholson}: half a pint in the North`],
  ['a gill of milk', 1890, 'lancashire', imperial / 16, 0.001, 'Martin 1904, p. 60'],
  ['a gill of gin', 1890, 'london', imperial / 32, 0.001, act24],
  ['a jill of cream', 1764, 'leeds', wine / 16, 'among', `${nicholson}: half a pint in the North`],
  ['a fluid ounce of rose-water', 1820, e, wine / 128, 0.001, 'Kitchiner 1830: sixteen to the wine pint'],
  ['sixty minims of vinegar', 1820, e, wine / 1024, 0.001, 'Pereira 1873, p. 68'],
]

const casks: readonly Row[] = [
  ['a ferkyn of ale', 1550, e, ale * 8, 0.001, henry],
  ['a kylderkyn of bere', 1560, e, ale * 18, 0.001, henry],
  ['a kilderkin of ale', 1600, e, ale * 16, 0.001, henry],
  ['a barell of bere', 1560, e, ale * 36, 0.001, henry],
  ['a firkin of beer', 1700, 'york', ale * 8.5, 0.001, william],
  ['a kilderkin of beer', 1700, 'norwich', ale * 17, 0.001, william],
  ['a barrel of ale', 1750, 'york', ale * 34, 0.001, william],
  ['a barrel of ale', 1750, 'london', ale * 32, 0.001, william],
  ['a hogshead of beer', 1700, 'york', ale * 51, 0.001, william],
  ['a firkin of beer', 1810, e, ale * 9, 0.001, '43 Geo. III c. 69 s. 12'],
  ['a hogshead of ale', 1650, e, ale * 48, 0.001, 'Jefferson 1790'],
  ['a hogshead of beer', 1650, e, ale * 54, 0.001, 'Jefferson 1790'],
  ['a pin of beer', 1880, e, imperial * 4.5, 0.001, act24],
  ['a kilderkin of beer', 1880, e, imperial * 18, 0.001, act24],
  ['a hogshead of beer', 1880, e, imperial * 54, 0.001, act24],
  ['a rundlet of wine', 1600, e, wine * 18, 0.001, '1 Ric. III c. 13'],
  ['a rundlet of sack', 1485, e, wine * 18.5, 'among', '1 Ric. III c. 13'],
  ['an hogshed of wyn', 1500, e, wine * 63, 0.001, '2 Hen. VI c. 11'],
  ['a barrel of cider', 1750, e, wine * 31.5, 0.001, '2 Hen. VI c. 11'],
  ['a tierce of claret', 1750, e, wine * 42, 0.001, '1 Ric. III c. 13'],
  ['a puncheon of rum', 1750, e, wine * 84, 0.001, '2 Hen. VI c. 14'],
  ['a butt of malmsey', 1478, e, wine * 126, 0.001, '2 Hen. VI c. 11'],
  ['a butt of beer', 1750, e, ale * 108, 0.001, 'Jefferson 1790'],
  ['a tun of wine', 1600, e, wine * 252, 0.001, '2 Hen. VI c. 11'],
  ['a pipe of wine', 1850, e, imperial * 105, 0.001, act24],
  ['a firkin of soap', 1600, e, ale * 8, 0.001, henry],
  ['a firkin of eels', 1450, e, wine * 7.5, 0.001, '2 Hen. VI c. 14'],
  ['a firkin of eels', 1500, e, ale * 10.5, 0.001, '22 Edw. IV c. 2'],
  ['a barrel of herrings', 1600, e, wine * 32, 0.01, '13 Eliz. c. 11, by Jefferson 1790'],
  ['a bottle of wine', 1750, e, wine / 5, 0.001, nicholson],
  ['a bottle of port', 1860, e, imperial / 6, 0.001, nicholson],
  ['a reputed quart of porter', 1860, e, imperial / 6, 0.001, nicholson],
  ['a bottle of brandy', 1857, 'philadelphia', (wine * 3) / 16, 0.001, 'Leslie 1857: a pint and a half'],
]

const abroad: readonly Row[] = [
  ['a Scots pint of milk', 1760, 'edinburgh', scots, 0.001, bryce],
  ['a Scotch pint of ale', 1750, e, scots, 0.001, bryce],
  ['a choppin of ale', 1730, 'scotland', scots / 2, 0.001, bryce],
  ['half a mutchkin of brandy', 1750, 'edinburgh', scots / 8, 0.001, bryce],
  ['a gill of whisky', 1750, 'edinburgh', scots / 16, 0.001, bryce],
  ['an English pint of milk', 1760, 'edinburgh', wine / 8, 0.001, wineAct],
  ['a pint of cream', 1550, 'scotland', 1270, 'among', 'Nicholson 1912, ch. XI: 41 ounces of water'],
  ['a forpet of wheat', 1750, 'scotland', 137.333 * cubicInch, 0.001, 'Cleland 1828'],
  ['a firlot of wheat', 1700, 'scotland', 2197.335 * cubicInch, 0.001, bryce],
  ['a firlot of malt', 1700, 'scotland', 3205.524 * cubicInch, 0.001, bryce],
  ['an Irish pint of milk', 1780, 'dublin', irish / 8, 0.001, '9 Geo. II c. 9 (Ir.)'],
  ['a quart of ale', 1750, 'dublin', irish / 4, 0.001, '9 Geo. II c. 9 (Ir.)'],
  ['a quart of flour', 1857, 'philadelphia', wine / 4, 0.001, 'Leslie 1857'],
]

holdRows('parts of the gallon', 'ml', parts)
holdRows('casks and bottles', 'ml', casks)
holdRows('Scots, Irish and American measures', 'ml', abroad)

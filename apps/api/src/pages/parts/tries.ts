/** Questions to try, from the kitchen of Saltmarsh Hall; each is answered in the tests. */
export const measureTries: readonly Readonly<{ phrase: string; year: string; place?: string }>[] = [
  { phrase: 'a pottle of cream', year: '1690', place: 'london' },
  { phrase: 'iij pyntes of good ale', year: '1590' },
  { phrase: 'half a peck of fine flour', year: '1750' },
  { phrase: 'xij eggs, leaving out four of the whites', year: '1690' },
  { phrase: 'a penny white loaf', year: '1690', place: 'london' },
  { phrase: 'butter the bigness of a walnut', year: '1750' },
]

export const heatTries: readonly Readonly<{ phrase: string; year: string }>[] = [
  { phrase: 'a slack oven', year: '1690' },
  { phrase: 'a quick oven', year: '1750' },
  { phrase: 'as hot as for manchet', year: '1615' },
  { phrase: 'after the bread is drawn', year: '1800' },
]

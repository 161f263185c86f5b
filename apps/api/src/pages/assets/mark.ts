/** The mark of the house: a baluster measure of pewter in outline, our own drawing. */
export const markShape: string =
  'M11 6H29M12 6C12 12 15 14 14 19C13 25 8 29 9 37C9.500 40 12 42 13 43H27C28 42 30.500 40 31 37C32 29 27 25 26 19C25 14 28 12 28 6M27.500 11C34 10 38 15 36 22C35 26 32.500 28 29.800 28.500M13.800 22H26.200M11 33H29M11.500 46H28.500'

/** The mark as a picture of its own, for the tab of a browser. */
export const markPicture: string = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 44 52"><rect width="44" height="52" fill="#fbf9f3"/><path d="${markShape}" fill="none" stroke="#20252d" stroke-width="3" stroke-linecap="round" stroke-linejoin="round"/></svg>`

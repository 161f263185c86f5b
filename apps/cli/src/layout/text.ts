/** Characters that would move the cursor or change the screen; nothing that a book or a caller wrote may do that. */
const control = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu
const blank = /[^\S\u00a0]+/gu
/** What is torn apart badly at the end of a line: a figure and its unit, a place in a book. */
const bonds =
  /(?<=\d) (?=(?:k?g|ml|oz|lb|[sd]|°[CF])(?!\p{L}))|(?<=\b(?:p|pp|s|c|ch|vol|no|par)\.) (?=[\dIVXL])|(?<=gas) (?=mark)|(?<=mark) (?=[\d¼½])/gu
const bond = '\u00a0'

/** Text on one line, with every character that is not to be printed shown as a sign for it. */
export function clean(text: string): string {
  return text.replace(blank, ' ').replace(control, '\ufffd').trim()
}

/** How many columns a text takes: marks that are set over a letter take none. */
export function widthOf(text: string): number {
  return [...text.replace(/\p{M}/gu, '')].length
}

export function padEnd(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - widthOf(text)))
}

export function padStart(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - widthOf(text))) + text
}

/** A word that is longer than a line, cut into lines. */
function cut(word: string, width: number): readonly string[] {
  const letters = [...word]
  return Array.from({ length: Math.ceil(letters.length / width) }, (_, i) => letters.slice(i * width, (i + 1) * width).join(''))
}

/** Sets a text in lines of a width. A text without words is no line. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = []
  const room = Math.max(1, width)
  let line = ''
  const words = clean(text).replace(bonds, bond).split(' ')
  for (const word of words.flatMap((one) => (widthOf(one) > room ? cut(one, room) : [one]))) {
    if (line !== '' && widthOf(line) + 1 + widthOf(word) > room) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return (line === '' ? lines : [...lines, line]).map((one) => one.replaceAll(bond, ' '))
}

/** Sets a text behind a head that stands in the margin: a number, a bullet, blanks. */
export function hang(head: string, text: string, width: number): readonly string[] {
  const margin = ' '.repeat(widthOf(head))
  return wrap(text, width - widthOf(head)).map((line, i) => `${i === 0 ? head : margin}${line}`)
}

/** Ways to write a date that are not EDTF, and what they are in it (Extended Date/Time Format, level 1). */
const ways: readonly (readonly [RegExp, (...found: string[]) => string])[] = [
  // c. 1690, ca 1690, circa 1690, about 1690
  [/^(?:c|ca|circa|about|around)\.?\s*(\d{4})$/i, (year) => `${year}~`],
  // 1690s, the 1690's
  [/^(?:the )?(\d{3})0['’]?s$/i, (decade) => `${decade}X`],
  // 1690-1700, 1690–1700, 1690 to 1700
  [/^(\d{4})\s*(?:-|–|—|to|until)\s*(\d{4})$/i, (from, to) => `${from}/${to}`],
  // 17th century, the 17th c.
  [/^(?:the )?(\d{2})th\s*(?:c|cent|century)\.?$/i, (century) => `${Number(century) - 1}XX`],
  // Anno 1690, A.D. 1690, 1690 AD
  [/^(?:anno(?: domini)?|a\.?d\.?)\s*(\d{4})$/i, (year) => year!],
  [/^(\d{4})\s*(?:a\.?d\.?|c\.?e\.?)$/i, (year) => year!],
]

/**
 * A date as the library reads it, where a reader wrote it as books do; else what was written.
 *
 * @example asDate('c. 1690')   // '1690~'
 */
export function asDate(text: string): string {
  for (const [way, write] of ways) {
    const found = way.exec(text)
    if (found) return write(...found.slice(1))
  }
  return text
}

const ordinals: Readonly<Record<string, string>> = { one: 'st', two: 'nd', few: 'rd', other: 'th' }
const english = new Intl.PluralRules('en', { type: 'ordinal' })
const ordinal = (number: number): string => `${number}${ordinals[english.select(number)]}`

/** Marks of EDTF behind a year, as people say them. */
const marks: Readonly<Record<string, string>> = { '~': 'about', '?': 'perhaps', '%': 'perhaps about' }

/** A year as people say it: `about 1690`, `the 1690s`, `the 17th century`, `1650 to 1700`. */
export function sayYear(year: number | string): string {
  const text = String(year)
  const marked = /^(\d{4})([~?%])$/.exec(text)
  if (marked) return `${marks[marked[2]!]} ${marked[1]}`
  if (/^\d{3}X$/.test(text)) return `the ${text.slice(0, 3)}0s`
  if (/^\d{2}XX$/.test(text)) return `the ${ordinal(Number(text.slice(0, 2)) + 1)} century`
  return text.replace('/', ' to ')
}

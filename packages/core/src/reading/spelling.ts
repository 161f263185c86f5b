/**
 * Spelling before the dictionaries: u stands for v and v for u, i for j, y for i; letters double and undouble; a final e comes and goes.
 * Words are compared by a key in which those differences are gone. Rules, not lists: a list can only know the spellings someone has met.
 */

const ligatures: Readonly<Record<string, string>> = {
  ſ: 's',
  þ: 'th',
  ð: 'th',
  ȝ: 'y',
  æ: 'ae',
  œ: 'oe',
  ß: 'ss',
  ꝑ: 'per',
  ꝓ: 'pro',
  ﬁ: 'fi',
  ﬂ: 'fl',
  ﬀ: 'ff',
  ﬆ: 'st',
  ﬅ: 'st',
}

const tilde = '\u0303'
const macron = '\u0304'

const isPlain = /^[a-z]+$/

/** Lower case, without ligatures, accents and apostrophes; `boyl'd` becomes `boyled`, `hen's` becomes `hen`. */
export function fold(raw: string): string {
  if (isPlain.test(raw) && !raw.includes('vv')) return raw
  // Printers short of a w set two v.
  const lower = raw.toLowerCase().replaceAll('vv', 'w')
  if (isPlain.test(lower)) return lower
  let folded = ''
  // Superscripts fall to the line in this form: yᵉ is ye, and so is y^e.
  for (const letter of lower.normalize('NFKD')) {
    if ('^{}:'.includes(letter)) continue
    if (letter < '\u0080') folded += letter
    else if (letter === '’') folded += "'"
    // Many printed yogh with the sign of the drachm, which alone stands for that.
    else if (letter === 'ʒ') folded += raw.length > 1 ? 'y' : letter
    else if (letter < '\u0300' || letter > '\u036f') folded += ligatures[letter] ?? letter
  }
  if (!folded.includes("'")) return folded
  return folded
    .replace(/^'+|'+$/, '')
    .replace(/'s$/, '')
    .replace(/'d$/, 'ed')
    .replaceAll("'", '')
}

/** The readings of a word with a stroke over a vowel, which stood for an n or an m left out: `spōful`. */
export function unstroked(raw: string): readonly string[] {
  const spread = raw.normalize('NFD')
  if (!spread.includes(tilde) && !spread.includes(macron)) return []
  return ['n', 'm'].map((nasal) => fold(spread.replaceAll(tilde, nasal).replaceAll(macron, nasal)))
}

const isVowel = (letter: string | undefined): boolean => letter !== undefined && 'aeiou'.includes(letter)

/** One letter for each sound that printers wrote in several ways. */
function levelLetters(word: string): string {
  let levelled = ''
  for (let i = 0; i < word.length; i++) {
    const letter = word[i]!
    const next = word[i + 1]
    if (letter === 'v') levelled += 'u'
    else if (letter === 'y' || letter === 'j') levelled += 'i'
    else if (letter === 'w' && i > 0) levelled += 'u'
    else if (letter === 'c' && next === 'k') continue
    else if (letter === 'c') levelled += next !== undefined && 'eiy'.includes(next) ? 's' : next === 'h' ? 'c' : 'k'
    else if (letter === 'q') levelled += 'k'
    else if (letter === 'z') levelled += 's'
    else if (letter === 'p' && next === 'h') levelled += 'f'
    else if (letter === 'h' && word[i - 1] === 'p') continue
    else levelled += letter
  }
  return levelled
}

/** One vowel for each run that stood for one sound: `ou ow oo oa` are o, `ee ea ei ey` are e, `ae ai ay` are a. */
function levelVowels(word: string): string {
  let levelled = ''
  for (let i = 0; i < word.length; i++) {
    const letter = word[i]!
    if (letter === word[i - 1]) continue
    const before = levelled[levelled.length - 1]
    if (before === 'o' && (letter === 'u' || letter === 'a')) continue
    if (before === 'e' && (letter === 'a' || letter === 'i')) continue
    if (before === 'a' && (letter === 'e' || letter === 'i')) continue
    levelled += letter
  }
  return levelled
}

/**
 * The key under which spellings of one word meet.
 *
 * @example spellingKey('suger') === spellingKey('sugre')   // true
 * @example spellingKey('pownd') === spellingKey('pound')   // true
 */
export function spellingKey(folded: string): string {
  let key = levelVowels(levelLetters(folded))
  if (key.length > 3 && key.endsWith('e')) key = key.slice(0, -1)
  const last = key[key.length - 1]!
  if (key.length < 5 || !'lrnm'.includes(last)) return key
  if (!isVowel(key[key.length - 2])) return key
  const stem = key.slice(0, -2)
  return [...stem].some(isVowel) ? stem + last : key
}

/** The consonants of a long word behind its first letter: the last resort for `safiron` and `cinnamum`. Short words have too few to go by. */
export function consonantFrame(key: string): string | null {
  let frame = key[0]!
  for (let i = 1; i < key.length; i++) if (!isVowel(key[i])) frame += key[i]
  return key.length >= 7 && frame.length >= 5 ? frame : null
}

/** The singulars that a plural may come from, the likeliest first. */
export function singulars(folded: string): readonly string[] {
  if (folded.length < 4) return folded.endsWith('s') && !folded.endsWith('ss') ? [folded.slice(0, -1)] : []
  if (folded.endsWith('ies')) return [`${folded.slice(0, -3)}y`, folded.slice(0, -1), folded.slice(0, -2)]
  if (folded.endsWith('ves')) return [`${folded.slice(0, -3)}f`, `${folded.slice(0, -3)}fe`, folded.slice(0, -1), folded.slice(0, -2)]
  if (folded.endsWith('es')) return [folded.slice(0, -1), folded.slice(0, -2)]
  if (folded.endsWith('ys') || folded.endsWith('is')) return [folded.slice(0, -2), folded.slice(0, -1)]
  return folded.endsWith('s') && !folded.endsWith('ss') ? [folded.slice(0, -1)] : []
}

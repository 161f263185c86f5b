/** The files of data/ as they are read, and what is wrong with them as files, told by the line. */
import { readdirSync, readFileSync } from 'node:fs'
import { ParseErrorCode, parse, printParseErrorCode } from 'jsonc-parser'

/** The mistakes that people make in JSON, by the parser's name for them. */
const words = {
  [ParseErrorCode.CommaExpected]: 'a comma is missing before this: rows, and the fields of a row, are divided by commas',
  [ParseErrorCode.ColonExpected]: 'a colon is missing between a field and what it says',
  [ParseErrorCode.CloseBraceExpected]: 'the } at the end of a row is missing',
  [ParseErrorCode.CloseBracketExpected]: 'the ] at the end of a list is missing',
  [ParseErrorCode.PropertyNameExpected]: 'the name of a field is missing: write it in quotation marks',
  [ParseErrorCode.ValueExpected]: 'what a field says, or an item of a list, is missing',
  [ParseErrorCode.UnexpectedEndOfString]: 'the quotation mark at the end of a text is missing',
  [ParseErrorCode.InvalidNumberFormat]: 'this is no number: write digits, with a point and not a comma',
  [ParseErrorCode.InvalidSymbol]: 'words stand in straight quotation marks ("), not in curly ones (“ ”) and not bare',
  [ParseErrorCode.InvalidCharacter]: 'a text must end on the line where it begins: write \\n for a line end inside it',
  [ParseErrorCode.InvalidEscapeCharacter]: 'a \\ begins a sign such as \\n: write \\\\ for a \\ of its own',
  [ParseErrorCode.InvalidCommentToken]: 'JSON has no comments: write a "note"',
  [ParseErrorCode.EndOfFileExpected]: 'the list of rows ends before this: is there a ] too many above?',
}

const rowNotEnded = 'the } at the end of the row before this is missing'
const commaTooMany = 'the comma before this has nothing behind it: take it out'

/** The row that a place in the text belongs to, or follows: its id begins a line. */
function rowBefore(text) {
  const id = [...text.matchAll(/^(?: {2}\{ | {4})"id": "([^"]*)"/gm)].at(-1)?.[1]
  return id === undefined ? '' : `, in the row "${id}" or behind it`
}

function sayError({ error, offset }, text) {
  const before = text.slice(0, offset)
  const after = text.slice(offset)
  const found = /,\s*$/.test(before) && /^[\]}]/.test(after) ? commaTooMany : words[error]
  const said = error === ParseErrorCode.PropertyNameExpected && after.startsWith('{') ? rowNotEnded : found
  return `line ${before.split('\n').length}${rowBefore(before)}: ${said ?? printParseErrorCode(error)}`
}

/** The rows of a file, or what is wrong with it: the first mistake, since the others follow from it as often as not. */
function readRows(text) {
  if (text.trim() === '') return { said: 'the file is empty: a table is a list of rows, from [ to ]' }
  const errors = []
  const rows = parse(text, errors, { disallowComments: true, allowTrailingComma: false })
  if (errors.length > 0) return { said: sayError(errors[0], text) }
  return Array.isArray(rows) ? { rows } : { said: 'it is not a list of rows: begin it with [ and end it with ]' }
}

/** Files that describe the tables and are none. */
const others = ['package', 'datapackage']

/**
 * The tables as they stand in a folder.
 *
 * @param {URL} folder
 * @param {readonly string[]} names the tables that are known
 * @returns {{tables: Record<string, object[]>, faults: {table: string, row: string, said: string}[]}}
 */
export function readTables(folder, names) {
  const present = readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -'.json'.length))
  const missing = names.filter((name) => !present.includes(name))
  const strange = present.filter((name) => !names.includes(name) && !others.includes(name))
  const faults = [
    ...missing.map((name) => [name, 'there is no such file, but data/tools/tables.mjs names the table']),
    ...strange.map((name) => [
      name,
      'nobody knows this table: add it to data/tools/tables.mjs, and a type of its rows to packages/core/src/tables/schema/',
    ]),
  ]
  const tables = {}
  for (const name of names.filter((one) => !missing.includes(one))) {
    const { rows, said } = readRows(readFileSync(new URL(`${name}.json`, folder), 'utf8'))
    if (said) faults.push([name, said])
    else tables[name] = rows
  }
  return { tables, faults: faults.map(([table, said]) => ({ table, row: '', said })) }
}

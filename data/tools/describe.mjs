// Writes datapackage.json, the description of the tables as a Frictionless Data Package (https://datapackage.org), from the row types and
// their comments in packages/core/src/tables/schema/: `node data/tools/describe.mjs`. Run it after a table or a field is added.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import ts from 'typescript'
import { tables } from './tables.mjs'

const data = new URL('../', import.meta.url)
const schema = new URL('../../packages/core/src/tables/schema/', import.meta.url)

const types = readdirSync(schema)
  .map((file) => ts.createSourceFile(file, readFileSync(new URL(file, schema), 'utf8'), ts.ScriptTarget.Latest, true))
  .flatMap(({ statements }) => statements)
const interfaces = new Map(types.filter(ts.isInterfaceDeclaration).map((node) => [node.name.text, node]))
const aliases = new Map(types.filter(ts.isTypeAliasDeclaration).map((node) => [node.name.text, node.type]))

/** What fields of the same name mean in every table, where the type has no comment on them. */
const common = {
  id: 'The name of the row, unlike any other in its table.',
  label: 'What the row is about, in the words an answer shows.',
  source: 'Who says so: ids of sources.json, each with the place in the source.',
  grade: 'How well it is attested: statute, standard, measured, handbook, scholarship, practice or judgement.',
  checked: 'read: seen in that source or a transcription of it. memory: recalled, not looked up. none: nothing to look up.',
  note: 'What a reader should know besides.',
  years: 'First and last year, both included.',
  place: 'A place of places.json; none means everywhere.',
}

const commentOf = (node) => {
  // The nearest: above the first type of a file stands the comment on the file.
  const comment = ts.getJSDocCommentsAndTags(node).at(-1)
  return comment ? ts.getTextOfJSDocComment(comment.comment)?.replace(/\s+/g, ' ') : undefined
}

function fieldType(type) {
  const inner = ts.isTypeOperatorNode(type) ? type.type : type
  if (ts.isArrayTypeNode(inner) || ts.isTupleTypeNode(inner)) return 'array'
  if (ts.isUnionTypeNode(inner) || ts.isLiteralTypeNode(inner)) return 'string'
  if (inner.kind === ts.SyntaxKind.NumberKeyword) return 'number'
  if (inner.kind === ts.SyntaxKind.BooleanKeyword) return 'boolean'
  if (inner.kind === ts.SyntaxKind.StringKeyword) return 'string'
  const named = ts.isTypeReferenceNode(inner) ? aliases.get(inner.typeName.getText()) : undefined
  return named ? fieldType(named) : 'object'
}

function fieldsOf(typeName) {
  const node = interfaces.get(typeName)
  if (!node) throw new Error(`packages/core/src/tables/schema/ has no interface ${typeName}; data/tools/tables.mjs names it`)
  const inherited = (node.heritageClauses ?? []).flatMap(({ types }) => types.flatMap((one) => fieldsOf(one.expression.getText())))
  const own = node.members.filter(ts.isPropertySignature).map((member) => {
    const name = member.name.text
    const description = commentOf(member) ?? common[name]
    return {
      name,
      type: fieldType(member.type),
      ...(description ? { description } : {}),
      ...(member.questionToken ? {} : { constraints: { required: true } }),
    }
  })
  return [...own, ...inherited]
}

const inPlaces = [{ fields: ['place'], reference: { resource: 'places', fields: ['id'] } }]

const schemaOf = (fields) => ({
  fields,
  primaryKey: ['id'],
  ...(fields.some(({ name }) => name === 'place') ? { foreignKeys: inPlaces } : {}),
})

const { version, description } = JSON.parse(readFileSync(new URL('package.json', data), 'utf8'))
const resources = Object.entries(tables).map(([name, type]) => ({
  name,
  path: `${name}.json`,
  format: 'json',
  mediatype: 'application/json',
  encoding: 'utf-8',
  ...(commentOf(interfaces.get(type)) ? { description: commentOf(interfaces.get(type)) } : {}),
  schema: schemaOf(fieldsOf(type)),
}))
const licence = { name: 'CC0-1.0', path: 'https://creativecommons.org/publicdomain/zero/1.0/', title: 'Creative Commons CC0 1.0' }
const head = {
  $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
  name: 'pottle-data',
  title: description,
  version,
  licenses: [licence],
  contributors: [{ title: 'The Pottle contributors', roles: ['creator'] }],
}
writeFileSync(new URL('datapackage.json', data), `${JSON.stringify({ ...head, resources }, null, 2)}\n`)

/**
 * The types of the rows, from packages/core/src/tables/schema/, as JSON Schema: what the compiler holds the tables to, for tools that say it in
 * plain words. It knows the few forms of types that rows are written in, and refuses others.
 */
import { readdirSync, readFileSync } from 'node:fs'
import ts from 'typescript'

const folder = new URL('../../packages/core/src/tables/schema/', import.meta.url)

const nodes = readdirSync(folder)
  .map((file) => ts.createSourceFile(file, readFileSync(new URL(file, folder), 'utf8'), ts.ScriptTarget.Latest, true))
  .flatMap(({ statements }) => statements)
const interfaces = new Map(nodes.filter(ts.isInterfaceDeclaration).map((node) => [node.name.text, node]))
const aliases = new Map(nodes.filter(ts.isTypeAliasDeclaration).map((node) => [node.name.text, node.type]))

function commentOf(node) {
  // The nearest: above the first type of a file stands the comment on the file.
  const comment = ts.getJSDocCommentsAndTags(node).at(-1)
  return comment ? ts.getTextOfJSDocComment(comment.comment)?.replace(/\s+/g, ' ') : undefined
}

const described = (schema, node) => (commentOf(node) ? { ...schema, description: commentOf(node) } : schema)

function fieldOf(member) {
  const schema = schemaFor(member.type)
  // A list that may be left out is left out where it would be empty.
  const wanted = member.questionToken && schema.type === 'array' && schema.minItems === undefined ? { ...schema, minItems: 1 } : schema
  return [member.name.text, described(wanted, member)]
}

function objectOf(members, bases = []) {
  const own = members.filter(ts.isPropertySignature)
  return join([
    {
      properties: Object.fromEntries(own.map(fieldOf)),
      required: own.filter(({ questionToken }) => !questionToken).map(({ name }) => name.text),
    },
    ...bases,
  ])
}

/** One object with the fields of several. */
const join = (parts) => ({
  type: 'object',
  properties: Object.assign({}, ...parts.map(({ properties }) => properties)),
  required: [...new Set(parts.flatMap(({ required }) => required))],
  additionalProperties: false,
})

function named(node) {
  const name = node.typeName.getText()
  const [first, second] = node.typeArguments ?? []
  if (name === 'Readonly') return schemaFor(first)
  if (name === 'Record') return { type: 'object', additionalProperties: schemaFor(second), minProperties: 1 }
  return aliases.has(name) ? schemaFor(aliases.get(name)) : schemaOf(name)
}

function schemaFor(node) {
  if (node.kind === ts.SyntaxKind.StringKeyword) return { type: 'string', minLength: 1 }
  if (node.kind === ts.SyntaxKind.NumberKeyword) return { type: 'number' }
  if (node.kind === ts.SyntaxKind.BooleanKeyword) return { type: 'boolean' }
  if (ts.isLiteralTypeNode(node)) return { type: 'string', enum: [node.literal.text] }
  if (ts.isUnionTypeNode(node)) return { type: 'string', enum: node.types.flatMap((one) => schemaFor(one).enum) }
  if (ts.isTypeOperatorNode(node) || ts.isParenthesizedTypeNode(node)) return schemaFor(node.type)
  if (ts.isArrayTypeNode(node)) return { type: 'array', items: schemaFor(node.elementType) }
  if (ts.isTupleTypeNode(node)) {
    const { length } = node.elements
    return { type: 'array', items: schemaFor(node.elements[0]), minItems: length, maxItems: length }
  }
  if (ts.isTypeLiteralNode(node)) return objectOf(node.members)
  if (ts.isIntersectionTypeNode(node)) return join(node.types.map(schemaFor))
  if (ts.isIndexedAccessTypeNode(node)) return schemaFor(node.objectType).properties[node.indexType.literal.text]
  if (ts.isTypeReferenceNode(node)) return named(node)
  throw new Error(`data/tools/types.mjs does not know this form of a type: ${node.getText()}`)
}

/**
 * A type of rows as JSON Schema, its own fields before those that it shares with others.
 *
 * @example schemaOf('PlaceRow').required   // ['id', 'label']
 */
export function schemaOf(name) {
  const node = interfaces.get(name)
  if (!node) throw new Error(`packages/core/src/tables/schema/ has no interface ${name}; data/tools/tables.mjs names it`)
  const bases = (node.heritageClauses ?? []).flatMap(({ types }) => types.map((one) => schemaOf(one.expression.getText())))
  return described(objectOf(node.members, bases), node)
}

/** The words that a type chooses among: `choicesOf('Grade')`. */
export const choicesOf = (name) => schemaFor(aliases.get(name)).enum

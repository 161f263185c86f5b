/**
 * A remark plugin: the measures, heats and loaves of a Markdown text in modern units, with a footnote that cites the sources.
 *
 * @module @pottle/remark
 */
export type { Defaults } from './asked.js'
export { default } from './plugin.js'

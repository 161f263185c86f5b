export type { Expression, Factor, Term, Unknown } from './expression.js'
export type { Shape } from './shapes.js'

/**
 * The shapes of the rows in `data/`, a file a kind of table. The tables themselves are JSON; `data/tools/bundle.mjs` turns each into a module
 * under `rows/` that the compiler checks against these types.
 */
export type * from './attested.js'
export type * from './bakes.js'
export type * from './bread.js'
export type * from './cautions.js'
export type * from './coins.js'
export type * from './eggs.js'
export type * from './goods.js'
export type * from './heats.js'
export type * from './kinds.js'
export type * from './measures.js'
export type * from './places.js'
export type * from './sheets.js'
export type * from './sizes.js'
export type * from './sources.js'
export type * from './vocabulary.js'

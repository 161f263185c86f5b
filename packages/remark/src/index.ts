export type { Defaults } from './asked.js'
export { default } from './plugin.js'

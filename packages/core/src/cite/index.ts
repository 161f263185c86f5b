export { citeBibtex, citeFull, citeShort, yearOf } from './cite.js'
export type { Step } from './step.js'

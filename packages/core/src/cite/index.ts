export { citeBibtex, citeFull, citeShort, yearOf } from './cite.js'

export { contentsPage } from './Contents.js'
export { heatPages } from './heats.js'
export { shelfPages } from './shelfPages.js'
export { sourcePages } from './sources.js'

export { heatPages } from './heats.js'
export { measurePages } from './measures.js'
export { sourcePages } from './sources.js'

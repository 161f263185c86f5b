export { loafPage } from './loaves.js'
export { ovenPage } from './oven.js'

export { type Ends, type Reach, reachOf, ruler } from './ruler.js'
export { type Column, table } from './table.js'
export { clean, hang, padEnd, padStart, widthOf, wrap } from './text.js'

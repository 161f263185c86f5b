export { describeRoutes } from './document.js'
export { tags } from './tags.js'

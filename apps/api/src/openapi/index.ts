export { describeRoutes } from './document.js'

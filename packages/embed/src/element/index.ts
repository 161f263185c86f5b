export { answeredEvent, defineElements, type Oracle, silentEvent } from './element.js'

/**
 * Custom elements that show a period measure, an oven heat or a priced loaf in modern units, with its band and its sources.
 *
 * Importing this module defines `<pottle-measure>`, `<pottle-heat>` and `<pottle-loaf>`. They ask the API at the origin that the script came
 * from; an `api` attribute, or `data-pottle-api` on an element around them, names another.
 *
 * @module @pottle/embed
 */
import { askApi } from './ask.js'
import { defineElements } from './element/index.js'

export { answeredEvent, silentEvent } from './element/index.js'

defineElements(askApi(new URL(import.meta.url).origin))

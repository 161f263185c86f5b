/**
 * The same elements, answered by the library in the page: no server is asked, and none learns what is read.
 *
 * @module @pottle/embed/offline
 */
import { defineElements } from '../element/index.js'
import { answerQuestion } from '../library/index.js'

export { answeredEvent, silentEvent } from '../element/index.js'

defineElements({ answer: async (question) => answerQuestion(question), address: () => undefined })

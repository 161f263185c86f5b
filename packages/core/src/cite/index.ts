export { citeBibtex, citeFull, citeShort } from './cite.js'
export { type AnswerStep, type Step, tellStep } from './step.js'

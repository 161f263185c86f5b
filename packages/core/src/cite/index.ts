export { citeBibtex, citeFull, citeShort, yearOf } from './cite.js'
export { type AnswerStep, type Step, tellStep } from './step.js'

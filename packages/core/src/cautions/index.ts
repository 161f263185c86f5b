export { type Caution, type CautionQuestion, cautionsFor } from './cautions-for.js'

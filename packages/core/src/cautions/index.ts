export { type Caution, type CautionQuestion, cautionsFor } from './cautionsFor.js'

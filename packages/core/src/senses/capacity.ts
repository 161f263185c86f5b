import type { SenseKind } from './sense.js'
import { kindByStandard } from './standard.js'

/** Pints, pottles, bushels, hogsheads: parts and multiples of a standard gallon or pint. */
export const capacity: SenseKind = kindByStandard('capacity')

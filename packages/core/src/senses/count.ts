import type { SenseKind } from './sense.js'
import { kindByStandard } from './standard.js'

/** Dozens, scores, long hundreds: so many of a thing. */
export const count: SenseKind = kindByStandard('count')

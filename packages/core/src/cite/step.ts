import type { Checked, Citation, Grade } from '../tables/index.js'

/** One factor of a derivation, with who says so. */
export interface Step {
  readonly text: string
  readonly factor: string
  readonly grade: Grade
  readonly checked: Checked
  readonly sources: readonly Citation[]
}

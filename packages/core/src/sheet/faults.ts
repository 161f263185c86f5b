import { type Fault, PottleError } from '../error.js'

/** Gathers what is wrong with a plan, so that a caller hears of all of it at once. */
export interface Faults {
  /** Runs a check; what it throws is kept, and undefined stands for its value. */
  check<Value>(run: () => Value): Value | undefined
  /** @throws PottleError `bad-option` where anything was wrong */
  settle(): void
}

export function gatherFaults(): Faults {
  const faults: Fault[] = []
  return {
    check: (run) => {
      try {
        return run()
      } catch (error) {
        if (!(error instanceof PottleError)) throw error
        faults.push(...error.faults)
        return undefined
      }
    },
    settle: () => {
      if (faults.length > 0) throw new PottleError('bad-option', faults)
    },
  }
}

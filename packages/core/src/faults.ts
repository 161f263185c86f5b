import { type Fault, PottleError } from './error.js'

/** Gathers what is wrong with what a caller gave, so that all of it is heard of at once. */
export interface Faults {
  /** Runs a check; what it throws is kept, and undefined stands for its value. */
  check<Value>(run: () => Value): Value | undefined
  /** @throws PottleError `bad-option` where anything was wrong */
  settle(): void
}

/** Nothing wrong so far. */
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

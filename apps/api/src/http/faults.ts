import { PottleError } from '@pottle/core'

/**
 * Runs a call of the library whose parameters have other names there than in the request, and names its faults as the request does.
 *
 * @example renameFaults({ phrase: 'start' }, () => brickOven({ start: 'a blue oven' }))
 */
export function renameFaults<Value>(names: Readonly<Record<string, string>>, run: () => Value): Value {
  try {
    return run()
  } catch (error) {
    if (!(error instanceof PottleError)) throw error
    const faults = error.faults.map(({ parameter, detail }) => ({ parameter: names[parameter] ?? parameter, detail }))
    throw new PottleError(error.code, faults, error.words)
  }
}

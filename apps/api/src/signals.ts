/** What a shell reports for a process that an interrupt ended: 128 and the signal's number. */
const interrupted = 130

/** The same press of a key may come twice: from the terminal, and from what has started us. */
const sameKey = 500

/**
 * Stops when the process is asked to, and once only, however often and by whomever it is asked: service managers and terminals tell a process
 * and all that it has begun, which tells them again.
 *
 * @param hurries whether a second interrupt, of someone who will not wait, ends the process at once
 */
export function stopWhenAsked(stop: () => void, hurries: boolean): void {
  let since: number | undefined
  const ask = (signal: NodeJS.Signals): void => {
    if (since === undefined) {
      since = performance.now()
      stop()
    } else if (hurries && signal === 'SIGINT' && performance.now() - since > sameKey) process.exit(interrupted)
  }
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, ask)
}

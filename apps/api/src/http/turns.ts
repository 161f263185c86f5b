/** So long may one request keep others waiting, in milliseconds. */
const turn = 10

/** Tells long work when to let others have their turn: what it returns, where it returns anything, is to be waited for. */
export function takeTurns(): () => Promise<void> | undefined {
  let since = performance.now()
  return () => {
    if (performance.now() - since < turn) return undefined
    return new Promise((resolve) =>
      setTimeout(() => {
        since = performance.now()
        resolve()
      }, 0),
    )
  }
}

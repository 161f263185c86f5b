/** Helpers that all benches share: rates by interleaved rounds, and medians. */

export const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]

/** Seconds that processors have spent on this process so far: unlike the clock, it goes on alone while the process is at work. */
function processorSeconds() {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

/**
 * Runs each contender in turn, round after round, so that a noisy machine disturbs all of them alike, and counts what its processor time brought:
 * what else the machine does meanwhile is no merit or fault of theirs.
 *
 * @param contenders name -> function that does the work once and returns how many items it did
 * @returns name -> items a second of processor time, the median of the rounds
 */
export function compare(contenders, { rounds = 9, seconds = 0.15 } = {}) {
  const rates = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]))
  for (let round = 0; round < rounds; round++) {
    for (const [name, work] of Object.entries(contenders)) {
      // What the others pushed out of memory is there again before the clock runs.
      work()
      const start = processorSeconds()
      let items = 0
      let spent = 0
      while (spent < seconds) {
        items += work()
        spent = processorSeconds() - start
      }
      rates[name].push(items / spent)
    }
  }
  return Object.fromEntries(Object.entries(rates).map(([name, all]) => [name, median(all)]))
}

export const perSecond = (rate) => `${Math.round(rate).toLocaleString('en-GB').padStart(12)} a second`

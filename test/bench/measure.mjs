/** Helpers that all benches share: timing by interleaved rounds, and medians. */

export const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]

/**
 * Runs each contender in turn, round after round, so that a noisy machine disturbs all of them alike.
 *
 * @param contenders name -> function that does the work once and returns how many items it did
 * @returns name -> items a second, the median of the rounds
 */
export function compare(contenders, { rounds = 7, milliseconds = 150 } = {}) {
  const rates = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]))
  for (const work of Object.values(contenders)) work()
  for (let round = 0; round < rounds; round++) {
    for (const [name, work] of Object.entries(contenders)) {
      const start = performance.now()
      let items = 0
      while (performance.now() - start < milliseconds) items += work()
      rates[name].push((items * 1000) / (performance.now() - start))
    }
  }
  return Object.fromEntries(Object.entries(rates).map(([name, all]) => [name, median(all)]))
}

export const perSecond = (rate) => `${Math.round(rate).toLocaleString('en-GB').padStart(12)} a second`

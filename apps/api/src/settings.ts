/** How the server is set up. */
export interface Settings {
  readonly host: string
  readonly port: number
  /** Whether each request is logged to the standard output as a line of JSON. */
  readonly log: boolean
  /** Requests a minute from one address; 0 for no limit. */
  readonly requestsPerMinute: number
}

type Environment = Readonly<Record<string, string | undefined>>

function wholeNumber(environment: Environment, name: string, fallback: number, most: number): number {
  const text = environment[name]
  if (text === undefined || text === '') return fallback
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN
  if (value <= most) return value
  throw new RangeError(`${name} is "${text}"; it must be a whole number from 0 to ${most}`)
}

function oneOf<Choice extends string>(environment: Environment, name: string, choices: readonly [Choice, ...Choice[]]): Choice {
  const text = environment[name] ?? choices[0]
  const chosen = choices.find((choice) => choice === text)
  if (chosen) return chosen
  throw new RangeError(`${name} is "${text}"; it must be ${choices.join(' or ')}`)
}

/**
 * Settings from the environment: `PORT` (3000), `HOST` (127.0.0.1), `LOG` (`off` or `json`), `REQUESTS_PER_MINUTE` (0: no limit).
 *
 * @throws RangeError that names the variable and what would be right
 */
export function settingsFrom(environment: Environment): Settings {
  return {
    host: environment.HOST || '127.0.0.1',
    port: wholeNumber(environment, 'PORT', 3000, 65_535),
    log: oneOf(environment, 'LOG', ['off', 'json']) === 'json',
    requestsPerMinute: wholeNumber(environment, 'REQUESTS_PER_MINUTE', 0, 1e6),
  }
}

/** How the server is set up. */
export interface Settings {
  readonly host: string
  readonly port: number
  /** How many processes serve; 0 for as many as the machine has cores. */
  readonly workers: number
  /** Whether each request is logged to the standard output as a line of JSON. */
  readonly log: boolean
  /** Requests a minute from one address, in each process; 0 for no limit. */
  readonly requestsPerMinute: number
  /** How many proxies stand before the server, each of which adds an address to X-Forwarded-For; 0 for none. */
  readonly proxies: number
  /** Seconds that a client may take for its headers, for a body that is read as a whole, or be silent in a stream. */
  readonly patience: number
  /** Seconds that a stop goes on taking requests, while balancers learn of it. */
  readonly stopDelay: number
  /** Seconds after which a stop gives up what is not finished. */
  readonly stopSeconds: number
}

type Environment = Readonly<Record<string, string | undefined>>

/** Reads one variable, or names it. */
type Read<Value> = (text: string) => Value | undefined

/** What an empty variable means is what none means: shells can't tell them apart. */
function given(environment: Environment, name: string, fallback: string): string {
  return environment[name] || fallback
}

const wholeNumber =
  (least: number, most: number): Read<number> =>
  (text) =>
    /^\d{1,9}$/.test(text) && Number(text) >= least && Number(text) <= most ? Number(text) : undefined

const orMax =
  (read: Read<number>): Read<number> =>
  (text) =>
    text === 'max' ? 0 : read(text)

const oneOf =
  <Choice extends string>(...choices: readonly Choice[]): Read<Choice> =>
  (text) =>
    choices.find((choice) => choice === text)

/** A name or an address, not a URL. */
const host: Read<string> = (text) => (/^[\w.:-]{1,253}$/.test(text) ? text : undefined)

/**
 * Settings from the environment: `PORT` (3000), `HOST` (127.0.0.1), `WORKERS` (1, or `max`), `LOG` (`off` or `json`), `REQUESTS_PER_MINUTE` (0: no
 * limit), `PROXIES` (0), `PATIENCE` (30), `STOP_DELAY` (0) and `STOP_SECONDS` (30).
 *
 * @throws RangeError that names every variable that is wrong and what would be right
 */
export function settingsFrom(environment: Environment): Settings {
  const wrong: string[] = []
  const read = <Value>(name: string, fallback: string, reader: Read<Value>, right: string): Value => {
    const text = given(environment, name, fallback)
    const value = reader(text)
    if (value === undefined) wrong.push(`${name} is "${text}"; it must be ${right}`)
    return value as Value
  }
  const number = (name: string, fallback: string, most: number) =>
    read(name, fallback, wholeNumber(0, most), `a whole number from 0 to ${most}`)
  const settings: Settings = {
    host: read('HOST', '127.0.0.1', host, 'an address or a name, such as 127.0.0.1 or 0.0.0.0'),
    port: number('PORT', '3000', 65_535),
    workers: read('WORKERS', '1', orMax(wholeNumber(1, 256)), 'a whole number from 1 to 256, or max'),
    log: read('LOG', 'off', oneOf('off', 'json'), 'off or json') === 'json',
    requestsPerMinute: number('REQUESTS_PER_MINUTE', '0', 1_000_000),
    proxies: number('PROXIES', '0', 10),
    patience: read('PATIENCE', '30', wholeNumber(1, 3600), 'a whole number of seconds from 1 to 3600'),
    stopDelay: number('STOP_DELAY', '0', 600),
    stopSeconds: number('STOP_SECONDS', '30', 3600),
  }
  if (wrong.length > 0) throw new RangeError(wrong.join('\n'))
  return settings
}

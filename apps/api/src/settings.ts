/** Where the server listens. */
export interface Settings {
  readonly host: string
  readonly port: number
}

/**
 * Settings from the environment: `PORT` (3000) and `HOST` (127.0.0.1).
 *
 * @throws RangeError that names the variable and what would be right
 */
export function settingsFrom(environment: Readonly<Record<string, string | undefined>>): Settings {
  const { PORT = '3000', HOST = '127.0.0.1' } = environment
  const port = /^\d{1,5}$/.test(PORT) ? Number(PORT) : Number.NaN
  if (!(port <= 65_535)) throw new RangeError(`PORT is "${PORT}"; it must be a number from 0 to 65535`)
  return { host: HOST, port }
}

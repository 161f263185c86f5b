import { createApp } from '@pottle/api'

const app = createApp()

/** An answer of the app, with its body read: as JSON where it is JSON, else as text. */
export interface Reply {
  readonly status: number
  readonly headers: Headers
  // A test reads what it expects; what is not there fails it.
  // biome-ignore lint/suspicious/noExplicitAny: the body of any route
  readonly body: any
}

/** Asks the app itself, without a socket between. */
export async function ask(path: string, init?: RequestInit): Promise<Reply> {
  const response = await app.request(path, init)
  const text = await response.text()
  const json = /json/.test(response.headers.get('content-type') ?? '') && !/ndjson/.test(response.headers.get('content-type') ?? '')
  return { status: response.status, headers: response.headers, body: json && text !== '' ? JSON.parse(text) : text }
}

export function post(path: string, body: unknown, type = 'application/json'): Promise<Reply> {
  return ask(path, { method: 'POST', headers: { 'content-type': type }, body: typeof body === 'string' ? body : JSON.stringify(body) })
}

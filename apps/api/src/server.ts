import { createServer, type IncomingMessage, type RequestListener, type Server, type ServerResponse } from 'node:http'
import { Server as NetServer } from 'node:net'
import { getRequestListener, RequestError } from '@hono/node-server'
import { createApp } from './app.js'
import { allowedAnywhere } from './http/methods.js'
import type { Settings } from './settings.js'
import { answerUnheard, refuseMalformed } from './unheard.js'

/** A server that answers. */
export interface Running {
  readonly port: number
  /** Ends it without losing a request; settles when the last connection is closed. */
  stop(): Promise<void>
}

/** How long a request may be on its way over a connection that was kept open when the stop began. */
const linger = 1000

/** How often headers that are late are looked for, in milliseconds. */
const checkEvery = 1000

const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds))

/** Slow or silent clients may not hold a connection for ever. */
function limitWaiting(server: Server, patience: number): void {
  server.headersTimeout = patience * 1000
  // A stream may take as long as it likes, so long as something moves; what is read as a whole has a limit of its own.
  server.requestTimeout = 0
  server.timeout = 2 * patience * 1000
  // Longer than proxies keep theirs, so that it is they who close.
  server.keepAliveTimeout = 75_000
}

/**
 * Stops in an order that loses nothing: answers say `Connection: close` and readiness is denied; then no new connection is taken; requests
 * already on their way over open connections are answered; and only then are idle connections closed.
 */
async function stopServer(server: Server, { stopDelay, stopSeconds }: Settings): Promise<void> {
  server.prependListener('request', (_: IncomingMessage, response: ServerResponse) => response.setHeader('connection', 'close'))
  await pause(stopDelay * 1000)
  const giveUp = setTimeout(() => server.closeAllConnections(), stopSeconds * 1000)
  // The close of an HTTP server would end idle connections at once, and with them a request that has just been sent.
  const closed = new Promise<void>((resolve) => NetServer.prototype.close.call(server, () => resolve()))
  await Promise.race([closed, pause(linger)])
  server.closeIdleConnections()
  server.keepAliveTimeout = 1
  await closed
  clearTimeout(giveUp)
}

const writeLine =
  (stream: NodeJS.WritableStream) =>
  (entry: object): void =>
    void stream.write(`${JSON.stringify(entry)}\n`)

/**
 * Answers `OPTIONS *`, which asks what the server can do as a whole (RFC 9110, section 9.3.7). It names no address that the app could know, and
 * makes no URL.
 */
function answerAsterisk(listener: RequestListener, allow: string): RequestListener {
  return (request, response) => {
    if (request.method !== 'OPTIONS' || request.url !== '*') return listener(request, response)
    response.writeHead(204, { allow }).end()
  }
}

/** The app answers its own faults; what is left are requests that make no URL, and answers whose reader went away. */
function answerFault(error: unknown): Response {
  return error instanceof RequestError ? refuseMalformed() : new Response(null, { status: 500 })
}

/**
 * Serves the app over HTTP.
 *
 * @throws the error of the system where the address can't be had
 */
export async function startServer(settings: Settings): Promise<Running> {
  let ready = true
  const { host, port, log, requestsPerMinute, proxies, patience } = settings
  const app = createApp({
    requestsPerMinute,
    proxies,
    bodySeconds: patience,
    ready: () => ready,
    ...(log ? { log: writeLine(process.stdout), logFault: writeLine(process.stderr) } : {}),
  })
  const listener = getRequestListener(app.fetch, { errorHandler: answerFault })
  const server = createServer({ connectionsCheckingInterval: checkEvery }, answerAsterisk(listener, allowedAnywhere(app)))
  server.on('clientError', answerUnheard)
  limitWaiting(server, patience)
  await new Promise<void>((resolve, reject) => server.once('error', reject).listen(port, host, resolve))
  const address = server.address()
  return {
    port: typeof address === 'object' && address ? address.port : port,
    stop: () => {
      ready = false
      return stopServer(server, settings)
    },
  }
}

import type { Socket } from 'node:net'
import { type Problem, type ProblemKind, problem, problemKinds } from './http/problem.js'

/** What a request that never reached the app is told, by the error of Node's parser. */
function problemFor(code: string | undefined): Problem {
  if (code === 'HPE_HEADER_OVERFLOW') return withExample('too-many-headers')
  if (code === 'ERR_HTTP_REQUEST_TIMEOUT') return problem('too-slow', 'the headers were not there in time')
  return withExample('malformed')
}

const withExample = (kind: ProblemKind): Problem => problem(kind, problemKinds[kind].example.detail)

/** Answers on the bare socket, and closes it: after a request that could not be read nobody knows where the next begins. */
export function answerUnheard(error: NodeJS.ErrnoException, socket: Socket): void {
  if (!socket.writable || error.code === 'ECONNRESET') {
    socket.destroy()
    return
  }
  const told = problemFor(error.code)
  const body = JSON.stringify(told)
  const head = [
    `HTTP/1.1 ${told.status} ${told.title}`,
    'Content-Type: application/problem+json',
    `Content-Length: ${Buffer.byteLength(body)}`,
    'Cache-Control: no-store',
    'Connection: close',
  ]
  socket.end(`${head.join('\r\n')}\r\n\r\n${body}`)
}

/** What stands for the answer where the address or the Host header of a request makes no URL. */
export function refuseMalformed(): Response {
  const told = withExample('malformed')
  return new Response(JSON.stringify(told), {
    status: told.status,
    headers: { 'content-type': 'application/problem+json', 'cache-control': 'no-store' },
  })
}

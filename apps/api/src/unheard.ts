import type { Socket } from 'node:net'
import { type Problem, type ProblemKind, problem, problemKinds } from './http/problem.js'

/** An error of Node's parser, with the bytes that it stumbled at. */
interface ParserError extends NodeJS.ErrnoException {
  readonly rawPacket?: Buffer
}

/** Whether the bytes begin with an address that is most of the 16 KiB which it and the headers may have together (`http.maxHeaderSize`). */
const isAddress = (packet: Buffer | undefined): boolean => packet !== undefined && /^[A-Z]+ \S{8192}/.test(packet.toString('latin1'))

/** What a request that never reached the app is told. */
function problemFor({ code, rawPacket }: ParserError): Problem {
  if (code === 'HPE_HEADER_OVERFLOW') return withExample(isAddress(rawPacket) ? 'address-too-long' : 'too-many-headers')
  if (code === 'ERR_HTTP_REQUEST_TIMEOUT') return problem('too-slow', 'the headers were not there in time')
  return withExample('malformed')
}

const withExample = (kind: ProblemKind): Problem => problem(kind, problemKinds[kind].example.detail)

/** Answers on the bare socket, and closes it: after a request that could not be read nobody knows where the next begins. */
export function answerUnheard(error: ParserError, socket: Socket): void {
  if (!socket.writable || error.code === 'ECONNRESET') {
    socket.destroy()
    return
  }
  const told = problemFor(error)
  const body = JSON.stringify(told)
  const head = [
    `HTTP/1.1 ${told.status} ${told.title}`,
    'Content-Type: application/problem+json',
    `Content-Length: ${Buffer.byteLength(body)}`,
    'Cache-Control: no-store',
    'Access-Control-Allow-Origin: *',
    'Connection: close',
  ]
  socket.end(`${head.join('\r\n')}\r\n\r\n${body}`)
}

/** What stands for the answer where the address or the Host header of a request makes no URL. */
export function refuseMalformed(): Response {
  const told = withExample('malformed')
  return new Response(JSON.stringify(told), {
    status: told.status,
    headers: { 'content-type': 'application/problem+json', 'cache-control': 'no-store', 'access-control-allow-origin': '*' },
  })
}

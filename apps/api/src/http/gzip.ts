import type { Context } from 'hono'

/** Shorter bodies fit a packet as they are. */
const least = 1024
/** Longer bodies are compressed piece by piece, so that they keep nobody waiting. */
const mostAtOnce = 64 * 1024
const compressible = /^(?:text\/|application\/(?:[\w.-]+\+)?json|application\/x-bibtex|image\/svg\+xml)/

/** A body that is there as a whole. */
export type Whole = string | Uint8Array<ArrayBuffer>

/** Whether a form of answer is compressed for those who ask, so that caches have to tell them from others. */
export const isCompressible = (type: string | undefined): boolean => type !== undefined && compressible.test(type)

/** Whether an Accept-Encoding header takes gzip (RFC 9110, section 12.5.3). */
function takesGzip(header: string | undefined): boolean {
  return header !== undefined && /\bgzip\b/i.test(header) && !/\bgzip\s*;\s*q=0(?:\.0*)?\s*(?:,|$)/i.test(header)
}

/** Whether a body is to go out compressed. */
export function worthGzip(context: Context, body: Whole, type: string | undefined): boolean {
  if (body.length < least || !takesGzip(context.req.header('accept-encoding'))) return false
  return context.req.method !== 'HEAD' && isCompressible(type)
}

/** Bytes that were sent compressed, for as long as they are kept to be sent again. */
const packed = new WeakMap<Uint8Array, Uint8Array<ArrayBuffer>>()

/** Compresses at once, where the host can: the stream that all hosts have takes four times as long. */
function pack(body: Whole): Uint8Array<ArrayBuffer> | undefined {
  const known = typeof body === 'string' ? undefined : packed.get(body)
  if (known !== undefined || body.length > mostAtOnce) return known
  const zlib = globalThis.process?.getBuiltinModule?.('node:zlib')
  const fresh = zlib?.gzipSync(body)
  if (fresh !== undefined && typeof body !== 'string') packed.set(body, fresh)
  return fresh
}

/** The same bytes cannot be promised of a compressed body, so that its tag becomes a weak one (RFC 9110, section 8.8.1). */
export function gzipped(body: Whole, status: number, headers: Record<string, string>): Response {
  headers['content-encoding'] = 'gzip'
  if (headers.etag !== undefined) headers.etag = `W/${headers.etag}`
  // Edge platforms would compress it once more where this is not said; other hosts pass it over.
  const init: ResponseInit & { encodeBody: string } = { status, headers, encodeBody: 'manual' }
  return new Response(pack(body) ?? new Blob([body]).stream().pipeThrough(new CompressionStream('gzip')), init)
}

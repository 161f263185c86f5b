import type { Context } from 'hono'

/** Shorter bodies fit a packet as they are. */
const least = 1024
const compressible = /^(?:text\/|application\/(?:[\w.-]+\+)?json|application\/x-bibtex|image\/svg\+xml)/

/** Whether an Accept-Encoding header takes gzip (RFC 9110, section 12.5.3). */
function takesGzip(header: string | undefined): boolean {
  return header !== undefined && /\bgzip\b/i.test(header) && !/\bgzip\s*;\s*q=0(?:\.0*)?\s*(?:,|$)/i.test(header)
}

/** Whether a body is to go out compressed; tells caches, in `Vary`, that others may get it plain. */
export function worthGzip(context: Context, body: string, headers: Record<string, string>): boolean {
  if (body.length < least || !compressible.test(headers['content-type'] ?? '')) return false
  headers.vary = headers.vary ? `${headers.vary}, Accept-Encoding` : 'Accept-Encoding'
  return context.req.method !== 'HEAD' && takesGzip(context.req.header('accept-encoding'))
}

/** The same bytes cannot be promised of a compressed body, so that its tag becomes a weak one (RFC 9110, section 8.8.1). */
export function gzipped(body: string, status: number, headers: Record<string, string>): Response {
  const weak = headers.etag ? { etag: `W/${headers.etag}` } : {}
  const stream = new Blob([body]).stream().pipeThrough(new CompressionStream('gzip'))
  // Edge platforms would compress it once more where this is not said; other hosts pass it over.
  const init: ResponseInit & { encodeBody: string } = {
    status,
    headers: { ...headers, ...weak, 'content-encoding': 'gzip' },
    encodeBody: 'manual',
  }
  return new Response(stream, init)
}

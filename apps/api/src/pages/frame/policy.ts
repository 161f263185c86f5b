/** What a page may do: use our own style, type, script and pictures, and ask our own server. Nothing comes from anywhere else. */
export const contentPolicy: string = [
  "default-src 'none'",
  "style-src 'self'",
  "font-src 'self'",
  "script-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** The digest by which a policy allows one inline style and no other (Content Security Policy Level 3, section 2.3.1). */
async function digestOf(style: string): Promise<string> {
  const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(style))
  return `'sha256-${btoa(String.fromCharCode(...new Uint8Array(bytes)))}'`
}

/** What an embed may do, in anybody's frame: nothing but wear its one style. */
export async function policyFor(style: string): Promise<string> {
  return `default-src 'none'; style-src ${await digestOf(style)}; base-uri 'none'; form-action 'none'; frame-ancestors *`
}

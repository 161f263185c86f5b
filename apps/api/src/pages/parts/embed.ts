const inAttribute = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;')

/** The element that shows an answer on any web page: what stands inside is what readers see where scripts do not run. */
export function embedFor(kind: 'measure' | 'heat' | 'loaf', asked: Readonly<Record<string, string | undefined>>, fallback: string): string {
  const attributes = Object.entries(asked).flatMap(([name, value]) => (value === undefined ? [] : [` ${name}="${inAttribute(value)}"`]))
  return `<pottle-${kind}${attributes.join('')}>${inAttribute(fallback)}</pottle-${kind}>`
}

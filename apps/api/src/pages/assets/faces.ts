import { italic, roman } from '../made/faces.js'

/** The typeface of the pages, as files: William Caslon's, in which English cookery books of the eighteenth century were printed. */
export const faces = { 'caslon.woff2': roman, 'caslon-italic.woff2': italic } as const

export const bytesOf = (base64: string): Uint8Array<ArrayBuffer> => Uint8Array.from(atob(base64), (character) => character.charCodeAt(0))

/**
 * Rules that name the files. A page that is drawn before they come keeps to the reader's own serif, and does not move when they do:
 * they are there for the next page.
 */
export function faceRules(addressOf: (name: keyof typeof faces) => string): string {
  const rule = (style: string, name: keyof typeof faces): string =>
    `@font-face { font-family: "Libre Caslon Text"; font-style: ${style}; font-display: optional; src: url(${addressOf(name)}) format("woff2"); }\n`
  return rule('normal', 'caslon.woff2') + rule('italic', 'caslon-italic.woff2')
}

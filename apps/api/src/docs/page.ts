/** A page as the text that is sent. */
export const written = (page: { toString(): string }): string => `<!doctype html>${page.toString()}`

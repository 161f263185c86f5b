/** Every table of data/ and the type of its rows. */
export const tables: Readonly<Record<string, string>>

/** Writes the tables into a folder and says how many files there are. */
export function writeCsv(folder?: URL): number

import type { DataFault } from './faults.mjs'

/** Reads the tables of a folder, and tells what is wrong with them as files. */
export function readTables(folder: URL, names: readonly string[]): { tables: Record<string, object[]>; faults: DataFault[] }

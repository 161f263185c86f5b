/** One thing wrong with a table. */
export interface DataFault {
  readonly table: string
  readonly row: string
  /** What is wrong and what would be right. */
  readonly said: string
}

export function findFaults(tables: Readonly<Record<string, readonly object[]>>): DataFault[]
export function countSenses(tables: Readonly<Record<string, readonly object[]>>): number

import type { DataFault } from './faults.mjs'

export function findDescriptionFaults(
  description: { readonly version: string; readonly resources: readonly object[] },
  tables: Readonly<Record<string, readonly object[]>>,
  version: string,
): DataFault[]

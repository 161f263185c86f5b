/** Either script as it is served: one ES module without imports. */
export function bundle(entry: 'index.ts' | 'offline/index.ts'): Promise<string>

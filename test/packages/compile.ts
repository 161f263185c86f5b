/** The compiler as a stranger's project sets it up. */
import { join } from 'node:path'
import ts from 'typescript'

/** The two ways in which projects of today look packages up. */
export const ways: Readonly<Record<'nodenext' | 'bundler', ts.CompilerOptions>> = {
  nodenext: { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext },
  bundler: { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler },
}

/**
 * Compiles programs strictly, the declarations of every package too.
 *
 * @returns a line for each complaint: the file, the code of the complaint and its words
 */
export function compile(folder: string, files: readonly string[], way: keyof typeof ways): string[] {
  const options: ts.CompilerOptions = {
    ...ways[way],
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2023.d.ts', 'lib.dom.d.ts', 'lib.dom.iterable.d.ts'],
    strict: true,
    skipLibCheck: false,
    skipDefaultLibCheck: true,
    types: [],
    rootDir: folder,
    outDir: join(folder, 'out'),
    noEmit: way !== 'nodenext',
  }
  const program = ts.createProgram({ rootNames: files.map((file) => join(folder, file)), options })
  const complaints = ts.getPreEmitDiagnostics(program).map(({ file, code, messageText }) => {
    const name = file?.fileName.slice(folder.length + 1) ?? ''
    return `${name}: TS${code}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`
  })
  program.emit()
  return complaints
}

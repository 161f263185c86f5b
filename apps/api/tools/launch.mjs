// Starts the server that lies beside it, with the engine's own form of the code: `server.cache`, as it was after a first answer. Another engine than
// the one that wrote it, and the same with other flags (such as --max-old-space-size), reads the code itself.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Script } from 'node:vm'

const filename = fileURLToPath(new URL('server.cjs', import.meta.url))

function cache() {
  try {
    return { cachedData: readFileSync(new URL('server.cache', import.meta.url)) }
  } catch {
    return {}
  }
}

// The code is ASCII.
const code = readFileSync(filename, 'latin1')
export const script = new Script(`(function (require, __filename, __dirname) {${code}\n})`, { filename, ...cache() })
script.runInThisContext()(createRequire(filename), filename, dirname(filename))

// Installs the dependencies when they are missing or older than the lock file, so that `npm start` and `npm test` need no step before them.
import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../../', import.meta.url))
const installed = `${root}node_modules/.package-lock.json`
const fresh = existsSync(installed) && statSync(installed).mtimeMs >= statSync(`${root}package-lock.json`).mtimeMs

if (!fresh) {
  const { status } = spawnSync('npm', ['ci'], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' })
  process.exit(status ?? 1)
}

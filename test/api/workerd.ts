/** workerd, the runtime of edge platforms, with one worker in it. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { copyFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { freePort, untilUp } from './ports.js'

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

export interface Workerd {
  readonly process: ChildProcess
  readonly url: string
  stop(): Promise<void>
}

/**
 * Serves a worker by the configuration that the API ships.
 *
 * @param folder where `worker.mjs` is, a module that imports nothing
 */
export async function startWorkerd(folder: string): Promise<Workerd> {
  copyFileSync(here('../../apps/api/deploy/workerd.capnp'), join(folder, 'workerd.capnp'))
  const port = await freePort()
  const url = `http://127.0.0.1:${port}`
  const command = here('../../node_modules/.bin/workerd')
  const child = spawn(command, ['serve', 'workerd.capnp', `--socket-addr=http=127.0.0.1:${port}`], { cwd: folder })
  await untilUp(child, url)
  return {
    process: child,
    url,
    async stop() {
      const ended = once(child, 'exit')
      child.kill()
      await ended
    },
  }
}

/** workerd, the runtime of edge platforms, with one worker in it. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { copyFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

export interface Workerd {
  readonly url: string
  stop(): Promise<void>
}

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number }
      server.close(() => resolve(port))
    })
  })

async function untilItListens(child: ChildProcess, url: string): Promise<void> {
  let said = ''
  for (const stream of [child.stdout!, child.stderr!]) stream.on('data', (chunk) => (said += chunk))
  for (;;) {
    if (child.exitCode !== null) throw new Error(`workerd ended with ${child.exitCode}: ${said}`)
    const up = await fetch(url).then(
      () => true,
      () => false,
    )
    if (up) return
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
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
  await untilItListens(child, url)
  return {
    url,
    async stop() {
      const ended = once(child, 'exit')
      child.kill()
      await ended
    },
  }
}

import type { ChildProcess } from 'node:child_process'
import { createServer } from 'node:net'

/** A port of the loopback address that nobody listens on. */
export const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number }
      server.close(() => resolve(port))
    })
  })

/** Waits until a server answers; fails with what it has said where it ends before that. */
export async function untilUp(child: ChildProcess, url: string): Promise<void> {
  let said = ''
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk) => (said += chunk))
  for (;;) {
    if (child.exitCode !== null) throw new Error(`${child.spawnfile} ended with ${child.exitCode}: ${said}`)
    const up = await fetch(url).then(
      () => true,
      () => false,
    )
    if (up) return
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
}

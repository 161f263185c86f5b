import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { freePort, untilUp } from './ports.js'

export function hasNginx(): boolean {
  try {
    execFileSync('nginx', ['-v'], { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

/** The configuration that ships, with ports and folders of its own; everything else in it is tried as it is. */
function configure(folder: string, port: number, origin: number, change: (text: string) => string): string {
  const shipped = readFileSync(fileURLToPath(new URL('../../apps/api/deploy/nginx.conf', import.meta.url)), 'utf8')
  const own = shipped
    .replace('listen 8080', `listen 127.0.0.1:${port}`)
    .replace('127.0.0.1:3000', `127.0.0.1:${origin}`)
    .replace('/run/nginx-pottle.pid', join(folder, 'nginx.pid'))
    .replace('/var/log/nginx/pottle-error.log', 'stderr')
    .replaceAll('/var/cache/nginx-pottle', join(folder, 'cache'))
    .replace('worker_processes auto', 'worker_processes 1')
  const file = join(folder, 'nginx.conf')
  writeFileSync(file, change(own))
  return file
}

export interface Nginx {
  readonly process: ChildProcess
  readonly port: number
  readonly url: string
  /** Empties its cache. */
  empty(): void
  stop(): Promise<void>
}

/** Starts nginx before a server at a port. */
export async function startNginx(origin: number, change: (text: string) => string = (text) => text): Promise<Nginx> {
  const folder = mkdtempSync(join(tmpdir(), 'pottle-nginx-'))
  mkdirSync(join(folder, 'cache'))
  // Started by root, nginx works as another user.
  for (const path of [folder, join(folder, 'cache')]) chmodSync(path, 0o777)
  const port = await freePort()
  const url = `http://127.0.0.1:${port}`
  const child = spawn('nginx', ['-p', folder, '-c', configure(folder, port, origin, change), '-g', 'daemon off;'])
  await untilUp(child, `${url}/healthz`)
  const stop = async (): Promise<void> => {
    child.kill('SIGQUIT')
    await once(child, 'exit')
  }
  const cache = join(folder, 'cache')
  const empty = (): void => readdirSync(cache).forEach((name) => void rmSync(join(cache, name), { recursive: true }))
  return { process: child, port, url, empty, stop }
}

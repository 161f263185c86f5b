import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { connect, type Socket } from 'node:net'

/** A server in a process of its own. */
export interface Child {
  readonly process: ChildProcess
  readonly port: number
  readonly url: string
  /** Everything that it has said. */
  said(): string
  /** Asks it to stop, and waits for its exit code. */
  stop(signal?: NodeJS.Signals): Promise<number | null>
  /** Asks it and all that it has begun at once, as service managers and terminals do. */
  stopAll(signal?: NodeJS.Signals): Promise<number | null>
}

export const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds))

const begun = new Set<ChildProcess>()

/** Ends what a test has left running. */
export function endChildren(): void {
  for (const child of begun) child.kill('SIGKILL')
  begun.clear()
}

function watch(file: string, env: Readonly<Record<string, string>>): { process: ChildProcess; said: () => string } {
  const child = spawn(process.execPath, [file], {
    env: { ...process.env, PORT: '0', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
    // A group of its own, so that all of it can be told at once.
    detached: true,
  })
  begun.add(child)
  child.once('exit', () => begun.delete(child))
  let text = ''
  for (const stream of [child.stdout!, child.stderr!]) stream.on('data', (chunk) => (text += chunk))
  return { process: child, said: () => text }
}

const exitOf = async (child: ChildProcess): Promise<number | null> =>
  child.exitCode ?? (child.signalCode ? null : ((await once(child, 'exit'))[0] as number | null))

/** Runs a server until it says where it listens. */
export async function startChild(file: string, env: Readonly<Record<string, string>> = {}): Promise<Child> {
  const { process: child, said } = watch(file, env)
  while (!/listening\b/i.test(said())) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}: ${said()}`)
    await new Promise((resolve) => setTimeout(resolve, 20))
  }
  const port = Number(/listening\b.*?http:\/\/[^:]+:(\d+)/i.exec(said())![1])
  const stop = (signal: NodeJS.Signals = 'SIGTERM') => {
    child.kill(signal)
    return exitOf(child)
  }
  const stopAll = (signal: NodeJS.Signals = 'SIGTERM') => {
    process.kill(-child.pid!, signal)
    return exitOf(child)
  }
  return { process: child, port, url: `http://127.0.0.1:${port}`, said, stop, stopAll }
}

/** Runs a server that is not expected to live. */
export async function runChild(file: string, env: Readonly<Record<string, string>>): Promise<{ code: number | null; said: string }> {
  const { process: child, said } = watch(file, env)
  const code = await exitOf(child)
  return { code, said: said() }
}

/** A bare connection: what is written to it, and what came back. */
export async function openSocket(port: number): Promise<{ socket: Socket; received: () => string; closed: Promise<void> }> {
  const socket = connect(port, '127.0.0.1')
  let text = ''
  socket.on('data', (chunk) => (text += chunk.toString('latin1')))
  socket.on('error', () => {})
  const closed = new Promise<void>((resolve) => socket.once('close', () => resolve()))
  await once(socket, 'connect')
  return { socket, received: () => text, closed }
}

import cluster, { type Worker } from 'node:cluster'
import { availableParallelism } from 'node:os'
import type { Settings } from './settings.js'
import { stopWhenAsked } from './signals.js'

/** What a process ends with when it can't start at all: to start it again would not help. */
export const cannotStart = 2

/** A process that lives no longer than this died of its start. */
const stillborn = 1000

/** Keeps so many processes serving: one that dies is replaced, unless it died at once. */
export function keepWorkers({ workers }: Settings, onListening: (port: number) => void): void {
  const count = workers || availableParallelism()
  let stopping = false
  const start = (): Worker => {
    const born = performance.now()
    const worker = cluster.fork()
    worker.on('exit', (code) => {
      if (code === cannotStart || (code !== 0 && performance.now() - born < stillborn)) stop(code)
      else if (!stopping) start()
    })
    return worker
  }
  const stop = (code = 0): void => {
    stopping = true
    process.exitCode ||= code
    for (const worker of Object.values(cluster.workers ?? {})) worker?.process.kill('SIGTERM')
  }
  stopWhenAsked(stop, true)
  cluster.once('listening', (_, { port }) => onListening(port))
  for (let i = 0; i < count; i++) start()
}

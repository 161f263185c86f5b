import cluster from 'node:cluster'
import { convert } from '@pottle/core'
import { startServer } from './server.js'
import { type Settings, settingsFrom } from './settings.js'
import { showAnswer } from './show.js'
import { stopWhenAsked } from './signals.js'
import { cannotStart, keepWorkers } from './workers.js'

const example = { phrase: 'a pottle of cream', year: 1690, place: 'london' }

function giveUp(message: string): never {
  console.error(message)
  process.exit(cannotStart)
}

function readSettings(): Settings {
  try {
    return settingsFrom(process.env)
  } catch (error) {
    giveUp((error as Error).message)
  }
}

/** Says where the server listens: in words with a first answer, or in a line like those of the log. */
function greet({ host, log }: Settings, port: number): void {
  const origin = `http://${host.includes(':') ? `[${host}]` : host}:${port}`
  if (log) {
    console.log(JSON.stringify({ time: new Date().toISOString(), listening: origin }))
    return
  }
  const query = new URLSearchParams({ phrase: example.phrase, year: String(example.year), place: example.place })
  console.log(showAnswer(convert(example.phrase, example)))
  console.log(`\nListening on ${origin}\nThe same by HTTP: ${origin}/v1/convert?${query}`)
}

async function serve(settings: Settings): Promise<void> {
  try {
    const { port, stop } = await startServer(settings)
    if (cluster.isPrimary) greet(settings, port)
    stopWhenAsked(() => void stop().then(() => process.exit()), cluster.isPrimary)
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException
    giveUp(code === 'EADDRINUSE' ? `Port ${settings.port} is taken; set PORT to another.` : message)
  }
}

const settings = readSettings()
if (settings.workers !== 1 && cluster.isPrimary) keepWorkers(settings, (port) => greet(settings, port))
else void serve(settings)

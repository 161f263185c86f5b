/** The server as a process, asked to stop: no request is lost. */
import { Agent, get } from 'node:http'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { bundleServer } from './bundle.js'
import { endChildren, pause, startChild } from './child.js'
import { conversion } from './questions.js'

let file = ''
beforeAll(async () => {
  file = await bundleServer()
}, 60_000)
afterAll(endChildren)

/** What a keep-alive client of a balancer sees: it sends no more over a connection, nor to a server, that says it closes. */
async function load(url: string, clients: number, after: number, stop: () => void): Promise<{ whole: number; lost: string[] }> {
  const agent = new Agent({ keepAlive: true, maxSockets: clients })
  const seen = { whole: 0, lost: [] as string[] }
  let closing = false
  const ask = (): Promise<void> =>
    new Promise((resolve) => {
      const request = get(`${url}${conversion}`, { agent }, (response) => {
        let text = ''
        if (response.headers.connection === 'close') closing = true
        response.on('data', (chunk) => (text += chunk))
        response.on('error', (error) => seen.lost.push(`in the answer: ${error.message}`))
        response.on('close', () => {
          if (response.complete && JSON.parse(text).reading.measure === 'pottle') seen.whole++
          else seen.lost.push('an answer ended early')
          if (seen.whole === after) stop()
          resolve()
        })
      })
      request.on('error', (error: NodeJS.ErrnoException) => {
        // Nothing was begun where there was no connection to be had.
        if (error.code !== 'ECONNREFUSED') seen.lost.push(`${error.code}: ${error.message}`)
        closing = true
        resolve()
      })
    })
  await Promise.all(
    Array.from({ length: clients }, async () => {
      while (!closing) await ask()
    }),
  )
  agent.destroy()
  return seen
}

describe('stopping', () => {
  test.each([
    ['one process', '1', '0'],
    ['one process that waits for its balancers', '1', '1'],
    ['two processes', '2', '0'],
  ])('%s under load loses nothing', { timeout: 60_000 }, async (_, workers, delay) => {
    const child = await startChild(file, { WORKERS: workers, STOP_DELAY: delay })
    let code: Promise<number | null> | undefined
    const { whole, lost } = await load(child.url, 24, 300, () => {
      code = child.stop()
    })
    expect(lost).toEqual([])
    expect(whole).toBeGreaterThanOrEqual(300)
    expect(await code).toBe(0)
    console.log(`stop under load (WORKERS=${workers}, STOP_DELAY=${delay}): ${whole} requests answered, ${lost.length} lost`)
  })

  test.skipIf(process.platform === 'win32').each([
    ['SIGTERM', '1'],
    ['SIGINT', '1'],
    ['SIGTERM', '2'],
    ['SIGINT', '2'],
  ] as const)('%s to all of its %s process(es) at once loses nothing either', { timeout: 60_000 }, async (signal, workers) => {
    const child = await startChild(file, { WORKERS: workers })
    let code: Promise<number | null> | undefined
    const { whole, lost } = await load(child.url, 24, 300, () => {
      code = child.stopAll(signal)
    })
    expect(lost).toEqual([])
    expect(whole).toBeGreaterThanOrEqual(300)
    expect(await code).toBe(0)
  })

  test.each(['1', '2'])('with %s process(es), being asked twice changes nothing', { timeout: 30_000 }, async (workers) => {
    const child = await startChild(file, { STOP_DELAY: '4', WORKERS: workers })
    const code = child.stopAll()
    await pause(300)
    child.stopAll()
    expect((await fetch(`${child.url}${conversion}`)).status).toBe(200)
    expect(await code).toBe(0)
  })

  test.each(['1', '2'])('with %s process(es), someone who will not wait need not', { timeout: 30_000 }, async (workers) => {
    const child = await startChild(file, { STOP_DELAY: '20', WORKERS: workers })
    const code = child.stopAll('SIGINT')
    await pause(800)
    child.stopAll('SIGINT')
    expect(await code).toBe(130)
    await expect(fetch(child.url)).rejects.toThrow()
  })

  test('while it waits it denies its readiness, answers, and closes behind each answer', { timeout: 30_000 }, async () => {
    const child = await startChild(file, { STOP_DELAY: '2' })
    expect((await fetch(`${child.url}/readyz`)).status).toBe(200)
    const code = child.stop()
    await pause(300)
    const ready = await fetch(`${child.url}/readyz`)
    expect(ready.status).toBe(503)
    expect(await ready.json()).toMatchObject({ type: '/problems/draining' })
    const answer = await fetch(`${child.url}${conversion}`)
    expect(answer.status).toBe(200)
    expect(answer.headers.get('connection')).toBe('close')
    expect((await fetch(`${child.url}/healthz`)).status).toBe(200)
    expect(await code).toBe(0)
  })

  test('a stream that is under way is finished', { timeout: 30_000 }, async () => {
    const child = await startChild(file)
    const encoder = new TextEncoder()
    let controller!: ReadableStreamDefaultController<Uint8Array>
    const body = new ReadableStream<Uint8Array>({
      start: (one) => {
        controller = one
      },
    })
    const line = encoder.encode('{"phrase":"a pint of cream","year":1690}\n')
    controller.enqueue(line)
    const init = { method: 'POST', headers: { 'content-type': 'application/x-ndjson' }, body, duplex: 'half' } as RequestInit
    const reader = (await fetch(`${child.url}/v1/convert`, init)).body!.getReader()
    let text = new TextDecoder().decode((await reader.read()).value)
    const code = child.stop()
    await pause(1500)
    controller.enqueue(line)
    controller.close()
    for (let part = await reader.read(); !part.done; part = await reader.read()) text += new TextDecoder().decode(part.value)
    expect(text.trim().split('\n')).toHaveLength(2)
    expect(await code).toBe(0)
  })
})

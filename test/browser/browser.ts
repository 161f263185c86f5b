/**
 * A headless Chromium for the tests, found in this order: `CHROME_PATH`; where systems keep it; on Linux x64 the copy that `npm ci` brings.
 * Without one the tests fail where `CI` is set, and elsewhere say that they were left out.
 */
import { existsSync } from 'node:fs'
import { type Browser, chromium } from 'playwright-core'
import { describe } from 'vitest'

const places: readonly string[] = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
]

/** The packaged copy brings the libraries that a bare machine lacks (nss, nspr), but unpacks them only where it believes itself in a Lambda. */
async function packaged(): Promise<string | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined
  const before = process.env.AWS_EXECUTION_ENV
  process.env.AWS_EXECUTION_ENV = 'AWS_Lambda_nodejs20.x'
  try {
    const { default: sparticuz } = await import('@sparticuz/chromium')
    return await sparticuz.executablePath()
  } catch {
    return undefined
  } finally {
    if (before === undefined) delete process.env.AWS_EXECUTION_ENV
    else process.env.AWS_EXECUTION_ENV = before
  }
}

/** Where a Chromium is; undefined where there is none. A wrong `CHROME_PATH` is not passed over: it fails at launch. */
export async function findChromium(): Promise<string | undefined> {
  return process.env.CHROME_PATH || places.find((place) => existsSync(place)) || (await packaged())
}

const executablePath = await findChromium()
const advice = 'no Chromium was found; set CHROME_PATH to one, or install chromium, and run the tests again'

if (!executablePath && process.env.CI) throw new Error(advice)
if (!executablePath) console.warn(`Tests in a browser are left out: ${advice}.`)

/** A suite that needs a browser. */
export const describeInBrowser: typeof describe.skip = executablePath ? describe : describe.skip

/** One browser; close it after the suite. Its own defaults hold, so that the rules between origins are enforced as in a reader's. */
export function openBrowser(flags: readonly string[] = []): Promise<Browser> {
  return chromium.launch({ ...(executablePath ? { executablePath } : {}), args: ['--no-sandbox', ...flags] })
}

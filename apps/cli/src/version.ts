import { readFileSync } from 'node:fs'
import { dataset } from '@pottle/core'

const own = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { readonly version: string }

/** The version of the program and of the tables that it answers from. */
export const version = `pottle ${own.version}, tables ${dataset}`

import type { Command } from '../command.js'
import { convertCommand } from './convert.js'
import { heatCommand } from './heat.js'
import { loafCommand } from './loaf.js'
import { measuresCommand } from './measures.js'
import { sheetCommand } from './sheet.js'
import { sourcesCommand } from './sources.js'
import { streamCommand } from './stream.js'
import { sugarCommand, warmthCommand } from './warmth.js'

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [
  convertCommand,
  heatCommand,
  sugarCommand,
  warmthCommand,
  loafCommand,
  sheetCommand,
  streamCommand,
  measuresCommand,
  sourcesCommand,
]

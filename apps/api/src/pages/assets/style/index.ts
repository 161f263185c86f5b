import { forms } from './forms.js'
import { ink } from './ink.js'
import { ledger } from './ledger.js'
import { pictures } from './pictures.js'
import { print } from './print.js'
import { sheet } from './sheet.js'
import { tables } from './tables.js'
import { type } from './type.js'

/** The one stylesheet; what comes later rules over what comes before. */
export const stylesheet: string = [ink, type, ledger, tables, forms, pictures, sheet, print].join('')

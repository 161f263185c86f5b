import type { Answer, AnswerCaution, AnswerData, AnswerSense, AnswerSource, Value } from './answer.js'
import { answerSenses, modernValues } from './answer-parts.js'
import { type Band, scaleBand } from './bands/index.js'
import { cautionsAbout } from './caution.js'
import { aboutIn, kitchenLine } from './kitchen-line.js'
import { inModernUnit, type ModernValue } from './modern/index.js'
import { notesOn } from './notes.js'
import type { CheckedOptions } from './options.js'
import type { Reading } from './reading/index.js'
import { numberOf, type Other, type Resolved } from './resolved.js'
import { baseUnits, dataset } from './tables/index.js'

/**
 * An answer that makes its longer parts when they are first asked for: a caller who wants the band alone does not wait for units and citations.
 * A class, not an object with getters of its own: engines keep one shape for all instances of a class.
 */
export class LazyAnswer implements Answer {
  readonly phrase: string
  readonly setting: Answer['setting']
  readonly reading: Answer['reading']
  readonly value: Value
  readonly dataset: string = dataset
  readonly #resolved: Resolved
  readonly #read: Reading
  readonly #checked: CheckedOptions
  readonly #band: Band
  #modern: readonly ModernValue[] | undefined
  #senses: readonly AnswerSense[] | undefined
  #cautions: readonly AnswerCaution[] | undefined

  constructor(phrase: string, read: Reading, checked: CheckedOptions, resolved: Resolved) {
    const { setting } = checked
    const { kind, amount, measure, thing, qualifier, eggs } = read
    this.#resolved = resolved
    this.#read = read
    this.#checked = checked
    this.#band = this.#scaled(this.#resolved.band)
    const { low, best, high, coverage } = this.#band
    const { quantity } = this.#resolved.assessment
    this.phrase = phrase
    this.setting = { year: setting.from === setting.to ? setting.from : setting.year, place: setting.places[0]! }
    const passed = read.unread.map(({ start, end }) => phrase.slice(start, end))
    const unread = [...passed, ...(this.#resolved.assessment.senses[0]!.unread ?? [])]
    this.reading = { kind, amount, measure, thing, qualifier, eggs, unread }
    this.value = { quantity, unit: baseUnits[quantity], low, best, high, coverage }
  }

  get modern(): readonly ModernValue[] {
    this.#modern ??= modernValues(this.#resolved, this.#checked, this.#band, this.#other())
    return this.#modern
  }

  get senses(): readonly AnswerSense[] {
    this.#senses ??= answerSenses(this.#resolved, this.#read)
    return this.#senses
  }

  get text(): string {
    // Where the caller asked for one unit, that is the line.
    if (this.#checked.unit && this.modern.length === 1) return `${aboutIn(this.#band)}${this.modern[0]!.text}`
    return kitchenLine(this.value.quantity, this.#band, this.#other(), (unit) => this.#textIn(unit))
  }

  get notes(): readonly string[] {
    return notesOn(this.#resolved, this.#read, this.#checked.setting, this.reading.unread)
  }

  get cautions(): readonly AnswerCaution[] {
    this.#cautions ??= cautionsAbout(this.phrase, this.#read)
    return this.#cautions
  }

  get sources(): readonly AnswerSource[] {
    return this.#resolved.sources
  }

  /** The whole answer as a plain object, for `JSON.stringify`, for spreading and for comparing. */
  toJSON(): AnswerData {
    return {
      phrase: this.phrase,
      setting: this.setting,
      reading: this.reading,
      value: this.value,
      modern: this.modern,
      senses: this.senses,
      text: this.text,
      notes: this.notes,
      cautions: this.cautions,
      sources: this.sources,
      dataset: this.dataset,
    }
  }

  #scaled(band: Band): Band {
    return this.#resolved.scales ? scaleBand(band, numberOf(this.#read.amount).base) : band
  }

  /** The line names a few units, and need not wait for all of them. */
  #textIn(unit: string): string | undefined {
    if (this.#modern || this.#resolved.assessment.kind.modern) return this.modern.find((value) => value.unit === unit)?.text
    const other = this.#other()
    const value = inModernUnit(unit, this.value.quantity, this.#band) ?? (other && inModernUnit(unit, other.quantity, other.band))
    return value?.text
  }

  #other(): Other | null {
    const { other } = this.#resolved
    return other && { quantity: other.quantity, band: this.#scaled(other.band) }
  }
}

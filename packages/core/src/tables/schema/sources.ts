/** Who says so. */

/** A source as CSL-JSON, the open form that reference managers read and write. */
export interface SourceRow {
  readonly id: string
  readonly type: string
  readonly title: string
  readonly author?: readonly { readonly family?: string; readonly given?: string; readonly literal?: string }[]
  readonly editor?: readonly { readonly family?: string; readonly given?: string; readonly literal?: string }[]
  readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] }
  readonly publisher?: string
  readonly 'publisher-place'?: string
  readonly 'container-title'?: string
  readonly volume?: string
  readonly number?: string
  readonly page?: string
  readonly edition?: string
  readonly URL?: string
  readonly DOI?: string
  readonly language?: string
  readonly note?: string
  readonly custom: {
    /** One line as a footnote gives it after the first mention. */
    readonly short: string
    /** Where its text was seen, or that it was not. */
    readonly seen: string
  }
}

/** As much of the citation library, which brings no types, as the tests use. */
declare module '@citation-js/core' {
  interface Person {
    readonly family?: string
    readonly given?: string
    readonly literal?: string
  }
  interface Entry {
    readonly 'citation-key': string
    readonly title: string
    readonly author?: readonly Person[]
    readonly editor?: readonly Person[]
  }
  export const plugins: { readonly input: { chain(text: string): readonly Entry[] } }
}

declare module '@citation-js/plugin-bibtex'

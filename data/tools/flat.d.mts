export interface Sheet {
  readonly name: string
  readonly columns: readonly { readonly name: string; readonly type: string; readonly item?: string }[]
  readonly cells: readonly (readonly string[])[]
}

export function flatten(name: string, rows: readonly object[]): Sheet[]

/** What the tests use of libraries that come without types. */

declare module 'js-quantities' {
  export default function Qty(value: number | string, unit?: string): { to(unit: string): { readonly scalar: number } }
}

declare module '@lhncbc/ucum-lhc' {
  export const UcumLhcUtils: {
    getInstance(): {
      convertUnitTo(from: string, value: number, to: string): { readonly status: string; readonly toVal: number | null }
      validateUnitString(code: string): { readonly status: string }
    }
  }
}

declare module 'datapackage' {
  interface Field {
    readonly name: string
    readonly type: string
    readonly itemType?: string
  }
  export interface PackageDescriptor {
    readonly resources: readonly { readonly name: string; readonly schema: { readonly fields: readonly Field[] } }[]
  }
  interface Verdict {
    readonly errors: readonly Error[]
  }
  export function validate(descriptor: object): Promise<Verdict>
  export const Profile: { load(name: string): Promise<{ validate(descriptor: object): Verdict }> }
  export const Package: {
    load(
      descriptor: PackageDescriptor,
      options: { readonly basePath: string },
    ): Promise<{
      readonly resources: readonly { read(options: { readonly keyed: boolean; readonly relations: boolean }): Promise<unknown[]> }[]
    }>
  }
}

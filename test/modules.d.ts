/** What the truth checks use of two libraries that come without types. */

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

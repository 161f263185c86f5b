import type { Band, ModernValue } from '@pottle/core'

/** A band in degC as a value that can be told and drawn. */
export const inDegrees = <Ends extends Omit<Band, 'coverage'>>(band: Ends): Ends & { readonly unit: 'degC' } => ({ ...band, unit: 'degC' })

/** Degrees of both scales, in whole ones: no thermometer of a kitchen shows finer. */
export function bothScales({ best }: Pick<Band, 'best'>, modern: readonly ModernValue[]): string {
  return [`${Math.round(best)} °C`, ...modern.map(({ text }) => text)].join('; ')
}

import { places } from '@pottle/core'

/** A place as it is to be read: `London`. */
export const labelOfPlace = (id: string): string => places.find((place) => place.id === id)?.label ?? id

/** `London, 1690` */
export function saySetting({ year, place }: { readonly year: number | string | null; readonly place: string }): string {
  return `${labelOfPlace(place)}, ${year ?? 'no year given'}`
}

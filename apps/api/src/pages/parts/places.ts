import { places } from '@pottle/core'

const labels = new Map(places.map(({ id, label }) => [id, label]))
const wider = new Map(places.map(({ id, within }) => [id, within]))

/** The name of a place; what was given, where the tables have no such place. */
export const placeLabel = (id: string): string => labels.get(id) ?? id

/** The countries that the list of places is divided by. */
const countries = ['england', 'scotland', 'ireland', 'america'] as const

function countryOf(id: string): string | undefined {
  for (let at: string | undefined = id; at; at = wider.get(at)) if (countries.some((country) => country === at)) return at
  return undefined
}

/** Places under their country, the country first and the rest by name. */
export const placeGroups: readonly {
  readonly label: string
  readonly places: readonly { readonly id: string; readonly label: string }[]
}[] = countries.map((country) => ({
  label: placeLabel(country),
  places: [
    { id: country, label: placeLabel(country) },
    ...places
      .filter(({ id }) => id !== country && countryOf(id) === country)
      .map(({ id, label }) => ({ id, label }))
      .sort((a, b) => (a.label < b.label ? -1 : 1)),
  ],
}))

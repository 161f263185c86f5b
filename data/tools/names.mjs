/** `wheat-prices` is the file, `wheatPrices` the constant. */
export const camel = (name) => name.replace(/-([a-z])/g, (_, letter) => letter.toUpperCase())

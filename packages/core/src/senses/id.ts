/**
 * The last part of an id, which names it where nothing else could be meant: `wine` of `gallon.wine`.
 *
 * @example lastPart('pottle.wine')   // 'wine'
 */
export const lastPart = (id: string): string => id.slice(id.lastIndexOf('.') + 1)

/** Whether a caller's word points at an id: the whole of it, or its last part. */
export const isCalled = (id: string, wish: string): boolean => id === wish || lastPart(id) === wish

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** The letter that a meaning is known by on its page; numbers after the alphabet. */
export const letterOf = (index: number): string => letters[index] ?? String(index + 1)

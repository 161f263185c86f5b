/**
 * What is made when it is first asked for: few callers need every index of every table, and all of them are to start at once.
 *
 * @example once(() => new Map([['pottle', 2]]))().get('pottle')   // 2
 */
export function once<Value extends object>(make: () => Value): () => Value {
  let made: Value | undefined
  return () => {
    made ??= make()
    return made
  }
}

/** What is made when it is first asked for: most servers are asked for it seldom, and all of them are to start at once. */
export function once<Value>(make: () => Value): () => Value {
  let made: Value | undefined
  return () => {
    made ??= make()
    return made
  }
}

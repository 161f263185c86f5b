/**
 * A parsed value as it is: what a schema calls optional is there or absent, but never undefined, since neither JSON nor a query can hold that.
 */
export type Exact<Value> = Value extends readonly (infer Item)[]
  ? Exact<Item>[]
  : Value extends object
    ? { [Key in keyof Value]: Exact<Exclude<Value[Key], undefined>> }
    : Value

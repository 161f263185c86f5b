/** What can be measured, and the kinds of measure that measure it. */

export type Quantity = 'mass' | 'volume' | 'count' | 'length' | 'time' | 'temperature' | 'ratio'

/** The kinds of measure, each with a way of its own to be answered. */
export type MeasureKind =
  | 'weight'
  | 'capacity'
  | 'count'
  | 'egg'
  | 'loaf'
  | 'vessel'
  | 'comparison'
  | 'coin'
  | 'piece'
  | 'pennyworth'
  | 'time'
  | 'length'
  | 'consistency'
  | 'temperature'

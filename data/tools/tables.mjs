/** Every table of data/ and the type of its rows in packages/core/src/tables/schema.ts. */
export const tables = {
  places: 'PlaceRow',
  standards: 'StandardRow',
  measures: 'MeasureRow',
  usage: 'UsageRow',
  goods: 'GoodRow',
  tolerances: 'ToleranceRow',
  'modern-units': 'ModernUnitRow',
  qualifiers: 'QualifierRow',
  sources: 'SourceRow',
}

/**
 * The shapes an uncertain input may have.
 *
 * - `exact`: known without doubt, as a legal ratio is.
 * - `rectangle`: anywhere between two ends, none likelier than another.
 * - `triangle`: likeliest at `best`, falling in straight lines to nothing at both ends.
 * - `lognormal`: median `best`; nine times in ten between `best / factor` and `best * factor`.
 */
export type Shape =
  | { readonly shape: 'exact'; readonly value: number }
  | { readonly shape: 'rectangle'; readonly low: number; readonly high: number }
  | { readonly shape: 'triangle'; readonly low: number; readonly best: number; readonly high: number }
  | { readonly shape: 'lognormal'; readonly best: number; readonly factor: number }

/** The sum of a list; 0 for an empty one. */
export function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

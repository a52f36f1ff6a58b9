/** Resistances in parallel (also capacitances in series, inductances in parallel): 0 when one is 0, Infinity ones left out. */
export function parallelOf(...values: readonly number[]): number {
  if (values.includes(0)) return 0;
  return 1 / values.reduce((sum, value) => sum + 1 / value, 0);
}

/** Deviations beyond this many standard deviations are drawn at the edge. */
export const BAR_SPAN = 4;
const HALF = 6;

/**
 * A reading against a suspect's prediction as a bar of text: the prediction in the middle, two standard deviations as the brackets, the
 * reading as a star; an arrowhead at the edge where it lies beyond.
 */
export function suspectBar(deviation: number): string {
  const cells = Array.from({ length: 2 * HALF + 1 }, () => "-");
  const at = (value: number) => HALF + Math.round((HALF * Math.max(-BAR_SPAN, Math.min(BAR_SPAN, value))) / BAR_SPAN);
  cells[at(-2)] = "[";
  cells[at(2)] = "]";
  cells[HALF] = "|";
  const mark = deviation > BAR_SPAN ? ">" : deviation < -BAR_SPAN ? "<" : "*";
  cells[at(Number.isFinite(deviation) ? deviation : Math.sign(deviation) * 2 * BAR_SPAN)] = mark;
  return cells.join("");
}

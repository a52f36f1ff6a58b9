/**
 * Least value of a function of a few variables by the downhill simplex method (reflection 1, expansion 2, contraction and
 * shrinking 1/2). Enough for fits of two to five parameters to a handful of points; no derivatives.
 *
 * @param cost function to make small
 * @param start where to begin
 * @param step size of the first simplex in each variable
 */
export function simplexMinimum(cost: (x: readonly number[]) => number, start: readonly number[], step: number): number[] {
  let corners = [start, ...start.map((_, i) => start.map((value, j) => (i === j ? value + step : value)))].map((x) => ({
    x: [...x],
    cost: cost(x),
  }));
  for (let round = 0; round < 4000; round++) {
    corners.sort((a, b) => a.cost - b.cost);
    const best = corners[0];
    const worst = corners[corners.length - 1];
    const second = corners[corners.length - 2];
    if (!best || !worst || !second || worst.cost - best.cost < 1e-15) break;
    const rest = corners.slice(0, -1);
    const middle = best.x.map((_, i) => rest.reduce((sum, corner) => sum + (corner.x[i] ?? 0), 0) / rest.length);
    const along = (factor: number) => {
      const x = middle.map((value, i) => value + factor * (value - (worst.x[i] ?? 0)));
      return { x, cost: cost(x) };
    };
    const reflected = along(1);
    let next = reflected;
    if (reflected.cost < best.cost) {
      const expanded = along(2);
      if (expanded.cost < reflected.cost) next = expanded;
    } else if (reflected.cost >= second.cost) {
      next = along(reflected.cost < worst.cost ? 0.5 : -0.5);
      if (next.cost >= Math.min(worst.cost, reflected.cost)) {
        corners = corners.map((corner) => {
          const x = corner.x.map((value, i) => ((best.x[i] ?? 0) + value) / 2);
          return { x, cost: cost(x) };
        });
        continue;
      }
    }
    corners[corners.length - 1] = next;
  }
  corners.sort((a, b) => a.cost - b.cost);
  return corners[0]?.x ?? [...start];
}

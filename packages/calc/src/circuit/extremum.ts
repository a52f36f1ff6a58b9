/** A peak between samples: its value, and how it hangs on the samples about it. */
export interface Peak {
  value: number;
  /** d value / d sample for the samples at k-2 ... k+2. */
  weights: [number, number, number, number, number];
}

/** Bends on the two sides differ this much where the waveform has a corner (a diode turns on) and not a rounded top. */
const CORNER = 0.25;

/** Where the line through (a, b), one step apart, meets the line through (c, d), which starts one step after b. */
function corner(a: number, b: number, c: number, d: number): { share: number; value: number } | undefined {
  const before = b - a;
  const after = d - c;
  if (before === after) return undefined;
  const share = (c - after - b) / (before - after);
  return share >= 0 && share <= 1 ? { share, value: b + before * share } : undefined;
}

/**
 * Height of a peak from five equally spaced samples, the highest in the middle: the vertex of a parabola where the top is
 * rounded, the crossing of the two flanks where it is a corner, the sample itself where it is neither.
 */
export function peakBetween(samples: readonly [number, number, number, number, number]): Peak {
  const [y0, y1, y2, y3, y4] = samples;
  const bends = [y0 - 2 * y1 + y2, y1 - 2 * y2 + y3, y2 - 2 * y3 + y4] as const;
  const plain: Peak = { value: y2, weights: [0, 0, 1, 0, 0] };
  if (!(bends[1] < 0)) return plain;
  const sharpest = Math.max(...bends.map(Math.abs));
  if (bends[0] < -CORNER * sharpest && bends[2] < -CORNER * sharpest) {
    const tilt = y3 - y1;
    const ratio = tilt / bends[1];
    const value = y2 - (tilt * ratio) / 8;
    return { value, weights: [0, ratio / 4 + (ratio * ratio) / 8, 1 - (ratio * ratio) / 4, -ratio / 4 + (ratio * ratio) / 8, 0] };
  }
  // The corner lies on the side whose far flank bends; the other flank is straight up to the middle sample.
  if (Math.abs(bends[0]) < Math.abs(bends[2])) {
    const found = corner(y1, y2, y3, y4);
    if (found !== undefined) return { value: found.value, weights: [0, ...cornerWeights(y1, y2, y3, y4, found.share)] };
  } else {
    const found = corner(y0, y1, y2, y3);
    if (found !== undefined) return { value: found.value, weights: [...cornerWeights(y0, y1, y2, y3, found.share), 0] };
  }
  return plain;
}

/** Slopes of the crossing's height with respect to the four samples. */
function cornerWeights(a: number, b: number, c: number, d: number, share: number): [number, number, number, number] {
  const before = b - a;
  const spread = before - (d - c);
  // value = b + before * share, share = N/spread with N = 2c - d - b.
  const perShare = before / spread;
  return [-share + perShare * share, 1 + share - perShare * (1 + share), perShare * (2 - share), perShare * (share - 1)];
}

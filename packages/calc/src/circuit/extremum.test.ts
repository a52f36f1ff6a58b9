import { describe, expect, it } from "vitest";
import { peakBetween } from "./extremum.ts";

type Five = [number, number, number, number, number];
const sampled = (wave: (t: number) => number): Five => [-2, -1, 0, 1, 2].map(wave) as Five;

describe("peakBetween", () => {
  it("finds the top of a parabola and of a cosine between samples", () => {
    expect(peakBetween(sampled((t) => 3 - (t - 0.3) ** 2)).value).toBeCloseTo(3, 12);
    expect(peakBetween(sampled((t) => Math.cos((t - 0.4) * 0.2))).value).toBeCloseTo(1, 4);
  });

  it("finds a corner between straight flanks, on either side of the highest sample", () => {
    for (const at of [-0.4, 0.2]) {
      const roof = (t: number): number => (t < at ? 5 + 2 * (t - at) : 5 - 3 * (t - at));
      expect(peakBetween(sampled(roof)).value).toBeCloseTo(5, 12);
    }
  });

  it("leaves a jump and a flat top at their samples", () => {
    expect(peakBetween([0, 0, 10, 9, 8]).value).toBeCloseTo(10, 12);
    expect(peakBetween([4, 4, 4, 4, 4]).value).toBe(4);
  });

  it("weights are the slopes of the value", () => {
    for (const samples of [
      sampled((t) => 3 - (t - 0.3) ** 2),
      sampled((t) => (t < 0.2 ? 5 + 2 * t : 5.9 - 2.5 * t)),
      sampled((t) => (t < -0.3 ? t : -0.9 - 2 * t)),
    ]) {
      const { weights } = peakBetween(samples);
      samples.forEach((value, k) => {
        const [low, high] = [-1e-6, 1e-6].map((shift) => peakBetween(samples.with(k, value + shift) as Five).value) as [number, number];
        expect(weights[k]).toBeCloseTo((high - low) / 2e-6, 6);
      });
    }
  });
});

/** Windows of predicted readings against a Monte Carlo of the same network: every uncertain value drawn anew, every draw solved. */
import { type Element, type Network, solveSteady } from "@underchassis/calc";
import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import type { ChassisModel, CompiledNetwork, ReadingQuantity } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";

const SITUATION = { life: "found", condition: "operating", line: "actual" } as const;
const DRAWS = 400;

/** A half-wave silicon supply with one filter section and a load of resistance. */
const supplyWith = (reservoir: string): JobPart[] => [
  {
    name: "T1",
    kind: "transformer",
    windings: {
      primary: { between: ["line hot", "line neutral"], marked: "117 V", measured: "8 ohm" },
      hv: { between: ["hv", "chassis"], marked: "125 V", measured: "40 ohm" },
    },
  },
  { name: "D1", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["hv", "raw"] },
  { name: "C1", kind: "capacitor", marked: reservoir, between: ["raw", "chassis"] },
  { name: "R1", kind: "resistor", marked: "1 kohm 10 % 2 W", between: ["raw", "B+"] },
  { name: "C2", kind: "capacitor", marked: "20 uF 250 V 20 %", between: ["B+", "chassis"] },
  { name: "R2", kind: "resistor", marked: "6.8 kohm 10 % 5 W", between: ["B+", "chassis"] },
];

/** A generator that gives the same numbers everywhere (mulberry32), from 0 to 1. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function scaled(element: Element, parameter: string, factor: number): Element {
  if (element.kind === "transformer") {
    const [id, key] = parameter.split(".") as [string, "ohms" | "turns"];
    return {
      ...element,
      windings: element.windings.map((winding) => (winding.id === id ? { ...winding, [key]: winding[key] * factor } : winding)),
    };
  }
  const value = (element as unknown as Record<string, number>)[parameter];
  if (value === undefined) throw new Error(`${element.id} has no ${parameter}`);
  return { ...element, [parameter]: value * factor };
}

function drawn({ network, uncertain }: CompiledNetwork, random: () => number): Network {
  const elements = new Map(network.elements.map((element) => [element.id, element]));
  for (const { ref, minus, plus } of uncertain) {
    const factor = 1 - minus + (minus + plus) * random();
    elements.set(ref.element, scaled(elements.get(ref.element)!, ref.parameter, factor));
  }
  return { ...network, elements: [...elements.values()] };
}

interface Probe {
  quantity: Extract<ReadingQuantity, "dc-volts" | "ripple-volts">;
  at: string;
}
const PROBES: readonly Probe[] = [
  { quantity: "dc-volts", at: "raw" },
  { quantity: "dc-volts", at: "B+" },
  { quantity: "ripple-volts", at: "raw" },
];

function monteCarlo(model: ChassisModel): number[][] {
  const compiled = model.compile(SITUATION);
  const random = generator(1950);
  const samples: number[][] = PROBES.map(() => []);
  let warmStart: ReturnType<typeof solveSteady> | undefined;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    const steady = solveSteady(drawn(compiled, random), { hertz: 60, ...(warmStart === undefined ? {} : { warmStart }) });
    warmStart ??= steady;
    for (const [index, { quantity, at }] of PROBES.entries()) samples[index]?.push(steady.read({ quantity, from: at, to: "chassis" }));
  }
  return samples;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const deviation = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0) / (values.length - 1));
const modelWith = (reservoir: string): ChassisModel =>
  modelOf({ parts: supplyWith(reservoir), readings: PROBES.map((probe) => ({ ...probe, value: "1 V" })) });
const named = PROBES.map((probe, index) => [`${probe.at} ${probe.quantity}`, probe, index] as const);

describe("the window of a predicted reading", () => {
  const model = modelWith("20 uF 250 V 20 %");
  const samples = monteCarlo(model);

  it.each(named)("%s is as wide as the draws", (_name, probe, index) => {
    const values = samples[index] ?? [];
    const prediction = model.predict(SITUATION, { ...probe, to: "chassis" })!;
    expect(Math.abs(prediction.sigma / deviation(values) - 1)).toBeLessThan(0.1);
    expect(Math.abs((prediction.low + prediction.high) / 2 - mean(values))).toBeLessThan(0.15 * prediction.sigma);
    expect(values.filter((value) => value < prediction.low || value > prediction.high).length / values.length).toBeLessThan(0.08);
    expect(Math.min(...values)).toBeGreaterThanOrEqual(prediction.worstLow);
    expect(Math.max(...values)).toBeLessThanOrEqual(prediction.worstHigh);
  });

  it("has the largest contributor first", () => {
    const { contributors } = model.predict(SITUATION, { quantity: "ripple-volts", at: "raw", to: "chassis" })!;
    expect(contributors[0]).toMatchObject({ part: "C1", parameter: "farads" });
    expect(contributors.every(({ share }, index) => index === 0 || share <= contributors[index - 1]!.share)).toBe(true);
  });
});

describe("a reservoir of -10 +50 %", () => {
  const model = modelWith("20 uF 250 V -10 +50 %");
  const samples = monteCarlo(model);

  it.each(named)("shifts the middle of %s as the draws do, and the window errs wide if at all", (_name, probe, index) => {
    const values = samples[index] ?? [];
    const prediction = model.predict(SITUATION, { ...probe, to: "chassis" })!;
    const [off, sigma] = [(prediction.low + prediction.high) / 2 - mean(values), deviation(values)];
    // Ripple goes as 1 / C, and a straight line from the marked value overstates what +50 % takes off: up to a third too wide.
    expect(Math.abs(off)).toBeLessThan((probe.quantity === "ripple-volts" ? 0.4 : 0.15) * sigma);
    expect(prediction.sigma / sigma).toBeGreaterThan(0.95);
    expect(prediction.sigma / sigma).toBeLessThan(1.4);
    expect(values.filter((value) => value < prediction.low || value > prediction.high).length / values.length).toBeLessThan(0.08);
    expect(Math.min(...values)).toBeGreaterThanOrEqual(prediction.worstLow);
    expect(Math.max(...values)).toBeLessThanOrEqual(prediction.worstHigh);
  });
});

describe("a meter's own error", () => {
  it("widens the window, in squares, and the worst case, in sums", () => {
    const model = modelOf({ parts: [{ name: "B", kind: "battery", marked: "100 V", tolerance: "3 %", between: ["a", "chassis"] }] });
    const probe = { quantity: "dc-volts", at: "a", to: "chassis" } as const;
    const prediction = model.predict(SITUATION, probe, { ohms: 10e6, accuracy: 0.02 })!;
    expect(prediction.nominal).toBeCloseTo(100, 9);
    expect(prediction.sigma).toBeCloseTo(Math.hypot(3 / Math.sqrt(3), 2), 6);
    expect(prediction.worstHigh).toBeCloseTo(105, 6);
    expect(prediction.worstLow).toBeCloseTo(100 + 100 * Math.log(0.97) - 2, 6);
  });
});

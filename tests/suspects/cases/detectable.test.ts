import { describe, expect, it } from "vitest";
import { Random } from "../random.ts";
import type { StoredReadings } from "./caseFile.ts";
import { HealthySpread, shown } from "./detectable.ts";
import { asMetered, meterSigma } from "./meterError.ts";

const reading = (volts: number, ohms: number | null = 47e3): StoredReadings => ({
  seed: "",
  cold: [ohms],
  operating: { volts: [volts], ripple: [1], sourceOhms: [0] },
});
// Volts of 240 +- 2 %, drawn evenly; ohms within 5 %.
const random = new Random("healthy");
const healthy = Array.from({ length: 60 }, () => reading(240 * random.between(0.98, 1.02), 47e3 * random.between(0.95, 1.05)));

describe("what can be seen of a fault", () => {
  const spread = new HealthySpread(healthy);

  it("is a reading more than three deviations off", () => {
    // Even within 2 %: 2.8 V; a meter of 1 %: 1.2 V; three of both together: 9.1 V.
    expect(spread.isOff(reading(246), meterSigma)).toBe(false);
    expect(spread.isOff(reading(252), meterSigma)).toBe(true);
    expect(spread.isOff(reading(228), meterSigma)).toBe(true);
  });

  it("is an open where there was a path", () => {
    expect(spread.isOff(reading(240, null), meterSigma)).toBe(true);
    expect(spread.isOff(reading(240, 49e3), meterSigma)).toBe(false);
  });

  it("may be asked of some readings alone", () => {
    expect(spread.isOff(reading(200), meterSigma, ({ quantity }) => quantity === "ohms")).toBe(false);
  });
});

describe("a meter", () => {
  it("of 10 Mohm takes a tenth off a point of 1.11 Mohm", () => {
    expect(shown(100, 10e6 / 9)).toBeCloseTo(90, 6);
  });

  it("errs by half of what it states, and shows steps of its display", () => {
    const readings = Array.from({ length: 2000 }, () => asMetered("dc-volts", 250, random));
    const mean = readings.reduce((a, b) => a + b, 0) / readings.length;
    const deviation = Math.sqrt(readings.reduce((sum, value) => sum + (value - mean) ** 2, 0) / readings.length);
    expect(Math.abs(mean - 250)).toBeLessThan(0.15);
    expect(deviation).toBeGreaterThan(1.15);
    expect(deviation).toBeLessThan(1.35);
    expect(readings.every((value) => Math.abs(value * 10 - Math.round(value * 10)) < 1e-6)).toBe(true);
  });

  it("reads open above its top range", () => {
    expect(asMetered("ohms", 30e6, random)).toBe(Number.POSITIVE_INFINITY);
    expect(asMetered("ohms", Number.POSITIVE_INFINITY, random)).toBe(Number.POSITIVE_INFINITY);
    expect(asMetered("ohms", 1e6, random)).toBeGreaterThan(0.98e6);
  });
});

import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { referenceDataset } from "../../testing/referenceDataset.ts";

const rectifier = (rest: { type?: string; marked?: string }) =>
  modelOf({ parts: [{ name: "X", kind: "rectifier", between: ["a", "b"], ...rest }] }, referenceDataset()).parts.get("X")!.lives.designed;

describe("a rectifier", () => {
  it("is a vacuum tube by its type, in any spelling of its case", () => {
    const state = rectifier({ type: " 5y3gt " });
    expect(state.device).toMatchObject({ kind: "vacuum-diode" });
    // Published: 50 V at 125 mA a plate, so the perveance is 0.125 / 50^1.5.
    expect(state.device?.kind === "vacuum-diode" ? state.device.perveance : 0).toBeCloseTo(0.125 / 50 ** 1.5, 6);
    expect(state.heater).toMatchObject({ volts: 5, amps: 2, direct: true });
    expect(state.limits?.peakInverseVolts).toBe(1400);
  });

  it("is a gas tube with a steady drop", () => {
    const { device } = rectifier({ type: "866A" });
    expect(device?.kind).toBe("gas-diode");
    // Published: about 15 V in conduction.
    if (device?.kind === "gas-diode") expect(Math.abs(device.dropVolts - 15)).toBeLessThanOrEqual(3);
  });

  // JEDEC registration of the 1N400x: 1 A, 1000 V for the last, 30 A surge.
  it("is silicon by its class, with the class's limits", () => {
    const state = rectifier({ type: "1N4007" });
    expect(state.device?.kind).toBe("silicon");
    expect(state.limits).toMatchObject({ peakInverseVolts: 1000, dcAmps: 1, surgeAmps: 30 });
  });

  it("is silicon in words, with the limits that the words give", () => {
    const state = rectifier({ type: "silicon 600 V 750 mA" });
    expect(state.device?.kind).toBe("silicon");
    expect(state.limits).toEqual({ peakInverseVolts: 600, dcAmps: 0.75, source: "marking" });
  });

  it("is selenium in words: plates in series by its RMS rating", () => {
    const state = rectifier({ type: "selenium 130 V 100 mA" });
    // 130 V over 26 V a plate is 5 plates; 1 V a plate at the rated current (from-memory).
    expect(state.device).toMatchObject({ kind: "selenium", plates: 5 });
    if (state.device?.kind === "selenium") expect(state.device.kneeVoltsPerPlate + 0.1 * state.device.ohmsPerPlate).toBeCloseTo(1, 12);
    // Behind a capacitor a half-wave stack sees twice the peak.
    expect(state.limits?.peakInverseVolts).toBeCloseTo(2 * Math.SQRT2 * 130, 9);
    expect(state.limits?.dcAmps).toBe(0.1);
  });

  it("of no known kind is refused with the nearest that is", () => {
    expect(() => rectifier({ type: "5Y33" })).toThrow("rectifier-unknown");
    expect(() => rectifier({})).toThrow("value-missing");
  });
});

describe("tubes", () => {
  const tube = (kind: "tube" | "regulator-tube" | "rectifier", type: string) =>
    modelOf(
      { parts: [{ name: "V1", kind, type, pins: { plate: "p", grid: "g", cathode: "k", screen: "s" } }] },
      referenceDataset(),
    ).parts.get("V1")!.lives.designed;

  it.each([
    ["tube", "12AX7", "triode"],
    ["tube", "6V6GT", "pentode"],
    ["regulator-tube", "VR150", "gas-regulator"],
  ] as const)("%s %s is a %s", (kind, type, device) => {
    expect(tube(kind, type).device?.kind).toBe(device);
  });

  it("go by their first name", () => {
    expect(tube("regulator-tube", "VR150").type).toBe("0D3");
  });

  it("of no known type are refused with the nearest", () => {
    expect(() => tube("tube", "12AXX")).toThrow("tube-unknown");
  });
});

describe("a zener diode", () => {
  const zener = (marked: string) =>
    modelOf({ parts: [{ name: "Z", kind: "zener", between: ["a", "b"], marked }] }).parts.get("Z")!.lives.designed;

  it("has its voltage and its watts", () => {
    expect(zener("150 V 5 W")).toMatchObject({ main: { value: 150, tolerance: { minus: 0.05, plus: 0.05 } }, ratedWatts: 5 });
  });

  it("needs only its voltage, and takes a type number and a tolerance", () => {
    expect(zener("12 V").main?.value).toBe(12);
    expect(zener("1N4764 100V 10% 1W")).toMatchObject({ main: { value: 100, tolerance: { minus: 0.1, plus: 0.1 } }, ratedWatts: 1 });
  });

  it("without a voltage is refused", () => {
    expect(() => zener("5 W")).toThrow("value-unreadable");
  });
});

describe("a triode-pentode", () => {
  const section = (pins: Record<string, string>) =>
    modelOf({ parts: [{ name: "V1", kind: "tube", type: "6U8A", pins }] }, referenceDataset()).parts.get("V1")!.lives.designed.device;
  const triode = { plate: "p", grid: "g", cathode: "k" };

  it("is its pentode where a screen is wired", () => expect(section({ ...triode, screen: "s" })?.kind).toBe("pentode"));
  it("is its triode where none is", () => expect(section(triode)?.kind).toBe("triode"));
});

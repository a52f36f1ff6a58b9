import { describe, expect, it } from "vitest";
import { tubeFiles } from "./tubeRecords.ts";

const rms = (limits: Record<string, unknown>) => Number(limits.rmsVoltsChokeInput ?? limits.rmsVoltsCapacitorInput);

describe("vacuum rectifiers and diodes", () => {
  const vacuum = tubeFiles.filter((tube) => tube.units.some(({ kind }) => kind === "vacuum-diode"));

  it.each(vacuum)("$id: perveance gives the published current at the published drop", (tube) => {
    const perveance = tube.units[0]?.parameters?.perveance ?? 0;
    const { dropVolts = 0, dropAmps = 0 } = tube.typical[0] ?? {};
    expect((perveance * dropVolts ** 1.5) / dropAmps).toBeCloseTo(1, 3);
  });

  it.each(vacuum.filter(({ class: kind }) => kind === "rectifier"))(
    "$id: peak current above direct current, drop below a tenth of inverse",
    (tube) => {
      const { dcAmps = 0, peakAmps = 0, peakInverseVolts = 0 } = tube.limits as Record<string, unknown>;
      expect(Number(peakAmps)).toBeGreaterThan(2 * Number(dcAmps));
      expect(tube.typical[0]?.dropVolts ?? Number.POSITIVE_INFINITY).toBeLessThan(Number(peakInverseVolts) / 10);
    },
  );

  // from-memory (RC-30): on these sheets the inverse limit is twice the peak of the highest RMS voltage, within 3 %.
  it.each([
    "5y3gt",
    "5u4gb",
    "5u4g",
    "5v4g",
    "6x4",
    "6x5gt",
    "866a",
    "80",
    "83",
    "83v",
    "5z3",
    "5x4g",
    "5w4",
    "5z4",
    "5t4",
    "5y4g",
    "12x4",
  ])("%s: inverse limit and highest RMS voltage agree", (id) => {
    const limits = tubeFiles.find((tube) => tube.id === id)?.limits ?? { peakInverseVolts: 0 };
    expect(Math.abs((2 * Math.SQRT2 * rms(limits)) / Number(limits.peakInverseVolts) - 1)).toBeLessThan(0.03);
  });

  it.each(tubeFiles.filter(({ limits }) => Number.isFinite(rms(limits)) && limits.peakInverseVolts !== undefined))(
    "$id: inverse limit stands both peaks of the highest RMS voltage",
    ({ limits }) => expect(Number(limits.peakInverseVolts)).toBeGreaterThan(0.96 * 2 * Math.SQRT2 * rms(limits)),
  );
});

describe("gas rectifiers", () => {
  it.each(tubeFiles.filter((tube) => tube.class === "gas-rectifier"))("$id: a drop that hardly moves, and its cautions", (tube) => {
    const { dropVolts = 0, ohms = 0 } = tube.units[0]?.parameters ?? {};
    const published = tube.typical[0];
    expect(tube.units[0]?.kind).toBe("gas-diode");
    expect(dropVolts + ohms * (published?.dropAmps ?? 0)).toBeCloseTo(published?.dropVolts ?? 0, 1);
    if (tube.heater.heating === "direct") expect(`${tube.note} ${tube.limits.note}`).toMatch(/heat the filament/i);
  });
});

describe("gas regulators", () => {
  it.each(tubeFiles.filter((tube) => tube.class === "gas-regulator"))("$id: line, strike and range", (tube) => {
    const { operatingVolts = 0, slopeOhms = 0, strikeVolts = 0, extinguishAmps = 0 } = tube.units[0]?.parameters ?? {};
    const { dropVolts = 0, dropAmps = 0 } = tube.typical[0] ?? {};
    const limits = tube.limits as Record<string, unknown>;
    expect(operatingVolts + slopeOhms * dropAmps).toBeCloseTo(dropVolts, 0);
    expect(strikeVolts).toBeGreaterThan(dropVolts);
    expect(Number(limits.maxStrikeVolts)).toBeGreaterThan(strikeVolts);
    expect(dropAmps).toBeGreaterThanOrEqual(Number(limits.minRegulatorAmps));
    expect(dropAmps).toBeLessThanOrEqual(Number(limits.maxRegulatorAmps));
    expect(extinguishAmps).toBeLessThan(Number(limits.minRegulatorAmps));
  });
});

import { expect, test } from "vitest";
import { ammeterInsertion } from "./ammeterInsertion.ts";
import { meterMultiplier } from "./meterMultiplier.ts";
import { meterShunt } from "./meterShunt.ts";
import { readingWithoutMeter } from "./readingWithoutMeter.ts";
import { seriesOhmmeter } from "./seriesOhmmeter.ts";
import { voltmeterLoading } from "./voltmeterLoading.ts";

test("a voltmeter's reading, corrected for its loading, is the voltage without it", () => {
  const { trueVolts, shownVolts } = voltmeterLoading.compute({
    supplyVolts: 250,
    upperOhms: 220e3,
    lowerOhms: 330e3,
    rangeVolts: 250,
    ohmsPerVolt: 1000,
  });
  const { volts } = readingWithoutMeter.compute({ shownVolts, sourceOhms: (220e3 * 330e3) / 550e3, meterOhms: 250e3 });
  expect(volts).toBeCloseTo(trueVolts, 9);
  expect(shownVolts).toBeLessThan(trueVolts);
});

test("a meter that draws nothing shows the truth", () => {
  const { error } = voltmeterLoading.compute({ supplyVolts: 250, upperOhms: 220e3, lowerOhms: 330e3, rangeVolts: 250, ohmsPerVolt: 1e12 });
  expect(error).toBeLessThan(1e-9);
  expect(readingWithoutMeter.compute({ shownVolts: 100, sourceOhms: 1e6, meterOhms: Number.POSITIVE_INFINITY }).volts).toBe(100);
  expect(ammeterInsertion.compute({ supplyVolts: 2, ohms: 3, meterOhms: 0 }).error).toBe(0);
});

test("multiplier and movement together carry full-scale current at the range", () => {
  const { ohms } = meterMultiplier.compute({ fullScaleVolts: 300, fullScaleAmps: 50e-6, movementOhms: 2000 });
  expect(300 / (ohms + 2000)).toBeCloseTo(50e-6, 15);
  expect(() => meterMultiplier.compute({ fullScaleVolts: 0.4, fullScaleAmps: 1e-3, movementOhms: 500 })).toThrow("fullScaleVolts");
});

test("a shunt takes what the movement does not; without margin there is none", () => {
  const { ohms, burdenVolts } = meterShunt.compute({ fullScaleAmps: 1e-3, movementOhms: 100, rangeAmps: 0.1 });
  expect(burdenVolts / ohms + 1e-3).toBeCloseTo(0.1, 12);
  expect(() => meterShunt.compute({ fullScaleAmps: 1e-3, movementOhms: 100, rangeAmps: 1e-3 })).toThrow("must be above fullScaleAmps");
});

test("ohmmeter: full scale into a short, half scale into its own resistance, nothing into an open circuit", () => {
  const meter = { batteryVolts: 9, fullScaleAmps: 1e-3, movementOhms: 500 };
  const { halfScaleOhms } = seriesOhmmeter.compute(meter);
  expect(seriesOhmmeter.compute({ ...meter, unknownOhms: 0 }).deflection).toBe(1);
  expect(seriesOhmmeter.compute({ ...meter, unknownOhms: halfScaleOhms }).deflection).toBe(0.5);
  expect(seriesOhmmeter.compute({ ...meter, unknownOhms: Number.POSITIVE_INFINITY }).deflection).toBe(0);
});

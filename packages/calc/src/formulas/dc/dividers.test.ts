import { expect, test } from "vitest";
import { bleederDivider } from "./bleederDivider.ts";
import { bridgeDetector } from "./bridgeDetector.ts";
import { droppingResistor } from "./droppingResistor.ts";
import { loadedDivider } from "./loadedDivider.ts";
import { maxPowerTransfer } from "./maxPowerTransfer.ts";
import { parallelResistance } from "./parallelResistance.ts";
import { resistorAtCurrent } from "./resistorAtCurrent.ts";
import { resistorAtPower } from "./resistorAtPower.ts";
import { sourceIntoLoad } from "./sourceIntoLoad.ts";
import { sourceResistance } from "./sourceResistance.ts";
import { unloadedDivider } from "./unloadedDivider.ts";

test("a divider into a short gives nothing, into an open circuit what it gives unloaded", () => {
  const divider = { supplyVolts: 300, upperOhms: 47e3, lowerOhms: 22e3 };
  expect(loadedDivider.compute({ ...divider, loadOhms: 0 }).tapVolts).toBe(0);
  const open = loadedDivider.compute({ ...divider, loadOhms: Number.POSITIVE_INFINITY }).tapVolts;
  expect(open).toBeCloseTo(unloadedDivider.compute({ supplyVolts: 300, upperOhms: [47e3], lowerOhms: [22e3] }).tapVolts, 10);
  expect(loadedDivider.compute({ supplyVolts: 300, upperOhms: 47e3, lowerOhms: Number.POSITIVE_INFINITY }).tapVolts).toBe(300);
});

test("a loaded divider is its open voltage behind R1||R2", () => {
  // Thevenin's theorem, with a load that was not used to find the source.
  const divider = { supplyVolts: 250, upperOhms: 33e3, lowerOhms: 68e3 };
  const { tapVolts: open, sourceOhms } = loadedDivider.compute(divider);
  expect(loadedDivider.compute({ ...divider, loadOhms: 10e3 }).tapVolts).toBeCloseTo((open * 10e3) / (10e3 + sourceOhms), 9);
});

test("a bleeder divider, built, gives the voltage that was asked for", () => {
  const { bleederOhms, upperOhms } = bleederDivider.compute({ supplyVolts: 525, loadVolts: 425, loadAmps: 0.096, bleederAmps: 0.021 });
  const { tapVolts } = loadedDivider.compute({ supplyVolts: 525, upperOhms, lowerOhms: bleederOhms, loadOhms: 425 / 0.096 });
  expect(tapVolts).toBeCloseTo(425, 9);
});

test("a dropping resistor drops what it was made for; its load must lie below the supply", () => {
  const { ohms, watts } = droppingResistor.compute({ supplyVolts: 275, loadVolts: 110, amps: 0.125 });
  const made = resistorAtCurrent.compute({ amps: 0.125, ohms });
  expect(made.volts).toBeCloseTo(165, 10);
  expect(made.watts).toBeCloseTo(watts, 10);
  expect(() => droppingResistor.compute({ supplyVolts: 100, loadVolts: 100, amps: 1 })).toThrow("must be below supplyVolts");
});

test("power and its inverse", () => {
  const { amps } = resistorAtPower.compute({ watts: 5, ohms: 470 });
  expect(resistorAtCurrent.compute({ amps, ohms: 470 }).watts).toBeCloseTo(5, 12);
});

test("parallel: a short rules, an open circuit does not count, twice the values give twice the result", () => {
  expect(parallelResistance.compute({ ohms: [100, 0] }).totalOhms).toBe(0);
  expect(parallelResistance.compute({ ohms: [100, Number.POSITIVE_INFINITY] }).totalOhms).toBe(100);
  const one = parallelResistance.compute({ ohms: [10, 20, 50] }).totalOhms;
  expect(parallelResistance.compute({ ohms: [20, 40, 100] }).totalOhms).toBeCloseTo(2 * one, 12);
  expect(() => parallelResistance.compute({ ohms: [Number.POSITIVE_INFINITY] })).toThrow("no finite value");
});

test("a balanced bridge has no current; exchanging the sides reverses it", () => {
  const bridge = {
    supplyVolts: 10,
    firstUpperOhms: 500,
    firstLowerOhms: 600,
    secondUpperOhms: 500,
    secondLowerOhms: 400,
    detectorOhms: 100,
  };
  expect(bridgeDetector.compute({ ...bridge, secondLowerOhms: 600 }).detectorAmps).toBeCloseTo(0, 15);
  const exchanged = { ...bridge, firstLowerOhms: 400, secondLowerOhms: 600 };
  expect(bridgeDetector.compute(exchanged).detectorAmps).toBeCloseTo(-bridgeDetector.compute(bridge).detectorAmps, 15);
});

test("no load draws more power than the matched one", () => {
  const { watts } = maxPowerTransfer.compute({ openVolts: 11.2, sourceOhms: 0.8 });
  for (const loadOhms of [0.4, 0.79, 0.81, 1.6])
    expect(sourceIntoLoad.compute({ openVolts: 11.2, sourceOhms: 0.8, loadOhms }).watts).toBeLessThan(watts);
});

test("source resistance comes back from two loads", () => {
  const at = (loadOhms: number): { volts: number; amps: number } => {
    const { volts } = sourceIntoLoad.compute({ openVolts: 300, sourceOhms: 250, loadOhms });
    return { volts, amps: volts / loadOhms };
  };
  const [light, heavy] = [at(10e3), at(2e3)];
  const found = sourceResistance.compute({
    lightVolts: light.volts,
    lightAmps: light.amps,
    heavyVolts: heavy.volts,
    heavyAmps: heavy.amps,
  });
  expect(found.ohms).toBeCloseTo(250, 8);
});

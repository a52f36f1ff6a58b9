import { expect, test } from "vitest";
import { gasTubeStart } from "./gasTubeStart.ts";
import { regulatorCurrentCorners } from "./regulatorCurrentCorners.ts";
import { regulatorResistor } from "./regulatorResistor.ts";
import { regulatorResistorMinimum } from "./regulatorResistorMinimum.ts";
import { regulatorSlope } from "./regulatorSlope.ts";
import { shuntRegulator } from "./shuntRegulator.ts";

const tube = { supplyVolts: 250, regulatorVolts: 150, seriesOhms: 3300 };

test("currents at the tap add up, and power drawn is power turned into heat", () => {
  const out = shuntRegulator.compute({ ...tube, loadOhms: 10e3 });
  expect(out.seriesAmps).toBeCloseTo(out.deviceAmps + out.loadAmps, 12);
  expect(250 * out.seriesAmps).toBeCloseTo(out.seriesWatts + out.deviceWatts + 150 * out.loadAmps, 10);
});

test("a load that takes all starves the device, and the output falls", () => {
  const out = shuntRegulator.compute({ ...tube, loadOhms: 1000 });
  expect(out.deviceAmps).toBe(0);
  expect(out.outputVolts).toBe(out.openVolts);
  expect(out.outputVolts).toBeLessThan(150);
});

test("the largest resistor leaves just the least current, the smallest just the greatest", () => {
  const least = regulatorResistor.compute({ supplyVolts: 230, regulatorVolts: 150, minimumAmps: 5e-3, loadAmps: 15e-3 });
  const corners = { lowSupplyVolts: 230, highSupplyVolts: 270, regulatorVolts: 150, leastLoadAmps: 0, greatestLoadAmps: 15e-3 };
  expect(regulatorCurrentCorners.compute({ ...corners, seriesOhms: least.ohms }).leastAmps).toBeCloseTo(5e-3, 14);
  const greatest = regulatorResistorMinimum.compute({ supplyVolts: 270, regulatorVolts: 150, maximumAmps: 40e-3 });
  expect(regulatorCurrentCorners.compute({ ...corners, seriesOhms: greatest.ohms }).greatestAmps).toBeCloseTo(40e-3, 14);
});

test("without load a tube gets the whole supply to start on", () => {
  expect(gasTubeStart.compute({ supplyVolts: 250, seriesOhms: 3300, strikeVolts: 185 })).toEqual({ availableVolts: 250, marginVolts: 65 });
  expect(gasTubeStart.compute({ supplyVolts: 250, seriesOhms: 10e3, loadOhms: 10e3, strikeVolts: 185 }).marginVolts).toBe(-60);
});

test("a device without slope passes no ripple", () => {
  expect(regulatorSlope.compute({ amps: 0.02, slopeOhms: 0, seriesOhms: 270, rippleVolts: 2 })).toMatchObject({
    outputRippleVolts: 0,
    riseVolts: 0,
  });
});

test("a regulated voltage above the supply is refused", () => {
  expect(() => regulatorResistor.compute({ supplyVolts: 140, regulatorVolts: 150, minimumAmps: 5e-3, loadAmps: 0 })).toThrow(
    "must be below supplyVolts",
  );
});

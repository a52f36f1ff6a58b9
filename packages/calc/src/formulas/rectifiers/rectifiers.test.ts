import { expect, test } from "vitest";
import { bridgeResistive } from "./bridgeResistive.ts";
import { capacitorInputSourceResistance } from "./capacitorInputSourceResistance.ts";
import { chokeInputOutput } from "./chokeInputOutput.ts";
import { diodeString } from "./diodeString.ts";
import { fullWaveCenterTapResistive } from "./fullWaveCenterTapResistive.ts";
import { halfWaveResistive } from "./halfWaveResistive.ts";
import { multiplierLadder } from "./multiplierLadder.ts";
import { sineFromPeak } from "./sineFromPeak.ts";
import { sineFromRms } from "./sineFromRms.ts";
import { surgeResistor } from "./surgeResistor.ts";
import { vacuumDiodeDrop } from "./vacuumDiodeDrop.ts";

/** Mean and RMS of a rectified sine summed point by point: independent of the closed forms. */
function summed(halves: 1 | 2): { mean: number; rms: number } {
  const points = 100_000;
  let [sum, squares] = [0, 0];
  for (let index = 0; index < points; index += 1) {
    const sine = Math.sin((2 * Math.PI * (index + 0.5)) / points);
    const value = halves === 2 ? Math.abs(sine) : Math.max(0, sine);
    sum += value;
    squares += value ** 2;
  }
  return { mean: sum / points, rms: Math.sqrt(squares / points) };
}

test.each([
  ["half wave", halfWaveResistive, 1],
  ["center tap", fullWaveCenterTapResistive, 2],
  ["bridge", bridgeResistive, 2],
] as const)("%s: average, RMS and ripple agree with the sum over a cycle", (_, formula, halves) => {
  const { mean, rms } = summed(halves);
  const out = formula.compute({ peakVolts: 1, loadOhms: 1 });
  expect(out.averageVolts).toBeCloseTo(mean, 8);
  expect(out.rmsAmps).toBeCloseTo(rms, 8);
  expect(out.rippleVolts).toBeCloseTo(Math.sqrt(rms ** 2 - mean ** 2), 8);
});

test("the textbook efficiencies of ideal rectifiers: 4/pi^2 and 8/pi^2", () => {
  expect(halfWaveResistive.compute({ peakVolts: 100, loadOhms: 1000 }).efficiency).toBeCloseTo(4 / Math.PI ** 2, 12);
  expect(bridgeResistive.compute({ peakVolts: 100, loadOhms: 1000 }).efficiency).toBeCloseTo(8 / Math.PI ** 2, 12);
});

test("a diode drop as large as the peak is refused", () => {
  expect(() => bridgeResistive.compute({ peakVolts: 1.4, loadOhms: 100, dropVolts: 0.7 })).toThrow("must leave something of peakVolts");
});

test("peak to RMS and back", () => {
  const { peakVolts } = sineFromRms.compute({ rmsVolts: 350 });
  expect(sineFromPeak.compute({ peakVolts }).rmsVolts).toBeCloseTo(350, 10);
});

test("capacitor input: no source resistance gives the peak, much of it the average of a rectifier into a resistor", () => {
  expect(capacitorInputSourceResistance.compute({ peakVolts: 1, sourceOhms: 1e-9, loadOhms: 1 }).outputVolts).toBeCloseTo(1, 5);
  // For Rs >> RL the load sees a current of sine halves: Vdc = (2 Vp/pi) RL/Rs.
  const { outputVolts } = capacitorInputSourceResistance.compute({ peakVolts: 1, sourceOhms: 100, loadOhms: 1 });
  expect(outputVolts / (2 / Math.PI / 100)).toBeCloseTo(1, 1);
});

test("choke input: voltage scales with the peak, and the losses add up", () => {
  const at = (peakVolts: number) => chokeInputOutput.compute({ peakVolts, loadOhms: 750, chokeOhms: 25 });
  expect(at(500).outputVolts).toBeCloseTo(10 * at(50).outputVolts, 9);
  expect(at(500).outputVolts + at(500).chokeVolts).toBeCloseTo(at(500).idealVolts, 9);
});

test("a ladder grows with its stages", () => {
  const one = multiplierLadder.compute({ peakVolts: 165, stages: 1, dropVolts: 1 }).outputVolts;
  expect(multiplierLadder.compute({ peakVolts: 165, stages: 3, dropVolts: 1 }).outputVolts).toBe(3 * one);
});

test("a vacuum diode follows the three-halves power: eight times the current at four times the voltage", () => {
  const drop = (amps: number): number => vacuumDiodeDrop.compute({ amps, perveance: 3e-4 }).volts;
  expect(drop(0.08) / drop(0.01)).toBeCloseTo(4, 12);
  expect(drop(0)).toBe(0);
});

test("a string that just suffices gets no diode more; enough resistance gets none more", () => {
  expect(diodeString.compute({ inverseVolts: 1000, diodeVolts: 1000, margin: 2 }).count).toBe(2);
  expect(surgeResistor.compute({ rmsVolts: 100, surgeAmps: 30, sourceOhms: 50 }).ohms).toBe(0);
});

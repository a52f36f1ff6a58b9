import { expect, test } from "vitest";
import { amplificationFactor } from "./amplificationFactor.ts";
import { cathodeBypassCorner } from "./cathodeBypassCorner.ts";
import { cathodeFollower } from "./cathodeFollower.ts";
import { classBOutput } from "./classBOutput.ts";
import { couplingCorner } from "./couplingCorner.ts";
import { couplingLeakage } from "./couplingLeakage.ts";
import { diodePerveance } from "./diodePerveance.ts";
import { modulatedPower } from "./modulatedPower.ts";
import { negativeFeedback } from "./negativeFeedback.ts";
import { pentodeGain } from "./pentodeGain.ts";
import { rcCorner } from "./rcCorner.ts";
import { triodeGain } from "./triodeGain.ts";
import { triodeLaw } from "./triodeLaw.ts";
import { triodePower } from "./triodePower.ts";
import { tubeConstantsFromGains } from "./tubeConstantsFromGains.ts";

const tube = { amplificationFactor: 20, plateOhms: 7700 };

test("the gain rises towards mu with the load, and an unbypassed cathode lowers it", () => {
  expect(triodeGain.compute({ ...tube, loadOhms: 1e12 }).gain).toBeCloseTo(20, 6);
  const bypassed = triodeGain.compute({ ...tube, loadOhms: 47e3 }).gain;
  expect(triodeGain.compute({ ...tube, loadOhms: 47e3, cathodeOhms: 1000 }).gain).toBeLessThan(bypassed);
});

test("triode and pentode formulas agree where gm = mu/rp", () => {
  const { gain } = triodeGain.compute({ ...tube, loadOhms: 47e3 });
  expect(pentodeGain.compute({ transconductance: 20 / 7700, plateOhms: 7700, loadOhms: 47e3 }).gain).toBeCloseTo(gain, 10);
  expect(amplificationFactor.compute({ transconductance: 20 / 7700, plateOhms: 7700 }).amplificationFactor).toBeCloseTo(20, 12);
});

test("tube constants come back from two gains", () => {
  const at = (loadOhms: number): number => triodeGain.compute({ ...tube, loadOhms }).gain;
  const found = tubeConstantsFromGains.compute({ firstGain: at(10e3), firstLoadOhms: 10e3, secondGain: at(33e3), secondLoadOhms: 33e3 });
  expect(found.plateOhms).toBeCloseTo(7700, 6);
  expect(found.amplificationFactor).toBeCloseTo(20, 9);
});

test("a cathode follower is a stage of gain mu with all of its output fed back", () => {
  // Same load in the plate, feedback of everything: A/(1 + A).
  const { gain } = triodeGain.compute({ ...tube, loadOhms: 22e3 });
  const fed = negativeFeedback.compute({ gain, feedback: 1 }).closedGain;
  expect(cathodeFollower.compute({ ...tube, cathodeOhms: 22e3 }).gain).toBeCloseTo(fed, 12);
});

test("the derivatives of the power law agree with small steps", () => {
  const point = { factor: 4e-6, plateVolts: 250, gridVolts: -3, amplificationFactor: 40 };
  const amps = (change: Partial<typeof point>): number => triodeLaw.compute({ ...point, ...change }).plateAmps;
  const { transconductance, plateOhms } = triodeLaw.compute(point);
  expect((amps({ gridVolts: -2.999 }) - amps({ gridVolts: -3.001 })) / 0.002 / transconductance).toBeCloseTo(1, 6);
  expect(0.02 / (amps({ plateVolts: 250.01 }) - amps({ plateVolts: 249.99 })) / plateOhms).toBeCloseTo(1, 6);
  expect(() => triodeLaw.compute({ ...point, gridVolts: -6.25 })).toThrow("must lie above cut-off");
});

test("perveance and the law with mu 1 and no grid voltage are each other's inverse", () => {
  const { perveance } = diodePerveance.compute({ amps: 0.125, volts: 60 });
  expect(triodeLaw.compute({ factor: perveance, plateVolts: 60, gridVolts: 0, amplificationFactor: 1 }).plateAmps).toBeCloseTo(0.125, 12);
});

test("corners: twice the capacitance, half the frequency; a corner without source is the plain one", () => {
  const { hertz } = couplingCorner.compute({ farads: 1e-8, gridOhms: 470e3 });
  expect(couplingCorner.compute({ farads: 2e-8, gridOhms: 470e3 }).hertz).toBeCloseTo(hertz / 2, 10);
  expect(rcCorner.compute({ ohms: [470e3], farads: 1e-8 }).hertz).toBeCloseTo(hertz, 10);
  const { seenOhms } = cathodeBypassCorner.compute({
    farads: 25e-6,
    cathodeOhms: 1500,
    plateOhms: 62.5e3,
    loadOhms: 100e3,
    amplificationFactor: 100,
  });
  expect(seenOhms).toBeLessThan(1500);
});

test("a capacitor that does not leak moves no grid, a shorted one puts the whole plate voltage there", () => {
  const stage = { sourceVolts: 300, gridOhms: 470e3 };
  expect(couplingLeakage.compute({ ...stage, leakOhms: Number.POSITIVE_INFINITY }).riseVolts).toBe(0);
  expect(couplingLeakage.compute({ ...stage, leakOhms: 0 }).riseVolts).toBe(300);
  const { leastLeakOhms } = couplingLeakage.compute({ ...stage, leakOhms: 1e9, allowedVolts: 0.5 });
  expect(couplingLeakage.compute({ ...stage, leakOhms: leastLeakOhms }).riseVolts).toBeCloseTo(0.5, 12);
});

test("no load gives more power than one of rp", () => {
  const watts = (loadOhms: number): number => triodePower.compute({ ...tube, gridPeakVolts: 8, loadOhms }).watts;
  expect(watts(7700)).toBeGreaterThan(watts(7000));
  expect(watts(7700)).toBeGreaterThan(watts(8400));
});

test("class B: what goes in comes out or heats the plates, pi/4 at most comes out", () => {
  const out = classBOutput.compute({ supplyVolts: 400, minimumVolts: 60, loadOhms: 8000 });
  expect(out.outputWatts + out.plateWatts).toBeCloseTo(400 * out.averageAmps, 10);
  expect(out.efficiency).toBeCloseTo((Math.PI / 4) * (340 / 400), 12);
});

test("full modulation: half as much again on average, four times at the crest", () => {
  expect(modulatedPower.compute({ carrierWatts: 100, modulation: 1 })).toEqual({ totalWatts: 150, sidebandWatts: 50, envelopeWatts: 400 });
});

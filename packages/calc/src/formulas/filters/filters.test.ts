import { expect, test } from "vitest";
import { bleederForChoke } from "./bleederForChoke.ts";
import { chokeCapacitorChoke } from "./chokeCapacitorChoke.ts";
import { criticalInductance } from "./criticalInductance.ts";
import { inductorFilterRipple } from "./inductorFilterRipple.ts";
import { inductorForRippleFactor } from "./inductorForRippleFactor.ts";
import { lcSectionFactor } from "./lcSectionFactor.ts";
import { lSectionCapacitor } from "./lSectionCapacitor.ts";
import { lSectionRipple } from "./lSectionRipple.ts";
import { rcSectionFactor } from "./rcSectionFactor.ts";
import { reservoirForRipple } from "./reservoirForRipple.ts";
import { reservoirRipple } from "./reservoirRipple.ts";
import { rippleFromPeakToPeak } from "./rippleFromPeakToPeak.ts";

test("RMS of a sawtooth agrees with the sum over its points", () => {
  const points = 20_000;
  const squares = Array.from({ length: points }, (_, index) => ((index + 0.5) / points - 0.5) ** 2).reduce((sum, each) => sum + each, 0);
  const { sawtoothFactor } = rippleFromPeakToPeak.compute({ peakToPeakVolts: 1, averageVolts: 1 });
  expect(sawtoothFactor).toBeCloseTo(Math.sqrt(squares / points), 8);
});

test("reservoir and ripple are each other's inverse; half the pulses, twice the ripple", () => {
  const { farads } = reservoirForRipple.compute({ amps: 0.1, peakToPeakVolts: 8, lineHertz: 60 });
  const ripple = (pulses: number): number => reservoirRipple.compute({ amps: 0.1, farads, lineHertz: 60, pulses }).peakToPeakVolts;
  expect(ripple(2)).toBeCloseTo(8, 12);
  expect(ripple(1)).toBeCloseTo(16, 12);
  expect(reservoirRipple.compute({ amps: 0, farads, lineHertz: 60 }).peakToPeakVolts).toBe(0);
});

test("choke and ripple factor are each other's inverse, with a capacitor and without", () => {
  const { henries } = inductorForRippleFactor.compute({ loadOhms: 5000, rippleFactor: 0.05, lineHertz: 60 });
  expect(inductorFilterRipple.compute({ loadOhms: 5000, henries, lineHertz: 60 }).rippleFactor).toBeCloseTo(0.05, 12);
  const { farads } = lSectionCapacitor.compute({ henries: 8, rippleFactor: 0.01, lineHertz: 60 });
  expect(lSectionRipple.compute({ henries: 8, farads, lineHertz: 60 }).rippleFactor).toBeCloseTo(0.01, 12);
});

test("the L section is the full-wave ripple of 0.4714 through the LC section at twice the line frequency", () => {
  // Fourier series of a rectified sine: second harmonic 4/(3 pi) of the peak, RMS over average sqrt(2)/3.
  const { factor } = lcSectionFactor.compute({ henries: 10, farads: 40e-6, rippleHertz: 120 });
  const { rippleFactor } = lSectionRipple.compute({ henries: 10, farads: 40e-6, lineHertz: 60 });
  expect(rippleFactor / ((Math.SQRT2 / 3) * factor)).toBeCloseTo(1, 2);
});

test("an LC section near its resonance is refused", () => {
  expect(() => lcSectionFactor.compute({ henries: 1, farads: 1e-6, rippleHertz: 160 })).toThrow("rippleHertz");
});

test("a filter without a second choke and with a light load is the LC section", () => {
  const { factor } = lcSectionFactor.compute({ henries: 3, farads: 20e-6, rippleHertz: 120 });
  const filter = { inputVolts: 1, firstHenries: 3, farads: 20e-6, secondHenries: 1e-9, loadOhms: 1e9, rippleHertz: 120 };
  expect(chokeCapacitorChoke.compute(filter).factor).toBeCloseTo(factor, 9);
});

test("an RC section without resistor passes all, at its corner 1/sqrt(2)", () => {
  expect(rcSectionFactor.compute({ ohms: 0, farads: 1e-5, rippleHertz: 120 }).factor).toBe(1);
  const farads = 1 / (2 * Math.PI * 120 * 1000);
  expect(rcSectionFactor.compute({ ohms: 1000, farads, rippleHertz: 120 }).factor).toBeCloseTo(Math.SQRT1_2, 12);
});

test("the bleeder for a choke makes that choke critical", () => {
  const { ohms } = bleederForChoke.compute({ henries: 12, lineHertz: 60 });
  expect(criticalInductance.compute({ loadOhms: ohms, lineHertz: 60 }).criticalHenries).toBeCloseTo(12, 12);
  // Published divisor for 60 Hz.
  expect(criticalInductance.compute({ loadOhms: 1131, lineHertz: 60 }).criticalHenries).toBeCloseTo(1, 4);
});

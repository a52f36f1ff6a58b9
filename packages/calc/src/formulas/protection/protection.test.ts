import { expect, test } from "vitest";
import { rcDischarge } from "../transients/rcDischarge.ts";
import { balancingResistor } from "./balancingResistor.ts";
import { bleederForTime } from "./bleederForTime.ts";
import { dischargeResistor } from "./dischargeResistor.ts";
import { electrolyticLeakageLimit } from "./electrolyticLeakageLimit.ts";
import { electrolyticLife } from "./electrolyticLife.ts";
import { fusePulseDerating } from "./fusePulseDerating.ts";
import { lineCapacitorCurrent } from "./lineCapacitorCurrent.ts";
import { lineCapacitorLimit } from "./lineCapacitorLimit.ts";
import { ntcResistance } from "./ntcResistance.ts";
import { pulseIntegral } from "./pulseIntegral.ts";
import { reformingResistor } from "./reformingResistor.ts";
import { resistorDerating } from "./resistorDerating.ts";
import { resistorVoltageLimit } from "./resistorVoltageLimit.ts";
import { trapezoidIntegral } from "./trapezoidIntegral.ts";
import { wireGauge } from "./wireGauge.ts";

test("capacitance for a touch current gives that current", () => {
  const { farads } = lineCapacitorLimit.compute({ amps: 0.25e-3, volts: 126, hertz: 60 });
  expect(lineCapacitorCurrent.compute({ farads, volts: 126, hertz: 60 }).amps).toBeCloseTo(0.25e-3, 15);
});

test("a discharge resistor reaches its voltage in its time; one that starts below it is refused", () => {
  const { ohms } = dischargeResistor.compute({ rmsVolts: 230, limitVolts: 34, seconds: 1, farads: 0.47e-6 });
  expect(rcDischarge.compute({ startVolts: Math.SQRT2 * 230, ohms, farads: 0.47e-6, seconds: 1 }).volts).toBeCloseTo(34, 10);
  expect(() => dischargeResistor.compute({ rmsVolts: 24, limitVolts: 34, seconds: 1, farads: 1e-6 })).toThrow("crest of the line");
  const bleeder = bleederForTime.compute({ volts: 450, limitVolts: 50, seconds: 30, farads: 80e-6 });
  expect(rcDischarge.compute({ startVolts: 450, ohms: bleeder.ohms, farads: 80e-6, seconds: 30 }).volts).toBeCloseTo(50, 10);
});

test("a thermistor has its cold resistance at 25 degC and less when hot", () => {
  expect(ntcResistance.compute({ coldOhms: 47, beta: 3000, temperature: 298.15 }).ohms).toBeCloseTo(47, 12);
  expect(ntcResistance.compute({ coldOhms: 47, beta: 3000, temperature: 400 }).ohms).toBeLessThan(4);
});

/** Integral of the square of a shape of height 1 over 1 s, summed point by point. */
function summed(shape: (at: number) => number, until = 1): number {
  const points = 200_000;
  return (
    Array.from({ length: points }, (_, index) => shape(((index + 0.5) / points) * until) ** 2).reduce((sum, each) => sum + each, 0) *
    (until / points)
  );
}

test("melting integrals agree with the sum over each shape", () => {
  const pulse = pulseIntegral.compute({ peakAmps: 1, seconds: 1 });
  expect(pulse.rectangle).toBe(1);
  expect(pulse.halfSine).toBeCloseTo(
    summed((at) => Math.sin(Math.PI * at)),
    8,
  );
  expect(pulse.triangle).toBeCloseTo(
    summed((at) => 1 - at),
    8,
  );
  expect(pulse.parabola).toBeCloseTo(
    summed((at) => (1 - at) ** 2),
    8,
  );
  expect(pulse.exponential).toBeCloseTo(
    summed((at) => Math.exp(-at), 20),
    6,
  );
  expect(trapezoidIntegral.compute({ startAmps: 2, endAmps: 5, seconds: 1 }).integral).toBeCloseTo(
    summed((at) => 2 + 3 * at),
    7,
  );
  expect(trapezoidIntegral.compute({ startAmps: 3, endAmps: 3, seconds: 2 }).integral).toBe(18);
});

test("more pulses, less of the melting integral", () => {
  const shares = [100, 300, 1000, 3000, 10_000, 30_000, 100_000].map((pulses) => fusePulseDerating.compute({ pulses }).share);
  expect(shares.every((share, index) => index === 0 || share < (shares[index - 1] ?? 0))).toBe(true);
});

test("derating: the whole rating up to its temperature, half in the middle, nothing at the end", () => {
  const resistor = { ratedWatts: 2, zeroTemperature: 428.15 };
  const watts = (ambient: number): number => resistorDerating.compute({ ...resistor, ambient }).watts;
  expect(watts(298.15)).toBe(2);
  expect(watts((343.15 + 428.15) / 2)).toBeCloseTo(1, 12);
  expect(watts(428.15)).toBe(0);
});

test("at the critical resistance power and voltage limits meet", () => {
  const { criticalOhms } = resistorVoltageLimit.compute({ ratedWatts: 0.5, ohms: 1, limitVolts: 350 });
  expect(Math.sqrt(0.5 * criticalOhms)).toBeCloseTo(350, 10);
  expect(resistorVoltageLimit.compute({ ratedWatts: 0.5, ohms: criticalOhms / 4, limitVolts: 350 }).volts).toBeCloseTo(175, 10);
});

test("ten degrees cooler, twice the life; hotter than rated is refused", () => {
  const life = (temperature: number): number => electrolyticLife.compute({ ratedLife: 1, ratedTemperature: 378.15, temperature }).life;
  expect(life(378.15)).toBe(1);
  expect(life(358.15)).toBeCloseTo(4, 12);
  expect(() => life(380)).toThrow("must not be above ratedTemperature");
});

test("leakage limits step with the rated voltage where the standard says", () => {
  const limit = (ratedVolts: number): number => electrolyticLeakageLimit.compute({ farads: 1e-5, ratedVolts }).jointLimitAmps;
  expect([limit(100), limit(101), limit(251), limit(351)].map((amps) => amps * 1e3)).toEqual(
    [0.4, 0.5, 0.55, 0.7].map((each) => expect.closeTo(each, 10)),
  );
});

test("balancing resistors keep the leakier capacitor within its rating", () => {
  // The leakier one lies across R||leak; with the whole spread in one resistor: V1 - V2 = dI R.
  const { ohms } = balancingResistor.compute({ ratedVolts: 450, busVolts: 700, leakageSpreadAmps: 105e-6 });
  expect((700 + 105e-6 * ohms) / 2).toBeCloseTo(450, 9);
});

test("a reforming resistor passes its limit into a short and no more", () => {
  const { ohms, watts } = reformingResistor.compute({ volts: 450, farads: 4e-5 });
  expect(450 / ohms).toBeCloseTo(5e-3, 15);
  expect(watts).toBeCloseTo(450 ** 2 / ohms, 12);
});

test("six gauges are half the diameter, near enough, and four times the resistance", () => {
  const [thick, thin] = [wireGauge.compute({ gauge: 18 }), wireGauge.compute({ gauge: 24 })];
  expect(thick.diameter / thin.diameter).toBeCloseTo(92 ** (6 / 39), 12);
  expect(thin.ohms / thick.ohms).toBeCloseTo((thick.diameter / thin.diameter) ** 2, 10);
});

import { expect, test } from "vitest";
import { capacitanceForEnergy } from "./capacitanceForEnergy.ts";
import { capacitorEnergy } from "./capacitorEnergy.ts";
import { rcCharge } from "./rcCharge.ts";
import { rcDischarge } from "./rcDischarge.ts";
import { rcDischargeTime } from "./rcDischargeTime.ts";
import { rlRise } from "./rlRise.ts";
import { seriesCapacitance } from "./seriesCapacitance.ts";
import { seriesCapacitorShare } from "./seriesCapacitorShare.ts";
import { timeConstantsPassed } from "./timeConstantsPassed.ts";

test("discharge time and discharge are each other's inverse", () => {
  const { seconds } = rcDischargeTime.compute({ startVolts: 450, endVolts: 50, ohms: 220e3, farads: 40e-6 });
  expect(rcDischarge.compute({ startVolts: 450, ohms: 220e3, farads: 40e-6, seconds }).volts).toBeCloseTo(50, 10);
  expect(() => rcDischargeTime.compute({ startVolts: 50, endVolts: 50, ohms: 1, farads: 1 })).toThrow("must be below startVolts");
});

test("charging begins with the whole current and ends with the whole voltage; loop voltages add up on the way", () => {
  const circuit = { supplyVolts: 300, ohms: 1e5, farads: 1e-5 };
  expect(rcCharge.compute({ ...circuit, seconds: 0 })).toMatchObject({ volts: 0, amps: 3e-3 });
  expect(rcCharge.compute({ ...circuit, seconds: 100 }).volts).toBeCloseTo(300, 10);
  const { volts, amps } = rcCharge.compute({ ...circuit, seconds: 0.7 });
  expect(volts + amps * 1e5).toBeCloseTo(300, 10);
});

test("an inductor keeps its current at the first moment and is a short at the end", () => {
  const circuit = { supplyVolts: 15, ohms: 2, henries: 1, startAmps: 5 };
  expect(rlRise.compute({ ...circuit, seconds: 0 })).toMatchObject({ amps: 5, inductorVolts: 5 });
  const end = rlRise.compute({ ...circuit, seconds: 50 });
  expect(end.amps).toBeCloseTo(7.5, 12);
  expect(end.inductorVolts).toBeCloseTo(0, 12);
});

test("energy and capacitance are each other's inverse; twice the voltage, four times the energy", () => {
  const { farads } = capacitanceForEnergy.compute({ joules: 10, volts: 450 });
  expect(capacitorEnergy.compute({ farads, volts: 450 }).joules).toBeCloseTo(10, 12);
  expect(capacitorEnergy.compute({ farads, volts: 900 }).joules).toBeCloseTo(40, 12);
});

test("capacitors in series carry one charge", () => {
  const { firstVolts, secondVolts } = seriesCapacitorShare.compute({ volts: 400, firstFarads: 1e-5, secondFarads: 4.7e-5 });
  const { totalFarads } = seriesCapacitance.compute({ farads: [1e-5, 4.7e-5] });
  expect(firstVolts * 1e-5).toBeCloseTo(400 * totalFarads, 12);
  expect(firstVolts + secondVolts).toBeCloseTo(400, 10);
});

test("nothing has passed at the start", () => {
  expect(timeConstantsPassed.compute({ count: 0 })).toMatchObject({ left: 1 });
  expect(Math.abs(timeConstantsPassed.compute({ count: 0 }).done)).toBe(0);
});

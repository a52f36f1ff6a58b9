import { expect, test } from "vitest";
import { heaterCapacitor } from "./heaterCapacitor.ts";
import { heaterShunt } from "./heaterShunt.ts";
import { heaterString } from "./heaterString.ts";
import { matchingRatio } from "./matchingRatio.ts";
import { reflectedImpedance } from "./reflectedImpedance.ts";
import { toroidTurns } from "./toroidTurns.ts";
import { turnsVoltage } from "./turnsVoltage.ts";
import { voltAmperes } from "./voltAmperes.ts";

test("the matching ratio reflects the load that it was made for", () => {
  const { ratio } = matchingRatio.compute({ primaryOhms: 5000, secondaryOhms: 3.2 });
  expect(reflectedImpedance.compute({ secondaryOhms: 3.2, ratio }).primaryOhms).toBeCloseTo(5000, 9);
  expect(reflectedImpedance.compute({ secondaryOhms: 0, ratio }).primaryOhms).toBe(0);
});

test("up and down again by the same turns gives the voltage back", () => {
  const { secondaryVolts } = turnsVoltage.compute({ primaryVolts: 117, primaryTurns: 351, secondaryTurns: 19 });
  expect(turnsVoltage.compute({ primaryVolts: secondaryVolts, primaryTurns: 19, secondaryTurns: 351 }).secondaryVolts).toBeCloseTo(117, 12);
});

test("string resistor and heaters together take the line", () => {
  const { ohms, sumVolts } = heaterString.compute({ lineVolts: 117, heaterVolts: [6.3, 6.3, 6.3, 25, 25], heaterAmps: 0.3 });
  expect(sumVolts + 0.3 * ohms).toBeCloseTo(117, 12);
  expect(heaterString.compute({ lineVolts: 117, heaterVolts: [50, 50, 35], heaterAmps: 0.15 })).toMatchObject({
    dropVolts: -18,
    ohms: 0,
    watts: 0,
  });
});

test("a dropping capacitor and the heaters add up in quadrature", () => {
  const { farads, capacitorVolts } = heaterCapacitor.compute({ lineVolts: 117, heaterVolts: 68.9, heaterAmps: 0.15, hertz: 60 });
  expect(Math.hypot(capacitorVolts, 68.9)).toBeCloseTo(117, 12);
  expect(2 * Math.PI * 60 * farads * capacitorVolts).toBeCloseTo(0.15, 12);
  expect(() => heaterCapacitor.compute({ lineVolts: 117, heaterVolts: 120, heaterAmps: 0.15, hertz: 60 })).toThrow(
    "must be below lineVolts",
  );
});

test("currents and voltages of secondaries must be as many", () => {
  expect(() => voltAmperes.compute({ secondaryVolts: [6.3, 5], secondaryAmps: [3], primaryVolts: 117 })).toThrow("must be as many");
});

test("a heater that takes the whole string current needs no shunt; four times the inductance twice the turns", () => {
  expect(() => heaterShunt.compute({ heaterVolts: 6.3, heaterAmps: 0.3, stringAmps: 0.3 })).toThrow("must be above heaterAmps");
  const turns = (henries: number): number => toroidTurns.compute({ henries, inductanceFactor: 4e-9 }).turns;
  expect(turns(4e-5)).toBeCloseTo(2 * turns(1e-5), 10);
});

import { expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";

const stateOf = (marked: string) =>
  modelOf({ parts: [{ name: "L", kind: "load", between: ["B+", "chassis"], marked }] }).parts.get("L")!.lives.designed;

// A load with a voltage draws less when the supply sags: R = V / I, R = V^2 / P.
it.each([
  ["60 mA", { amps: 0.06 }],
  ["5 kohm", { ohms: 5000 }],
  ["60 mA at 250 V", { ohms: 250 / 0.06 }],
  ["15 W at 250 V", { ohms: 250 ** 2 / 15 }],
  ["810 ohm 121.5 V", { ohms: 810 }],
])("%s", (marked, expected) => {
  const { load } = stateOf(marked);
  const [[key, value] = ["", 0]] = Object.entries(expected);
  expect(Object.keys(load ?? {})).toEqual([key]);
  expect((load as unknown as Record<string, number>)[key]).toBeCloseTo(value, 9);
});

it("keeps the voltage that it is marked for", () => {
  expect(stateOf("810 ohm 121.5 V").ratedVolts).toBe(121.5);
  expect(stateOf("60 mA").ratedVolts).toBeUndefined();
});

import { type Element, type Network, operatingPoint, type PentodeParameters } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { plateAmps, screenAmps } from "../../scripts/fit/plate-current.ts";
import { distancesOf, voltsOf } from "../../scripts/fit/residuals.ts";
import { amplifiersOf, tubeFiles } from "./tubeRecords.ts";

/** What a model is to reach at every published point; new tubes themselves spread three times as far (maker-sheets-current). */
const AIM = { plateAmps: 0.1, transconductance: 0.15 } as const;
/** Screen current at rest in class A; near cut-off, as in class AB, the published screen equation falls short and the record says how far. */
const SCREEN_AIM = 0.2;
/** Points that miss the aim, by record and number; each point's own note says why. */
const MISSED: Readonly<Record<string, readonly number[]>> = { "25l6gt": [2], "50l6gt": [2], "6w6gt": [2] };
/** The screen equation has one free constant; it cannot hold 12 mA, 4 mA and the 1.5 mA of class AB at once. */
const SCREEN_MISSED: Readonly<Record<string, readonly number[]>> = { ...MISSED, "6550": [1, 2] };

const amplifiers = tubeFiles.flatMap(amplifiersOf);
const points = amplifiers.flatMap((unit) =>
  unit.tube.typical.flatMap((point, i) => {
    const at = (point.unit ?? 1) === unit.number ? voltsOf(point) : undefined;
    return at ? [{ name: `${unit.tube.id}, point ${i + 1}`, number: i + 1, unit, point, at }] : [];
  }),
);
const statedAt = ({ unit, number }: (typeof points)[number]) => unit.distance.find(({ point }) => point === number);
const isMissed = ({ unit, number }: (typeof points)[number], list = MISSED) => list[unit.tube.id]?.includes(number) ?? false;

describe("amplifier models against the published points of their records", () => {
  it("covers the types", () => {
    expect(amplifiers.length).toBeGreaterThan(90);
    expect(points.length).toBeGreaterThan(150);
  });

  it.each(amplifiers)("$tube.id, unit $number: the distances stated in the record are the true ones", (unit) => {
    const true_ = distancesOf(unit.parameters, unit.tube.typical, unit.number);
    expect(true_.length).toBeGreaterThan(0);
    expect(unit.distance).toEqual(true_);
  });

  it.each(points.filter((each) => !isMissed(each)))("$name: plate current and transconductance within the aim", (each) => {
    const stated = statedAt(each);
    expect(Math.abs(stated?.plateAmps ?? 1)).toBeLessThanOrEqual(AIM.plateAmps);
    if (each.point.siemens === undefined || each.unit.tube.class === "converter") return;
    expect(Math.abs(stated?.transconductance ?? 1)).toBeLessThanOrEqual(AIM.transconductance);
  });

  it.each(
    points.filter((each) => each.point.screenAmps !== undefined && !isMissed(each, SCREEN_MISSED) && !/AB1/.test(each.point.service)),
  )("$name: screen current within the aim", (each) => expect(Math.abs(statedAt(each)?.screenAmps ?? 1)).toBeLessThanOrEqual(SCREEN_AIM));

  it.each(points.filter((each) => isMissed(each)))("$name misses the aim, and its note says why", (each) => {
    expect(Math.abs(statedAt(each)?.plateAmps ?? 0)).toBeGreaterThan(AIM.plateAmps);
    expect(each.point.note ?? "").toMatch(/doubt/i);
    expect(each.unit.tube.note).toMatch(/doubtful/);
  });

  it("lists no miss that is none", () => {
    for (const [id, numbers] of Object.entries(MISSED))
      expect(points.filter(({ unit }) => unit.tube.id === id).map(({ number }) => number)).toEqual(expect.arrayContaining([...numbers]));
  });
});

describe("the circuit engine and the equations written apart from it", () => {
  it.each(points)("$name: same plate and screen current", ({ unit, at }) => {
    const source = (id: string, point: string, dcVolts: number): Element => ({ kind: "voltage-source", id, nodes: [point, "0"], dcVolts });
    const elements: Element[] = [source("ep", "plate", at.plateVolts), source("eg", "grid", at.gridVolts)];
    if (unit.kind === "pentode") {
      elements.push(source("es", "screen", at.screenVolts ?? 0));
      const nodes = { plate: "plate", screen: "screen", grid: "grid", cathode: "0" };
      elements.push({ kind: "pentode", id: "tube", nodes, parameters: unit.parameters as PentodeParameters });
    } else
      elements.push({ kind: "triode", id: "tube", nodes: { plate: "plate", grid: "grid", cathode: "0" }, parameters: unit.parameters });
    const network: Network = { elements, reference: "0" };
    const state = operatingPoint(network);
    // The engine adds an insulation leak to every port, far below 1e-6 A.
    expect(Math.abs(state.read({ quantity: "dc-amps", element: "ep" }) + plateAmps(unit.parameters, at))).toBeLessThan(2e-6);
    if (unit.kind === "pentode")
      expect(Math.abs(state.read({ quantity: "dc-amps", element: "es" }) + screenAmps(unit.parameters, at))).toBeLessThan(2e-6);
  });
});

describe("published figures among themselves", () => {
  // Definition of the three. The printed figures have two to three digits; the sheet of the 6U8A itself is 6 % off.
  it.each(points.filter(({ point }) => point.siemens && point.mu && point.plateOhms))(
    "$name: mu is transconductance times plate resistance",
    ({ point, unit }) => {
      const { siemens = 0, plateOhms = 0, mu = 1 } = point;
      expect(Math.abs((siemens * plateOhms) / mu - 1)).toBeLessThan(unit.tube.id === "6u8a" ? 0.07 : 0.03);
    },
  );
});

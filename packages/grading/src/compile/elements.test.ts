import type { Element } from "@underchassis/calc";
import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import type { WindingSpec } from "../model/index.ts";
import { modelOf, type TestJob } from "../testing/model.ts";
import { referenceDataset } from "../testing/referenceDataset.ts";
import { openVolts } from "./elements.ts";

function compiled(parts: JobPart[], rest: TestJob = {}, condition = "operating") {
  return modelOf({ parts, ...rest }, referenceDataset()).compile({ life: "found", condition, line: "design" });
}
/** The elements of one part alone, between "a" and "b" unless it says otherwise. */
const elementsOf = (part: Partial<JobPart> & Pick<JobPart, "kind">, rest: TestJob = {}, condition = "operating"): Element[] => [
  ...compiled([{ name: "X", between: ["a", "b"], ...part }], rest, condition).network.elements,
];

describe("open-circuit volts of a winding", () => {
  const primary: WindingSpec = { id: "primary", points: ["p", "q"], ratedVolts: 117, ohms: 4, ohmsFrom: "marking", centerTapped: false };
  const hv = (rest: Partial<WindingSpec>): WindingSpec => ({
    id: "hv",
    points: ["a", "c", "b"],
    ratedVolts: 350,
    ohms: 200,
    ohmsFrom: "marking",
    centerTapped: true,
    ...rest,
  });

  it("are the rating where it names no current", () => {
    expect(openVolts(hv({}), primary)).toBe(350);
  });

  it("are the rating and the drop at that current, in one side and in the reflected primary", () => {
    // 0.1 A x (100 + (350/117)^2 x 4) on top of 350 V.
    expect(openVolts(hv({ ratedAmps: 0.1 }), primary)).toBeCloseTo(350 + 0.1 * (100 + (350 / 117) ** 2 * 4), 9);
    expect(openVolts(hv({ ratedAmps: 0.1, centerTapped: false }), primary)).toBeCloseTo(350 + 0.1 * (200 + (350 / 117) ** 2 * 4), 9);
  });

  it("are what was measured, before anything else", () => {
    expect(openVolts(hv({ ratedAmps: 0.1, openVolts: 362 }), primary)).toBe(362);
  });
});

describe("a transformer", () => {
  const windings = {
    hv: { between: ["a", "ct", "b"], marked: "300-0-300 V", measured: "240 ohm" },
    primary: { between: ["p", "q"], marked: "117 V", measured: "5 ohm" },
  } as unknown as NonNullable<JobPart["windings"]>;

  it("comes with its primary first, and a tapped winding as two halves", () => {
    const [element] = compiled([{ name: "T1", kind: "transformer", windings }]).network.elements;
    expect(element).toMatchObject({
      kind: "transformer",
      windings: [
        { id: "primary", nodes: ["p", "q"], turns: 117, ohms: 5 },
        { id: "hv-1", nodes: ["a", "ct"], turns: 300, ohms: 120 },
        { id: "hv-2", nodes: ["ct", "b"], turns: 300, ohms: 120 },
      ],
    });
  });

  it("is unsure of its resistances and, but for the primary, of its turns", () => {
    const { uncertain } = compiled([{ name: "T1", kind: "transformer", windings }]);
    expect(uncertain.map(({ ref }) => ref.parameter).sort()).toEqual([
      "hv-1.ohms",
      "hv-1.turns",
      "hv-2.ohms",
      "hv-2.turns",
      "primary.ohms",
    ]);
  });
});

describe("loads", () => {
  it("are a constant current or a resistance", () => {
    expect(elementsOf({ kind: "load", marked: "60 mA" })).toMatchObject([{ kind: "current-source", nodes: ["a", "b"], amps: 0.06 }]);
    expect(elementsOf({ kind: "load", marked: "60 mA at 240 V" })).toMatchObject([{ kind: "resistor", ohms: 4000 }]);
  });

  it("are what the condition says, by the part's name", () => {
    const conditions = { send: { loads: { X: "90 mA" } } };
    expect(elementsOf({ kind: "load", marked: "60 mA" }, { conditions }, "send")).toMatchObject([{ amps: 0.09 }]);
    expect(elementsOf({ kind: "load", marked: "60 mA" }, { conditions }, "operating")).toMatchObject([{ amps: 0.06 }]);
  });
});

describe("single parts", () => {
  it("capacitor with what was measured on it", () => {
    const measured = { value: "17 uF", esr: "9 ohm", leakage: "300 kohm" };
    expect(elementsOf({ kind: "capacitor", marked: "20 uF 450 V", measured })).toMatchObject([
      { farads: 17e-6, esrOhms: 9, leakOhms: 300e3 },
    ]);
  });

  it("capacitor and resistor that are shorted", () => {
    expect(elementsOf({ kind: "capacitor", marked: "20 uF 450 V", measured: { condition: "shorted" } })).toMatchObject([{ leakOhms: 0.5 }]);
    expect(elementsOf({ kind: "resistor", marked: "1 kohm", measured: { condition: "shorted" } })).toMatchObject([{ ohms: 0.5 }]);
  });

  it("choke and rectifier that are shorted, which are then neither", () => {
    const measured = { condition: "shorted" } as const;
    expect(elementsOf({ kind: "inductor", marked: "8 H 200 ohm", measured })).toMatchObject([{ kind: "resistor", ohms: 0.5 }]);
    expect(elementsOf({ kind: "rectifier", type: "1N4007", measured })).toMatchObject([{ kind: "resistor", nodes: ["a", "b"], ohms: 0.5 }]);
  });

  it("potentiometer at mid-track, in halves that may be anything", () => {
    const part = { name: "X", kind: "potentiometer", marked: "500 kohm", pins: { a: "top", wiper: "out", b: "chassis" } } as const;
    const { network, uncertain } = compiled([part]);
    expect(network.elements).toMatchObject([
      { nodes: ["top", "out"], ohms: 250e3 },
      { nodes: ["out", "chassis"], ohms: 250e3 },
    ]);
    expect(uncertain.map(({ minus, plus }) => [minus, plus])).toEqual([
      [0.5, 0.5],
      [0.5, 0.5],
    ]);
  });

  it("fuse, closed switch and lamp in circuit", () => {
    expect(elementsOf({ kind: "fuse", marked: "1 A 250 V" })).toMatchObject([{ kind: "resistor", ohms: 0.15 }]);
    expect(elementsOf({ kind: "switch" })).toMatchObject([{ kind: "resistor", ohms: 0.02 }]);
    // Tungsten cold has a tenth of its hot resistance (from-memory): 6.3 V 0.15 A is 42 ohm hot.
    expect(elementsOf({ kind: "lamp", marked: "6.3 V 0.15 A" })).toMatchObject([
      { kind: "filament", ratedOhms: 42, coldOhms: 4.2, ratedAmps: 0.15 },
    ]);
  });

  it("rectifier with two plates is two diodes to one cathode, weaker by its emission", () => {
    const part = { name: "V1", kind: "rectifier", type: "5Y3GT", pins: { "plate-1": "p1", "plate-2": "p2", cathode: "k" } } as const;
    const [first, second] = compiled([part]).network.elements;
    const [weak] = compiled([{ ...part, measured: { emission: "50 %" } }]).network.elements;
    expect([first, second]).toMatchObject([
      { id: "V1/plate-1", nodes: ["p1", "k"] },
      { id: "V1/plate-2", nodes: ["p2", "k"] },
    ]);
    if (first?.kind !== "vacuum-diode" || weak?.kind !== "vacuum-diode") throw new Error("no vacuum diodes");
    expect(weak.perveance).toBeCloseTo(first.perveance / 2, 12);
  });

  it("silicon in the place of a tube is two diodes in the tube's socket", () => {
    const part = { name: "V1", kind: "rectifier", type: "1N4007", pins: { "plate-1": "p1", "plate-2": "p2", cathode: "k" } } as const;
    expect(compiled([part]).network.elements).toMatchObject([
      { kind: "diode", nodes: ["p1", "k"] },
      { kind: "diode", nodes: ["p2", "k"] },
    ]);
  });

  it("pentode without a screen of its own has it on the plate", () => {
    const part = { name: "V1", kind: "tube", type: "6V6GT", pins: { plate: "p", grid: "g", cathode: "k" } } as const;
    expect(compiled([part]).network.elements).toMatchObject([
      { kind: "pentode", nodes: { plate: "p", screen: "p", grid: "g", cathode: "k" } },
    ]);
  });

  it("part taken as it was found, for the sake of comparison", () => {
    const parts: JobPart[] = [
      { name: "BT", kind: "battery", marked: "9 V", between: ["a", "chassis"] },
      { name: "R1", kind: "resistor", marked: "1 kohm", between: ["a", "chassis"], fitted: "2 kohm" },
      { name: "R2", kind: "resistor", marked: "3 kohm", between: ["a", "chassis"], fitted: "4 kohm" },
    ];
    const { network } = modelOf({ parts }).compile({ life: "restored", condition: "operating", line: "actual", revert: "R1" });
    expect(network.elements).toMatchObject([{ id: "BT" }, { id: "R1", ohms: 1000 }, { id: "R2", ohms: 4000 }]);
  });
});

describe("the line", () => {
  const parts: JobPart[] = [{ name: "R1", kind: "resistor", marked: "100 ohm", between: ["line hot", "line neutral"] }];

  it("is a source of the situation's volts, known to two percent while a reading is taken", () => {
    const { network, uncertain } = compiled(parts);
    expect(network.elements.find(({ id }) => id === "line")).toMatchObject({
      kind: "voltage-source",
      nodes: ["line hot", "line neutral"],
      rmsVolts: 120,
      hertz: 60,
    });
    expect(uncertain.find(({ part }) => part === "line")).toMatchObject({ minus: 0.02, plus: 0.02 });
  });

  it("is not there cold, nor where nothing reaches it", () => {
    const has = (list: JobPart[], condition: string) => compiled(list, {}, condition).network.elements.some(({ id }) => id === "line");
    expect(has(parts, "cold")).toBe(false);
    expect(has([{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }], "operating")).toBe(false);
  });
});

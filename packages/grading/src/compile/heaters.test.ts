import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../testing/model.ts";
import { referenceDataset } from "../testing/referenceDataset.ts";

const transformer = (windings: Record<string, string>): JobPart => ({
  name: "T1",
  kind: "transformer",
  windings: {
    primary: { between: ["line hot", "line neutral"], marked: "117 V" },
    ...Object.fromEntries(
      Object.entries(windings).map(([id, marked]) => [id, { between: [`${id} 1`, `${id} 2`] as [string, string], marked }]),
    ),
  },
});
const tube = (name: string, type: string): JobPart => ({
  name,
  kind: "tube",
  type,
  pins: { plate: "B+", grid: "chassis", cathode: "chassis" },
});

/** Heaters in the network: where each lies, and its ohms. */
function heaters(parts: JobPart[], condition = "operating", conditions: NonNullable<TestJob["conditions"]> = {}) {
  const { network } = modelOf({ parts, conditions }, referenceDataset()).compile({ life: "found", condition, line: "actual" });
  return Object.fromEntries(
    network.elements.flatMap((element) =>
      element.kind === "resistor" && element.id.endsWith("/heater") ? [[element.id, [element.nodes[0], element.ohms] as const]] : [],
    ),
  );
}

describe("heaters", () => {
  it("load the winding of their voltage with E / I", () => {
    const found = heaters([transformer({ heater: "6.3 V 3 A" }), tube("V1", "6V6GT")]);
    expect(found).toEqual({ "V1/heater": ["heater 1", 6.3 / 0.45] });
  });

  it("of two sections of a bulb are one heater", () => {
    expect(Object.keys(heaters([transformer({ heater: "6.3 V 3 A" }), tube("V2A", "6SN7GTB"), tube("V2B", "6SN7GTB")]))).toEqual([
      "V2/heater",
    ]);
  });

  // Published: 12AX7 12.6 V 0.15 A in series, 6.3 V 0.3 A with its halves in parallel.
  it.each([
    ["6.3 V 3 A", 6.3 / 0.3],
    ["12.6 V 2 A", 12.6 / 0.15],
  ])("with a tap fit a winding of %s", (marked, ohms) => {
    const [entry] = Object.values(heaters([transformer({ heater: marked }), tube("V1", "12AX7")]));
    expect(entry?.[0]).toBe("heater 1");
    expect(entry?.[1]).toBeCloseTo(ohms, 9);
  });

  it("of a rectifier go to the winding that is named for it, the others to the other", () => {
    const parts: JobPart[] = [
      transformer({ "rectifier-filament": "6.3 V 1 A", heater: "6.3 V 3 A" }),
      { name: "V1", kind: "rectifier", type: "6X4", pins: { "plate-1": "ac", cathode: "B+" } },
      tube("V2", "6V6GT"),
    ];
    const found = heaters(parts);
    expect(found["V1/heater"]?.[0]).toBe("rectifier-filament 1");
    expect(found["V2/heater"]?.[0]).toBe("heater 1");
  });

  it("that no winding serves are no load here", () => {
    expect(heaters([transformer({ heater: "6.3 V 3 A" }), tube("V1", "50C5")])).toEqual({});
    expect(heaters([tube("V1", "6V6GT")])).toEqual({});
  });

  it("of tubes that are pulled draw nothing; cold nothing does", () => {
    const parts = [transformer({ heater: "6.3 V 3 A" }), tube("V1", "6V6GT"), tube("V2", "6V6GT")];
    expect(heaters(parts, "tubes-out")).toEqual({});
    expect(heaters(parts, "cold")).toEqual({});
    expect(Object.keys(heaters(parts, "half", { half: { tubes: ["V2"] } }))).toEqual(["V2/heater"]);
  });

  it("pull the winding down to what its resistance leaves", () => {
    const parts = [transformer({ heater: "6.3 V" }), tube("V1", "6L6GC")];
    const windings = (parts[0] as JobPart).windings!;
    windings.primary!.measured = "0.01 ohm";
    windings.heater!.measured = "0.5 ohm";
    const model = modelOf({ parts, chassis: { line: { designVolts: "117 V", hertz: 60, actualVolts: "117 V" } } }, referenceDataset());
    const seen = model.predict(
      { life: "found", condition: "operating", line: "actual" },
      { quantity: "ac-volts", at: "heater 1", to: "heater 2" },
    );
    // 6.3 V behind 0.5 ohm into 6.3 V / 0.9 A = 7 ohm.
    expect(seen?.nominal).toBeCloseTo((6.3 * 7) / 7.5, 3);
  });
});

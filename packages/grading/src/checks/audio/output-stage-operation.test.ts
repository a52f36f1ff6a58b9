import { describe, expect, it } from "vitest";
import { outputParts } from "../../testing/audioParts.ts";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { referenceDataset } from "../../testing/referenceDataset.ts";
import { outputStageOperation } from "./output-stage-operation.ts";

const run = (changes = {}, readings: NonNullable<TestJob["readings"]> = []) =>
  outputStageOperation.run(modelOf({ parts: outputParts(changes), readings }, referenceDataset()));

describe("output-stage-operation", () => {
  it("passes a 6V6GT at its published point: 45 mA * 250 V = 11.3 W (maker-sheets-current) of 14 W", () => {
    const [finding] = run();
    expect(finding).toMatchObject({ severity: "good", part: "V1" });
    // Published plate current 45 mA; the parameter set is within 8 % there.
    expect(finding?.figures[0]?.value).toBeGreaterThan(11.3 * 0.9);
    expect(finding?.figures[0]?.value).toBeLessThan(11.3 * 1.1);
    expect(finding?.figures[0]?.limit).toBe(14);
  });
  it("finds a tube with half of its cathode resistor", () => {
    const [finding] = run({ R1: { marked: "120 ohm 2 W" } });
    expect(finding).toMatchObject({ severity: "adjust", holds: "full-line" });
    expect(finding?.figures[0]?.margin).toBeLessThan(0);
  });
  it("finds a red plate: no bias at all", () =>
    expect(run({ R1: { marked: "10 ohm 2 W" } })[0]).toMatchObject({ severity: "danger", holds: "full-line" }));
  it("works out the current from the cathode: 18 V / 250 ohm = 72 mA", () => {
    const [, read] = run({}, [{ at: "cathode", quantity: "dc-volts", value: "18 V" }]);
    expect(read).toMatchObject({ severity: "adjust", holds: "full-line" });
    expect(read?.figures[1]?.value).toBeCloseTo(0.072, 6);
    // About 91 % of it to the plate (45 of 49.5 mA), about 250 V: 16 W.
    expect(read?.figures[0]?.value).toBeGreaterThan(15);
    expect(read?.figures[0]?.value).toBeLessThan(17.5);
  });
  it("gives each tube of a pair its half of the common cathode's current", () => {
    const second = {
      name: "V2",
      kind: "tube",
      type: "6V6GT",
      pins: { plate: "plate", screen: "B+", grid: "grid", cathode: "cathode" },
    } as const;
    const model = modelOf(
      {
        parts: [...outputParts({ R1: { marked: "125 ohm 5 W" } }), second],
        readings: [{ at: "cathode", quantity: "dc-volts", value: "9.5 V" }],
      },
      referenceDataset(),
    );
    const read = outputStageOperation.run(model).filter(({ title }) => title.includes("by its readings"));
    expect(read.map(({ part }) => part)).toEqual(["V1", "V2"]);
    // Ohm's law: 9.5 V / 125 ohm = 76 mA; two like tubes draw 38 mA each.
    for (const { figures } of read) expect(figures[1]?.value).toBeCloseTo(0.038, 4);
  });
  it("agrees with a reading of the published bias: 12.5 V", () =>
    expect(run({}, [{ at: "cathode", quantity: "dc-volts", value: "12.5 V" }])[1]).toMatchObject({ severity: "good" }));
  it("speaks of the bias supply where the bias is fixed, of the cathode resistor where it is not", () => {
    const bias = [
      { name: "BC", kind: "battery", between: ["chassis", "bias"], marked: "2 V" },
      { name: "R9", kind: "resistor", between: ["grid", "bias"], marked: "100 kohm 0.5 W" },
    ] as const;
    const parts = [...outputParts({ R1: { marked: "1 ohm 2 W" }, R2: null }), ...bias] as NonNullable<TestJob["parts"]>;
    expect(outputStageOperation.run(modelOf({ parts }, referenceDataset()))[0]?.action).toContain("bias more negative");
    expect(run({ R1: { marked: "120 ohm 2 W" } })[0]?.action).toContain("raise the cathode resistor");
  });
  it("does not apply to voltage amplifiers", () =>
    expect(run({ V1: { type: "12AX7", pins: { plate: "plate", grid: "grid", cathode: "cathode" } } })).toEqual([]));
});

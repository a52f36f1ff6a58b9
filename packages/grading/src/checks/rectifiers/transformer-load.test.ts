import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { type PartChanges, supplyParts, universalParts } from "../../testing/supply.ts";
import { transformerLoad } from "./transformer-load.ts";

type Windings = NonNullable<JobPart["windings"]>;
const windings = supplyParts().find(({ name }) => name === "T1")?.windings as Windings;
const transformer = (marked: Record<string, string>): Partial<JobPart> => ({
  windings: Object.fromEntries(
    Object.entries(windings).map(([id, winding]) => [id, { ...winding, marked: marked[id] ?? winding.marked }]),
  ) as Windings,
});
const run = (changes: PartChanges = {}, more: readonly JobPart[] = []) =>
  transformerLoad.run(modelOf({ parts: supplyParts(changes, more) }));
const figureOf = (changes: PartChanges, id: string, more: readonly JobPart[] = []) =>
  run(changes, more)[0]?.figures.find(({ label }) => label.startsWith(id));
const load = (marked: string) => ({ LOAD: { marked }, R1: { marked: "1 Mohm 1 W" } });
const wire = (between: [string, string]): JobPart => ({ name: "WX", kind: "wire", between });

describe("transformer-load", () => {
  it("takes a tapped high-voltage winding by direct current: load plus bleeder (Kirchhoff)", () => {
    const [finding] = run(load("60 mA"));
    expect(finding).toMatchObject({ severity: "good", part: "T1" });
    // 60 mA + about 350 V / 1 Mohm.
    expect(figureOf(load("60 mA"), "hv")).toMatchObject({ limit: 0.1, limitKind: "maximum" });
    expect(figureOf(load("60 mA"), "hv")?.value).toBeCloseTo(0.0604, 3);
  });

  it("takes heaters by RMS: 5Y3GT 2 A on 5 V, in proportion to the line (Ohm)", () => {
    const figure = figureOf({}, "rectifier-filament");
    // The rating with the line's swing: at most a tenth.
    expect(figure?.limit ?? 0).toBeGreaterThan(2);
    expect(figure?.limit ?? 0).toBeLessThanOrEqual(2.2);
    // 2.5 ohm and the 0.1 ohm of the winding, whose open voltage allows for its drop at 2 A: within 10 % at the highest line.
    expect(figure?.value ?? 0).toBeGreaterThan(1.9);
    expect(figure?.value ?? 0).toBeLessThan(2.2);
  });

  it("passes just under the rating, holds service above it and the full line above 1.25", () => {
    const roomy = { T1: transformer({ "rectifier-filament": "5 V 3 A" }) };
    expect(run({ ...roomy, ...load("98 mA") })[0]?.severity).toBe("good");
    expect(run({ ...roomy, ...load("105 mA") })[0]).toMatchObject({ severity: "adjust", holds: "service" });
    expect(run({ ...roomy, ...load("135 mA") })[0]).toMatchObject({ severity: "adjust", holds: "full-line" });
  });

  it("passes a 2 A heater on a 2 A winding, and finds two of them", () => {
    expect(run()[0]?.severity).toBe("good");
    const second: JobPart = { name: "V9", kind: "load", marked: "2 A at 5 V", between: ["B+1", "filament 2"] };
    expect(run({}, [second])[0]).toMatchObject({ severity: "adjust", holds: "full-line" });
  });

  it("finds a primary beyond its rating by RMS", () => {
    const figure = figureOf({ T1: transformer({ primary: "120 V 0.1 A", "rectifier-filament": "5 V 3 A" }) }, "primary");
    expect(figure?.limit ?? 0).toBeLessThanOrEqual(0.11);
    expect(figure?.margin ?? 0).toBeLessThan(0);
  });

  it("adds up the heat of all windings: at least I^2 R of the high-voltage winding's direct current", () => {
    const heat = figureOf({}, "heat in the wire")?.value ?? 0;
    // 100 ohm a half, each half at least 30 mA mean: 2 * 100 * 0.03^2 = 0.18 W; filament 0.4 W.
    expect(heat).toBeGreaterThan(0.58);
    expect(heat).toBeLessThan(20);
  });

  it("divides the rating of a bridge into a capacitor by 1.6, and counts the direct current once", () => {
    const parts: JobPart[] = [
      { name: "D1", kind: "rectifier", type: "silicon 2000 V 1 A", between: ["plate 1", "B+1"] },
      { name: "D2", kind: "rectifier", type: "silicon 2000 V 1 A", between: ["plate 2", "B+1"] },
      { name: "D3", kind: "rectifier", type: "silicon 2000 V 1 A", between: ["chassis", "plate 1"] },
      { name: "D4", kind: "rectifier", type: "silicon 2000 V 1 A", between: ["chassis", "plate 2"] },
    ];
    const { primary } = windings;
    const bridge = (marked: string): PartChanges => ({
      V1: null,
      T1: { windings: { primary, hv: { between: ["plate 1", "plate 2"], marked: "300 V 100 mA", measured: "100 ohm" } } as Windings },
      ...load(marked),
    });
    const figure = figureOf(bridge("55 mA"), "hv", parts);
    expect(figure?.limit).toBeCloseTo(0.0625, 9);
    expect(figure?.value).toBeCloseTo(0.0554, 3);
    expect(run(bridge("55 mA"), parts)[0]?.severity).toBe("good");
    expect(run(bridge("70 mA"), parts)[0]).toMatchObject({ severity: "adjust", holds: "service" });
  });

  it("counts a full-wave doubler's current twice: the winding charges each capacitor with all of it", () => {
    const { primary } = windings;
    const parts: JobPart[] = [
      { name: "D1", kind: "rectifier", type: "silicon 2000 V 1 A", between: ["plate 1", "B+1"] },
      { name: "D2", kind: "rectifier", type: "silicon 2000 V 1 A", between: ["chassis", "plate 1"] },
      { name: "C9", kind: "capacitor", marked: "40 uF 450 V electrolytic", between: ["middle", "chassis"] },
    ];
    const figure = figureOf(
      {
        V1: null,
        C1: { marked: "40 uF 450 V electrolytic", between: ["B+1", "middle"] },
        T1: { windings: { primary, hv: { between: ["plate 1", "middle"], marked: "120 V 200 mA", measured: "20 ohm" } } as Windings },
        ...load("50 mA"),
      },
      "hv",
      parts,
    );
    expect(figure?.limit).toBeCloseTo(0.125, 9);
    expect(figure?.value).toBeCloseTo(0.1006, 3);
  });

  it("calls a wire from B+ to the chassis a danger", () => {
    expect(run({}, [wire(["B+1", "chassis"])])[0]).toMatchObject({ severity: "danger", holds: "current-limited" });
  });

  it("calls a wire across a winding or half of it a danger, ratings known or not", () => {
    const unrated = { T1: transformer({ hv: "300-0-300 V" }) };
    for (const between of [
      ["plate 1", "plate 2"],
      ["plate 1", "chassis"],
      ["heater 2", "chassis"],
    ] as [string, string][]) {
      expect(run({}, [wire(between)])[0]).toMatchObject({ severity: "danger", holds: "current-limited" });
      expect(run(unrated, [wire(between)])[0]?.severity).toBe("danger");
    }
  });

  it("asks for a rating that is not known, without a hold", () => {
    const [finding] = run({ T1: transformer({ hv: "300-0-300 V" }) });
    expect(finding).toMatchObject({ severity: "unmeasured" });
    expect(finding?.holds).toBeUndefined();
  });

  it("says that only the plan overloads it, and stays silent about a plan that changes nothing", () => {
    const roomy = { T1: transformer({ "rectifier-filament": "5 V 3 A" }) };
    const planned = run({ ...roomy, R1: { marked: "100 kohm 5 W", fitted: { marked: "5 kohm 50 W", planned: true } } });
    expect(planned.map(({ life, severity }) => [life, severity])).toEqual([
      ["restored", "good"],
      ["planned", "adjust"],
    ]);
    expect(planned[1]?.why).toContain("the plan overloads it");
    const same = run({ ...roomy, C2: { fitted: { marked: "22 uF 450 V electrolytic", planned: true } } });
    expect(same.map(({ life }) => life)).toEqual(["restored"]);
  });

  it("does not apply without a transformer on the line", () => {
    expect(transformerLoad.run(modelOf({ parts: universalParts(), reference: "B-", chassis: { isolation: "transformerless" } }))).toEqual(
      [],
    );
  });
});

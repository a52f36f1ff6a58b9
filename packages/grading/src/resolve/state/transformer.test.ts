import { describe, expect, it } from "vitest";
import type { WindingSpec } from "../../model/index.ts";
import { modelOf } from "../../testing/model.ts";
import { datasetWith, templateOf } from "../../testing/stageTemplate.ts";

type Written = { between?: string[]; marked: string; measured?: string; openVolts?: string };

function winding(id: string, { between = ["a", "b"], ...rest }: Written): WindingSpec {
  const windings = { primary: { between: ["line hot", "line neutral"], marked: "117 V" }, [id]: { between, ...rest } } as never;
  const { designed } = modelOf({ parts: [{ name: "T1", kind: "transformer", windings }] }).parts.get("T1")!.lives;
  return designed.windings!.find((spec) => spec.id === id)!;
}

describe("a winding", () => {
  it("is marked one side when tapped a-0-a, end to end when not", () => {
    expect(winding("hv", { between: ["a", "ct", "b"], marked: "325-0-325 V 120 mA" })).toMatchObject({
      ratedVolts: 325,
      ratedAmps: 0.12,
      centerTapped: true,
    });
    expect(winding("hv", { between: ["a", "ct", "b"], marked: "650 V CT 120 mA" })).toMatchObject({ ratedVolts: 325, centerTapped: true });
    expect(winding("heater", { marked: "6.3 V 3 A" })).toMatchObject({ ratedVolts: 6.3, ratedAmps: 3, centerTapped: false });
  });

  it("has the resistance that was measured before any other", () => {
    expect(winding("hv", { marked: "250 V 50 mA", measured: "420 ohm" })).toMatchObject({ ohms: 420, ohmsFrom: "measurement" });
  });

  // from-memory shares: 4.5 % of volts over amperes for high voltage, 2.5 % for heaters, 5 % for the primary; 20 W where no current is given.
  it.each([
    ["hv", { marked: "250 V 50 mA" }, (0.045 * 250) / 0.05],
    ["hv", { between: ["a", "ct", "b"], marked: "300-0-300 V 100 mA" }, (0.045 * 600) / 0.1],
    ["heater", { marked: "6.3 V 3 A" }, (0.025 * 6.3) / 3],
    ["primary", { marked: "117 V 0.8 A" }, (0.05 * 117) / 0.8],
    ["heater", { marked: "6.3 V 0 A" }, (0.025 * 6.3) / (20 / 6.3)],
    ["primary", { marked: "117 V" }, (0.05 * 117) / (20 / 117)],
  ])("%s of %o that nobody measured has a guessed resistance", (id, written, ohms) => {
    const spec = winding(id, written);
    expect(spec.ohmsFrom).toBe("default");
    expect(spec.ohms).toBeCloseTo(ohms, 9);
  });

  it("keeps a measured open voltage", () => {
    expect(winding("hv", { marked: "250 V 50 mA", openVolts: "268 V" }).openVolts).toBe(268);
  });

  it("of a stage has the template's typical resistance while it has the template's typical rating", () => {
    const template = templateOf({
      id: "pt",
      parts: [
        {
          role: "t",
          title: "t",
          kind: "transformer",
          windings: {
            hv: { between: ["supply", "return"], typical: "250 V 50 mA", ohms: 333 },
            primary: { between: ["supply", "return"], typical: "117 V", ohms: 8 },
          },
        },
      ],
    });
    const spec = (windings?: Record<string, { marked: string }>) =>
      modelOf(
        { stages: [{ id: "s", template: "pt", parts: { t: windings === undefined ? {} : { windings } } }] },
        datasetWith(template),
      ).parts.get("s.t")!.lives.designed.windings![0]!;
    expect(spec()).toMatchObject({ ohms: 333, ohmsFrom: "typical" });
    expect(spec({ hv: { marked: "300 V 100 mA" } })).toMatchObject({ ohms: (0.045 * 300) / 0.1, ohmsFrom: "default" });
  });
});

describe("a transformer without a winding called primary", () => {
  const named = (...ids: string[]) =>
    modelOf({
      parts: [
        {
          name: "T1",
          kind: "transformer",
          windings: Object.fromEntries(ids.map((id) => [id, { between: [`${id} a`, `${id} b`], marked: "117 V" }])) as never,
        },
      ],
    });

  it.each([[["hv", "pri"]], [["prim", "hv"]], [["p", "heater"]], [["hv"]], [["primry", "hv"]]])("is refused: %j", (ids) => {
    expect(() => named(...ids)).toThrow(/^transformer-primary-missing: T1 has no winding called primary/);
  });

  it("is told from one whose primary goes by a longer name", () => {
    expect(named("primary-upper", "hv").parts.get("T1")!.lives.designed.windings).toHaveLength(2);
  });
});

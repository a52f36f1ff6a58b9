import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts } from "../../testing/supply.ts";
import { rectifierInverseVoltage } from "./rectifier-inverse-voltage.ts";

const chassis = { line: { designVolts: "120 V", hertz: 60 as const } };
const run = (parts: ReturnType<typeof supplyParts>) => rectifierInverseVoltage.run(modelOf({ chassis, parts }));

describe("rectifier-inverse-voltage", () => {
  it("computes 2 sqrt 2 times the half winding (F15) and passes a 5Y3GT", () => {
    const finding = run(supplyParts())[0];
    expect(finding).toMatchObject({ severity: "good", figures: [{ limit: 1400, limitKind: "maximum" }] });
    // Tubes out of their sockets only the bleeder draws: the winding's open voltage, 300 V + 0.1 A * (100 + 6.25 * 5) ohm = 313 V, at 126/120: 329 V; 2 * 1.414 * 329 V = 930 V.
    expect(finding?.figures[0]?.value ?? 0).toBeGreaterThan(0.95 * 930);
    expect(finding?.figures[0]?.value ?? 0).toBeLessThan(930);
  });

  it("finds 600 V silicon broken down, 1000 V without margin, 2000 V right", () => {
    expect(run(siliconSupply("silicon 600 V 1 A"))[0]).toMatchObject({ severity: "danger", holds: "full-line" });
    expect(run(siliconSupply("silicon 1000 V 1 A"))[0]).toMatchObject({ severity: "adjust", holds: "service" });
    // 930 V: 1200 V stand 1.29 times that.
    expect(run(siliconSupply("silicon 1200 V 1 A"))[0]).toMatchObject({ severity: "watch" });
    expect(run(siliconSupply("silicon 1200 V 1 A"))[0]?.holds).toBeUndefined();
    expect(run(siliconSupply("silicon 2000 V 1 A"))[0]).toMatchObject({ severity: "good" });
  });

  it("asks when nothing gives the rating", () => {
    expect(run(siliconSupply("silicon 1 A"))[0]).toMatchObject({ severity: "unmeasured", holds: "full-line" });
  });

  it("does not apply without a rectifier", () => {
    expect(run([{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }])).toEqual([]);
  });
});

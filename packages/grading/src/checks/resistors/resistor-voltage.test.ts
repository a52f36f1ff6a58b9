import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { smallDataset } from "../../testing/smallDataset.ts";
import { resistorVoltage } from "./resistor-voltage.ts";

/** Limits as printed in makers' sheets: composition 0.5 W 350 V (composition-resistor-sheets); carbon film 1 W 400 V, metal film 1 W 350 V (film-resistor-sheets). */
const dataset = () => ({
  ...smallDataset(),
  tables: new Map([
    [
      "resistor-bodies",
      [
        { composition: "carbon-composition", ratedWatts: "0.5", maxVolts: "350", source: "composition-resistor-sheets" },
        { composition: "carbon-film", ratedWatts: "1", maxVolts: "400", source: "film-resistor-sheets" },
        { composition: "metal-film", ratedWatts: "1", maxVolts: "350", source: "film-resistor-sheets" },
      ],
    ],
  ]),
});

const run = (battery: string, resistor: object) =>
  resistorVoltage.run(
    modelOf(
      {
        parts: [
          { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: battery },
          { name: "R1", kind: "resistor", between: ["B+", "chassis"], ...resistor },
        ],
      },
      dataset(),
    ),
  );

describe("resistor-voltage", () => {
  it("finds 400 V across a half-watt composition body made for 350 V, cool as it is", () => {
    const [finding] = run("400 V", { marked: "2.2 Mohm 0.5 W" });
    expect(finding).toMatchObject({ severity: "replace", holds: "service" });
    expect(finding?.figures[0]).toMatchObject({ limit: 350 });
    expect(finding?.figures[0]?.value).toBeCloseTo(400, 6);
    // 400 V / (0.8 * 350 V) = 1.43: two in series.
    expect(finding?.order?.[0]).toMatchObject({ quantity: 2, what: "resistor 1.1 Mohm 0.5 W" });
  });
  it("passes 340 V", () => expect(run("340 V", { marked: "2.2 Mohm 0.5 W" }).map(({ severity }) => severity)).toEqual(["good"]));
  it("leaves a new part between two makes' limits to its sheet", () =>
    expect(run("380 V", { fitted: "2.2 Mohm 1 W" })[0]).toMatchObject({ severity: "watch" }));
  it("does not apply to wirewound parts", () => expect(run("400 V", { marked: "100 kohm 10 W" })).toEqual([]));
});

import type { StageTemplate } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { referenceDataset } from "../../testing/referenceDataset.ts";
import { templateOf } from "../../testing/stageTemplate.ts";
import { stageValues } from "./stageValues.ts";
import { workOf } from "./tubes.ts";

const part = (record: object) => record as StageTemplate["parts"][number];

/** A 6V6GT with cathode bias behind a standby switch, on 265 V. */
const template = templateOf({
  id: "output",
  points: { on: "Behind the switch.", plate: "Plate.", grid: "Grid.", cathode: "Cathode." },
  parts: [
    part({
      role: "standbySwitch",
      title: "Switch",
      kind: "switch",
      between: ["supply", "on"],
      typical: "3 A 600 VDC",
      positions: { standby: "open", operating: "closed" },
    }),
    part({ role: "primary", title: "Primary", kind: "inductor", between: ["on", "plate"], typical: "10 H 250 ohm 60 mA" }),
    part({
      role: "outputTube",
      title: "Tube",
      kind: "tube",
      pins: { plate: "plate", screen: "on", grid: "grid", cathode: "cathode" },
      type: "6V6GT",
    }),
    part({ role: "gridLeak", title: "Grid leak", kind: "resistor", between: ["grid", "return"], typical: "470 kohm 0.5 W" }),
    part({ role: "cathodeResistor", title: "Cathode resistor", kind: "resistor", between: ["cathode", "return"], typical: "250 ohm 2 W" }),
    part({ role: "spare", title: "Spare", kind: "capacitor", between: ["on", "return"], typical: "1 uF", optional: true }),
  ],
});

function valuesIn(condition: string) {
  const dataset = { ...referenceDataset(), stages: new Map([["output", template]]) };
  const model = modelOf(
    {
      stages: [{ id: "o", template: "output", bind: { supply: "B+" } }],
      parts: [{ name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "265 V" }],
    },
    dataset,
  );
  const [stage] = model.stages;
  const found = model.conditions.get(condition);
  if (stage === undefined || found === undefined) throw new Error("no such stage or condition");
  return { model, values: stageValues(model, stage, "restored", found, "high") };
}

describe("stageValues", () => {
  const { model, values } = valuesIn("operating");
  const value = (name: string) => values.name(name) ?? Number.NaN;

  it("gives markings in SI and the line", () => {
    expect(value("gridLeak.ohms")).toBe(470e3);
    expect(value("gridLeak.ratedWatts")).toBe(0.5);
    expect(value("primary.henries")).toBe(10);
    expect(value("primary.dcrOhms")).toBe(250);
    expect(value("primary.ratedAmps")).toBeCloseTo(0.06, 12);
    expect(value("lineVolts")).toBe(126);
    expect(value("lineHertz")).toBe(60);
  });

  it("gives what a tube does, consistent by Kirchhoff's and Ohm's laws", () => {
    expect(value("outputTube.cathodeAmps")).toBeCloseTo(value("outputTube.plateAmps") + value("outputTube.screenAmps"), 6);
    expect(values.point("volts", "cathode")).toBeCloseTo(value("outputTube.cathodeAmps") * 250, 2);
    expect(value("outputTube.gridVolts")).toBeCloseTo(-(values.point("volts", "cathode") ?? 0), 2);
    expect(value("outputTube.plateWatts")).toBeCloseTo(value("outputTube.plateVolts") * value("outputTube.plateAmps"), 4);
    expect(value("outputTube.screenWatts")).toBeCloseTo(value("outputTube.screenVolts") * value("outputTube.screenAmps"), 4);
    expect(value("outputTube.limitPlateWatts")).toBe(14);
    expect(value("primary.meanAmps")).toBeCloseTo(value("outputTube.plateAmps"), 6);
  });

  it("agrees with the tubes' own helper", () => {
    const tube = model.parts.get("o.outputTube");
    const [work] =
      tube === undefined
        ? []
        : workOf(model, "restored", { part: tube, state: tube.lives.restored }).filter(({ condition }) => condition === "operating");
    expect(work?.plateWatts).toBeCloseTo(value("outputTube.plateWatts"), 9);
    expect(work?.gridVolts).toBeCloseTo(value("outputTube.gridVolts"), 9);
  });

  it("knows the whole supply across an open switch, and no current in it", () => {
    const standby = valuesIn("standby").values;
    expect(standby.name("standbySwitch.meanVolts")).toBeCloseTo(265, 3);
    expect(standby.name("standbySwitch.meanAmps")).toBe(0);
  });

  it("gives nothing for what is not there, not of that kind or not known", () => {
    expect(values.has("spare")).toBe(false);
    expect(value("spare.present")).toBe(0);
    expect(value("gridLeak.present")).toBe(1);
    expect(values.name("spare.farads")).toBeUndefined();
    expect(values.name("gridLeak.farads")).toBeUndefined();
    expect(values.name("gridLeak.ratedVolts")).toBeUndefined();
    expect(values.name("gridLeak.constructor")).toBeUndefined();
    expect(values.point("volts", "nowhere")).toBeUndefined();
  });
});

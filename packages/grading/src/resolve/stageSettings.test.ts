import type { StageTemplate } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { stageValues } from "../checks/shared/stageValues.ts";
import { templateRequirements } from "../checks/templates/template-requirements.ts";
import { stageLines } from "../grade/stageLines.ts";
import { loadJob } from "../job/loadJob.ts";
import { modelOf } from "../testing/model.ts";
import { datasetWith, templateOf } from "../testing/stageTemplate.ts";

/** A capacitor across a line of 50 ohm, on which a transmitter's output stands. */
const template = templateOf({
  id: "padder",
  terminals: [
    { id: "antenna", meaning: "Antenna." },
    { id: "return", meaning: "Return.", default: "chassis" },
  ],
  settings: {
    bandLowHertz: { meaning: "lowest frequency of the band", unit: "Hz", typical: "3.5 MHz", source: "common-practice" },
    rfWatts: { meaning: "output", unit: "W", typical: "50 W", source: "common-practice" },
    lineOhms: { meaning: "resistance of the line", unit: "ohm", typical: "50 ohm", source: "common-practice" },
    swr: { meaning: "standing-wave ratio", unit: "ratio", typical: "1", source: "common-practice" },
  },
  parts: [
    { role: "padder", title: "Padding capacitor", kind: "capacitor", between: ["antenna", "return"], typical: "470 pF 1000 V mica" },
    { role: "load", title: "Dummy load", kind: "resistor", between: ["antenna", "return"], typical: "50 ohm 100 W" },
  ] as unknown as StageTemplate["parts"],
  requirements: [
    {
      id: "current",
      title: "The padder bears its current",
      formula: "sqrt(rfWatts * lineOhms * swr) * 2 * pi * bandLowHertz * padder.farads <= 1",
      measures: "RF current of the padder",
      otherwise: "It burns.",
      severity: "replace",
      source: "circuit-theory",
    },
    {
      id: "frequency",
      title: "The band is a high one",
      formula: "2 * bandLowHertz >= 1000000",
      otherwise: "Too low.",
      severity: "watch",
      source: "circuit-theory",
    },
  ],
});
const dataset = datasetWith(template);

const jobWith = (settings?: Record<string, string | number>) => ({
  stages: [{ id: "tank", template: "padder", bind: { antenna: "antenna" }, ...(settings === undefined ? {} : { settings }), parts: {} }],
  parts: [{ name: "B1", kind: "battery" as const, between: ["antenna", "chassis"] as [string, string], marked: "10 V" }],
});
const modelWith = (settings?: Record<string, string | number>) => modelOf(jobWith(settings), dataset);

describe("settings of a stage", () => {
  it("are the template's where the job says nothing", () => {
    expect(modelWith().stages[0]?.settings).toEqual({ bandLowHertz: 3.5e6, rfWatts: 50, lineOhms: 50, swr: 1 });
  });

  it("are the job's where it gives them, in whatever unit people write", () => {
    expect(modelWith({ bandLowHertz: "1.8 Mc", swr: 3 }).stages[0]?.settings).toMatchObject({ bandLowHertz: 1.8e6, swr: 3, rfWatts: 50 });
  });

  it("that cannot be read are refused", () => {
    expect(() => modelWith({ bandLowHertz: "3 turns" })).toThrow(/value-unreadable/);
  });

  it("are what formulas call by their name alone", () => {
    const model = modelWith({ rfWatts: "100 W" });
    const values = stageValues(model, model.stages[0]!, "designed", model.conditions.get("operating")!, "design");
    expect([values.name("rfWatts"), values.name("lineOhms"), values.name("nothingOfTheKind")]).toEqual([100, 50, undefined]);
  });

  it("stand in the report with what they mean, and where they come from", () => {
    const [stage] = stageLines(modelWith({ swr: "3" }), []);
    expect(stage?.settings).toContainEqual({ name: "swr", meaning: "standing-wave ratio", value: 3, unit: "", from: "job" });
    expect(stage?.settings).toContainEqual({ name: "rfWatts", meaning: "output", value: 50, unit: "W", from: "template" });
  });

  it("the job must know by name", () => {
    const text = JSON.stringify({
      format: 1,
      title: "test",
      chassis: { line: { designVolts: "120 V", hertz: 60 } },
      ...jobWith({ bandLowHerz: "3.5 MHz" }),
    });
    const loaded = loadJob({ job: { name: "job.json", text } }, dataset);
    expect(loaded.ok ? [] : loaded.diagnostics).toMatchObject([
      { code: "setting-unknown", received: "bandLowHerz", nearest: "bandLowHertz", line: 1, column: text.indexOf('"bandLowHerz"') + 1 },
    ]);
  });
});

describe("a rule about settings", () => {
  // I = sqrt(P Z0 S) 2 pi f C: 50 V at 3.5 MHz across 470 pF is 0.517 A; at a standing-wave ratio of 4 twice that.
  it("is kept at a good match and broken at a bad one, by the root of the standing-wave ratio", () => {
    const findings = (settings?: Record<string, string | number>) => templateRequirements.run(modelWith(settings));
    expect(findings().map(({ severity }) => severity)).toEqual(["good"]);
    const [broken] = findings({ swr: 4 });
    expect(broken).toMatchObject({ severity: "replace", part: "tank.padder", found: "RF current of the padder: 1.03 A" });
    expect(broken?.figures[0]?.value).toBeCloseTo(2 * 50 * 2 * Math.PI * 3.5e6 * 470e-12, 9);
  });

  it("calls them by what they mean", () => {
    const broken = templateRequirements.run(modelWith({ bandLowHertz: "100 kHz" })).find(({ severity }) => severity === "watch");
    expect(broken?.found).toBe("2 * lowest frequency of the band: 200 kHz");
  });
});

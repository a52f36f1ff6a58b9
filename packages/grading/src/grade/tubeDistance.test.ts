import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { referenceDataset } from "../testing/referenceDataset.ts";
import { readingLines } from "./readingLines.ts";
import { tubeDistance } from "./tubeDistance.ts";

const dataset = referenceDataset();
const stage = (type: string) =>
  modelOf(
    {
      parts: [
        { name: "BT", kind: "battery", marked: "250 V", between: ["B+", "chassis"] },
        { name: "R1", kind: "resistor", marked: "100 k", tolerance: "1 %", between: ["B+", "plate"] },
        { name: "R2", kind: "resistor", marked: "1.5 k", tolerance: "1 %", between: ["k", "chassis"] },
        { name: "R3", kind: "resistor", marked: "470 k", between: ["grid", "chassis"] },
        { name: "V1", kind: "tube", type, pins: { plate: "plate", grid: "grid", cathode: "k" } },
      ],
      readings: [{ at: "plate", quantity: "dc-volts", value: "150 V" }],
    },
    dataset,
  );

describe("distance of a tube's model", () => {
  it("is the largest of its record, rounded up to whole percents", () => {
    const record = dataset.tubes.get("12AT7")!;
    const worst = Math.max(...record.units[0]!.distance!.map(({ plateAmps }) => Math.abs(plateAmps)));
    expect(worst).toBeGreaterThan(0);
    const words = tubeDistance(stage("12AT7"), "V1", "restored");
    const said = Number(/within (\d+) % of published plate current/.exec(words ?? "")?.[1]);
    expect(said).toBeGreaterThanOrEqual(100 * worst);
    expect(said).toBeLessThan(100 * worst + 1);
    expect(words).toMatch(/\d+ % of transconductance$/);
  });

  it("is said of tubes only", () => expect(tubeDistance(stage("12AT7"), "R1", "restored")).toBeUndefined());

  it("stands beside the tube where a predicted voltage leans on it", () => {
    const [line] = readingLines(stage("12AT7"));
    expect(line?.contributors?.find((words) => words.startsWith("V1 emission"))).toMatch(/\(model within \d+ % of published plate current/);
    expect(line?.contributors?.some((words) => /^R\d.*model/.test(words))).toBe(false);
  });
});

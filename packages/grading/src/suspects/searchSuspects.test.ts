import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import type { Reading } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";
import { halfWaveParts } from "../testing/suspectChassis.ts";
import type { Fault } from "./fault.ts";
import { FaultSolver } from "./faultSolver.ts";
import { lay } from "./ground.ts";
import { observableOf } from "./observable.ts";
import { type SearchOptions, searchSuspects } from "./searchSuspects.ts";

const parts: JobPart[] = [...halfWaveParts];
const places = ["raw", "B+"] as const;
const model = modelOf({
  parts,
  readings: places.map((at) => ({ at, quantity: "dc-volts", condition: "operating", value: "1 V" })),
});
const ground = lay(model, "found", model.readings.map(observableOf));
const whole = new Set(model.readings.keys());

/** What the job's readings are with these faults in the chassis. */
function readingsWith(...faults: Fault[]): Reading[] {
  const values = faults.length === 0 ? ground.nominal : new FaultSolver(ground, 60).predict(faults, whole, { effort: "fine" })!;
  return model.readings.map((reading, k) => ({ ...reading, value: values[k]! }));
}
const search = (readings: Reading[], options: SearchOptions = {}) => searchSuspects(model, { readings, ...options });

describe("searchSuspects", () => {
  it("a healthy chassis gives nothing off, without a search", () => {
    const report = search(readingsWith());
    expect(report.verdict).toBe("nothing-off");
    expect(report.suspects).toEqual([]);
    expect(report.simulations).toBe(0);
    expect(report.life).toBe("found");
  });

  it("a shorted capacitor is first, and what to measure next is cold", () => {
    const report = search(readingsWith({ kind: "short", part: "C2", element: "C2" }));
    expect(report.verdict).toBe("suspects");
    expect(report.complete).toBe(true);
    const [first] = report.suspects;
    expect(first!.title).toBe("C2 is shorted");
    // What shorts B+ is all one: the capacitor, the resistor beside it, solder between the two points.
    expect(first!.group.map(({ title }) => title)).toContain("R2 is shorted");
    expect(first!.posterior).toBeGreaterThan(0.8);
    expect(first!.readings.every(({ deviation }) => Math.abs(deviation) < 1)).toBe(true);
    expect(report.unexplained).toEqual([]);
    expect(report.next?.quantity).toBe("ohms");
    const shares = report.suspects.reduce((sum, { posterior }) => sum + posterior, 0);
    expect(shares + report.healthy + report.noneOfThese).toBeLessThanOrEqual(1 + 1e-9);
  });

  it("ranks by belief, tells progress, and takes no more suspects than asked for", () => {
    const seen: number[] = [];
    const report = search(readingsWith({ kind: "open", part: "R2", element: "R2" }), { top: 2, onProgress: (done) => seen.push(done) });
    expect(report.suspects.length).toBeLessThanOrEqual(2);
    expect(report.suspects.map(({ rank }) => rank)).toEqual(report.suspects.map((_, k) => k + 1));
    expect(report.suspects[0]!.posterior).toBeGreaterThanOrEqual(report.suspects.at(-1)!.posterior);
    expect(seen.length).toBeGreaterThan(0);
    expect(seen.every((done, k) => done === k + 1)).toBe(true);
  });

  it("odds of nil forbid a suspect", () => {
    const readings = readingsWith({ kind: "short", part: "C2", element: "C2" });
    const report = search(readings, { odds: new Map([["capacitor.short", 0]]) });
    const titles = report.suspects.flatMap(({ title, group }) => [title, ...group.map((other) => other.title)]);
    expect(titles).not.toContain("C2 is shorted");
  });

  it("a time limit of a hundredth of a second gives what there is, and says that it is not all", () => {
    const report = search(readingsWith({ kind: "short", part: "C2", element: "C2" }), { timeLimitSeconds: 0.01 });
    expect(report.complete).toBe(false);
    expect(report.verdict).not.toBe("no-readings");
  });

  it("no readings, or none that is a number, gives no readings", () => {
    expect(search([]).verdict).toBe("no-readings");
    const wrong = readingsWith().map((reading) => ({ ...reading, value: Number.NaN }));
    expect(search(wrong).verdict).toBe("no-readings");
    const elsewhere = readingsWith().map((reading) => ({ ...reading, at: "nowhere" }));
    expect(search(elsewhere).verdict).toBe("no-readings");
  });

  it("goes by the readings of the restored chassis where there are any", () => {
    const [first, second] = readingsWith();
    const report = search([
      { ...first!, value: 3 },
      { ...second!, life: "restored" },
    ]);
    expect([report.life, report.verdict]).toEqual(["restored", "nothing-off"]);
  });
});

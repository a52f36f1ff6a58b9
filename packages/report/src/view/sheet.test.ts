import { describe, expect, it } from "vitest";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { sheetOf } from "./sheet.ts";
import { whenWord } from "./words.ts";

describe("sheetOf", () => {
  const sheet = sheetOf(fixtureReport);

  it("numbers findings from one and finds those without a stage", () => {
    expect(sheet.dangers.map(({ number }) => number)).toStrictEqual([1, 2]);
    expect(sheet.loose.map(({ number }) => number)).toStrictEqual([2, 5]);
    expect(sheet.findingAt(-1)).toBeUndefined();
    expect(sheet.findingAt(99)).toBeUndefined();
  });

  it("puts findings of a stage in the report's order, once, and leaves out an index that points nowhere", () => {
    expect(sheet.findingsAt([5, 0, 5, 99, -1]).map(({ number }) => number)).toStrictEqual([1, 6]);
  });

  it("names a source with its kind", () => {
    expect(sheet.source("S41")).toStrictEqual({ text: "S41 (published)", index: 1 });
    expect(sheet.source("from-memory").text).toBe("from memory");
    expect(sheet.source("derived")).toStrictEqual({ text: "derived", index: -1 });
    expect(sheet.source("S99").text).toBe("S99 (not in the list of sources)");
    expect(sheet.source("constructor").text).toBe("constructor (not in the list of sources)");
  });

  it("separates checks that were made from those that were not", () => {
    expect(sheet.checksMade.map((check) => check.id)).toStrictEqual(["filter-voltage-rating", "ripple"]);
    expect(sheet.checksNotMade.map((check) => check.id)).toStrictEqual(["fuse-size", "balancing"]);
  });

  it("says what a finding is about by the part's name", () => {
    expect(sheet.about(fixtureReport.findings[0]!)).toBe("C1, at B+ raw, operating, as restored");
  });
});

describe("whenWord", () => {
  it("keeps work on a cold chassis before the step that it clears the way to", () => {
    expect(whenWord("current-limited", "none")).toBe("before current-limited power");
    expect(whenWord("service", "full-line")).toBe("before service");
    expect(whenWord("full-line", "full-line")).toBe("at the step: full line voltage");
    expect(whenWord("none", "none")).toBe("at the step: no power");
  });
});

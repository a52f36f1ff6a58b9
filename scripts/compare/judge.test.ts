import { describe, expect, it } from "vitest";
import { leastVersion, raisedEnough } from "./bump.ts";
import { differencesOf } from "./differences.ts";
import { judgeRecord } from "./judgeRecord.ts";
import { judgeSchema } from "./judgeSchema.ts";

describe("differencesOf", () => {
  const shapes = (before: unknown, after: unknown) => differencesOf(before, after).map(({ path }) => path);
  it("tells entries apart by their role, so that one put in between is one difference", () => {
    expect(shapes({ parts: [{ role: "a" }, { role: "c", n: 1 }] }, { parts: [{ role: "a" }, { role: "b" }, { role: "c", n: 2 }] })).toEqual(
      ["parts[c].n", "parts[b]"],
    );
  });
  it("lets the order of such lists count for nothing, that of a part's two points for something", () => {
    expect(shapes({ sources: ["a", "b"] }, { sources: ["b", "a"] })).toEqual([]);
    expect(shapes({ between: ["a", "b"] }, { between: ["b", "a"] })).toEqual(["between"]);
  });
  it("compares lists of as many nameless objects entry by entry", () => {
    expect(shapes({ units: [{ a: 1 }, { b: { c: 1 } }] }, { units: [{ a: 1 }, { b: { c: 2 } }] })).toEqual(["units[2].b.c"]);
    expect(shapes({ units: [{ a: 1 }] }, { units: [{ a: 1 }, { a: 2 }] })).toEqual(["units"]);
  });
  it("does not take an inherited property for one of the record's own", () => {
    expect(shapes({}, JSON.parse('{"constructor": 1}'))).toEqual(["constructor"]);
  });
});

describe("judgeSchema", () => {
  /** The one difference between two schemas, judged. */
  const judge = (before: object, after: object) => differencesOf(before, after).map((difference) => judgeSchema(difference).bump);
  it.each([
    [{ required: ["a"] }, { required: ["a", "b"] }, "major"],
    [{ required: ["a", "b"] }, { required: ["a"] }, "minor"],
    [{ enum: ["a", "b"] }, { enum: ["a"] }, "major"],
    [{ enum: ["a"] }, { enum: ["a", "b"] }, "minor"],
    [{ enum: [25, 50] }, { enum: [25, 50, 60] }, "minor"],
    [{ enum: [25, 50] }, { enum: [25] }, "major"],
    [{ maxLength: 10 }, { maxLength: 20 }, "minor"],
    [{ maxLength: 10 }, { maxLength: 5 }, "major"],
    [{ minimum: 1 }, { minimum: 2 }, "major"],
    [{ minimum: 2 }, { minimum: 1 }, "minor"],
    [{ minimum: 2 }, {}, "minor"],
    [{}, { minItems: 1 }, "major"],
    [{ pattern: "^a$" }, { pattern: "^b$" }, "major"],
    [{ type: "string" }, { type: ["string", "number"] }, "minor"],
    [{ type: ["string", "number"] }, { type: "string" }, "major"],
    [{ type: "integer" }, { type: "number" }, "minor"],
    [{ properties: {} }, { properties: { a: {} } }, "minor"],
    [{ properties: { a: {} } }, { properties: {} }, "major"],
    [{ additionalProperties: false }, { additionalProperties: true }, "minor"],
    [{}, { additionalProperties: false }, "major"],
    [{ const: 1 }, { const: 2 }, "major"],
    [{ description: "a" }, { description: "b" }, "patch"],
    // Names of properties that are spelt like keywords.
    [{ properties: { type: { enum: ["a", "b"] } } }, { properties: { type: { enum: ["a"] } } }, "major"],
    [{ properties: { title: {} } }, { properties: {} }, "major"],
    [{ properties: {} }, { properties: { description: {} } }, "minor"],
    [{ properties: { properties: { type: "string" } } }, { properties: { properties: { type: "number" } } }, "major"],
    [{ properties: { properties: { title: "a" } } }, { properties: { properties: { title: "b" } } }, "patch"],
    [{ $defs: {} }, { $defs: { a: { type: "string" } } }, "patch"],
    [{}, { $defs: { a: { type: "string" } } }, "patch"],
    [{ anyOf: [{ type: "string" }] }, { anyOf: [{ type: "number" }] }, "major"],
  ])("%j to %j is %s", (before, after, bump) => expect(judge(before, after)).toEqual([bump]));
});

describe("judgeRecord", () => {
  const judge = (before: object, after: object) => differencesOf(before, after).map((difference) => judgeRecord("stages", difference).bump);
  const setting = (unit: string) => ({ settings: { loadOhms: { unit, typical: "4" } } });
  it.each([
    ["a setting that is gone", setting("ohm"), { settings: {} }, "major"],
    ["the last setting that is gone", setting("ohm"), {}, "major"],
    ["a new setting", {}, setting("ohm"), "minor"],
    ["a setting in another unit", setting("ohm"), setting("V"), "major"],
    ["a setting's other typical value", setting("ohm"), { settings: { loadOhms: { unit: "ohm", typical: "5" } } }, "patch"],
    ["another text", { summary: "a" }, { summary: "b" }, "patch"],
  ])("%s", (_name, before, after, bump) => expect(judge(before, after)).toEqual([bump]));
});

describe("leastVersion", () => {
  // Semantic Versioning 2.0.0, sections 6 to 8; below 1.0.0 the second number takes breaking changes, as package managers read ^0.y.z.
  it.each([
    ["1.4.2", "none", "1.4.2"],
    ["1.4.2", "patch", "1.4.3"],
    ["1.4.2", "minor", "1.5.0"],
    ["1.4.2", "major", "2.0.0"],
    ["0.4.2", "patch", "0.4.3"],
    ["0.4.2", "minor", "0.4.3"],
    ["0.4.2", "major", "0.5.0"],
  ] as const)("from %s for %s is %s", (from, due, least) => expect(leastVersion(from, due)).toBe(least));
  it("compares by numbers, not by letters", () => {
    expect(raisedEnough("1.9.0", "1.10.0", "minor")).toBe(true);
    expect(raisedEnough("1.9.0", "1.8.0", "none")).toBe(false);
  });
});

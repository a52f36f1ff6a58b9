import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { referencesOf } from "../shared/referencesOf.ts";
import { misplacedProperties, shapeOf } from "../shared/schemaOrder.ts";
import { surveyOf } from "./survey.ts";

it.each([
  ["a name that reaches into objects", '{"a": {"__proto__": {"a": 1}}}'],
  ["the same by escape", '{"\\u005f_proto__": 1}'],
  ["a constructor", '[{"constructor": 1}]'],
  ["a number beyond all bounds", "[1e999]"],
  ["a number beyond what a meter shows", "[-1.1e15]"],
  ["nesting without end", `${"[".repeat(50)}${"]".repeat(50)}`],
  ["a list without end", `[${"0,".repeat(4000)}0]`],
])("%s is odd", (_name, text) => expect(surveyOf(JSON.parse(text)).odd).toBe(true));

it.each([
  ["a large number", "[1e15]"],
  ["names as long as a forbidden one", '{"capacitor": 1, "rectifier": 2, "transformer": 3}'],
  ["forbidden words in a text", '["__proto__"]'],
  ["nesting as deep as a record may go", `${"[".repeat(40)}${"]".repeat(40)}`],
])("%s is not odd", (_name, text) => expect(surveyOf(JSON.parse(text)).odd).toBe(false));

it("gathers sources wherever they stand, but not inside a list of them", () => {
  const value = {
    source: "a",
    x: [{ source: "b", sources: ["c", "", 1, { source: "no" }] }],
    sources: "no",
    y: { source: { source: "d" } },
  };
  expect(surveyOf(value).sources).toEqual(["a", "b", "c", "d"]);
});

describe("of the templates", () => {
  const values = readdirSync("datasets/stages", { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".json"))
    .map((name) => JSON.parse(readFileSync(`datasets/stages/${name}`, "utf8")) as Record<string, unknown>);

  it("gathers the sources that are told with their places", () => {
    for (const value of values) {
      const told = referencesOf("stage", value).flatMap(({ kind, id }) => (kind === "source" ? [id] : []));
      expect(surveyOf(value).sources).toEqual(told.filter((id, index) => id !== told[index - 1]));
    }
  });

  it("notices properties out of order, and only these", () => {
    for (const value of values) {
      expect(surveyOf(value, shapeOf("stage")).misplaced).toBe(false);
      const turned = { ...value, parts: [Object.fromEntries(Object.entries((value.parts as object[])[0] ?? {}).toReversed())] };
      expect(misplacedProperties("stage", turned)).not.toEqual([]);
      expect(surveyOf(turned, shapeOf("stage")).misplaced).toBe(true);
    }
  });
});

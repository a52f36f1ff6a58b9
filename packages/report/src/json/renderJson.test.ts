import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { hostileReport } from "../testing/hostileReport.ts";
import { renderJson } from "./renderJson.ts";
import { stableJson } from "./stableJson.ts";

describe("stableJson", () => {
  it("sorts keys at every depth and indents by two", () => {
    expect(stableJson({ b: [{ d: 1, c: null }], a: "x" })).toBe(
      '{\n  "a": "x",\n  "b": [\n    {\n      "c": null,\n      "d": 1\n    }\n  ]\n}\n',
    );
  });

  it("gives the same text whatever the order of keys, and reads back to the same value", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
        const reversed = Object.fromEntries(Object.entries(value).reverse());
        expect(stableJson(reversed)).toBe(stableJson(value));
        expect(JSON.stringify(JSON.parse(stableJson(value)))).toBe(
          JSON.stringify(JSON.parse(stableJson(JSON.parse(JSON.stringify(value))))),
        );
      }),
    );
  });
});

describe("renderJson", () => {
  it("reads back to the report", () => {
    expect(JSON.parse(renderJson(fixtureReport))).toStrictEqual(fixtureReport);
    expect(JSON.parse(renderJson(hostileReport))).toStrictEqual(hostileReport);
  });

  it("holds no character that a terminal would obey", () => {
    expect(renderJson(hostileReport).replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });
});

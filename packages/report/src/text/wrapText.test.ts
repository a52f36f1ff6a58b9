import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hang, textWidth, wrapText } from "./wrapText.ts";

describe("wrapText", () => {
  it("breaks at blanks and cuts only a word that is longer than a line", () => {
    expect(wrapText("one two three", 7)).toStrictEqual(["one two", "three"]);
    expect(wrapText("abcdefghij kl", 4)).toStrictEqual(["abcd", "efgh", "ij", "kl"]);
    expect(wrapText("", 10)).toStrictEqual([""]);
  });

  it("counts wide characters twice and combining marks not at all", () => {
    // Unicode Standard Annex 11: CJK ideographs are wide.
    expect(textWidth("\u771f\u7a7a\u7ba1")).toBe(6);
    expect(textWidth("e\u0301")).toBe(1);
    expect(wrapText("\u771f\u7a7a\u7ba1", 4)).toStrictEqual(["\u771f\u7a7a", "\u7ba1"]);
  });

  it("loses nothing and keeps to the width", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom("a", "b", " ", "\u771f", "e\u0301", "\u{1f4fb}"), maxLength: 200 }),
        fc.integer({ min: 2, max: 30 }),
        (text, width) => {
          const lines = wrapText(text, width);
          expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
          for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(width);
        },
      ),
    );
  });
});

describe("hang", () => {
  it("puts further lines under the first word", () => {
    expect(hang("- ", "one two three four five", 18)).toStrictEqual(["- one two three", "  four five"]);
  });
});

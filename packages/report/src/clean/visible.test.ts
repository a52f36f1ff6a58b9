import { describe, expect, it } from "vitest";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { hostileReport } from "../testing/hostileReport.ts";
import { cleanReport } from "./cleanReport.ts";
import { visible } from "./visible.ts";

describe("visible", () => {
  it.each([
    ["plain", "C1 47 uF", "C1 47 uF"],
    ["line breaks", "a\r\nb\tc\u2028d", "a b c d"],
    ["terminal escape", "\u001b[31m", "[U+001B][31m"],
    ["eight-bit escape", "\u009b1m", "[U+009B]1m"],
    ["direction override", "a\u202eb", "a[U+202E]b"],
    ["isolates", "\u2067x\u2069", "[U+2067]x[U+2069]"],
    ["zero width", "V\u200b1", "V[U+200B]1"],
    ["byte order mark", "\ufeffa", "[U+FEFF]a"],
    ["filler without a shape", "a\u3164b", "a[U+3164]b"],
    ["tag character", "a\u{e0041}b", "a[U+E0041]b"],
    ["lone surrogate", "\ud800x", "[U+D800]x"],
    ["a whole pair", "\u{1f4fb}", "\u{1f4fb}"],
    ["combining mark and no-break space", "e\u0301\u00a0V", "e\u0301\u00a0V"],
    ["picture selector", "\u26a0\ufe0f", "\u26a0"],
  ])("%s", (_, given, shown) => {
    expect(visible(given)).toBe(shown);
  });
});

describe("cleanReport", () => {
  it("leaves nothing hidden in any text of the report", () => {
    const before = JSON.stringify(hostileReport);
    const after = JSON.stringify(cleanReport(hostileReport));
    expect(before).toContain("\u202e");
    expect(after).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]|\\u|\\n/u);
  });

  it("changes nothing in a report without such characters", () => {
    expect(cleanReport(fixtureReport)).toStrictEqual(fixtureReport);
  });
});

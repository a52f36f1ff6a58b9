import { describe, expect, it } from "vitest";
import { emptyReport } from "../testing/emptyReport.ts";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { hostileReport, hostileTexts } from "../testing/hostileReport.ts";
import { emptyWords } from "../view/emptyWords.ts";
import { renderText } from "./renderText.ts";
import { textWidth } from "./wrapText.ts";

const plain = renderText(fixtureReport, { colour: false });

describe("renderText", () => {
  it("prints the whole report", async () => {
    await expect(plain).toMatchFileSnapshot("../testing/expected/report.txt");
  });

  it.each([72, 80, 100, 160])("keeps to %i columns", (width) => {
    for (const line of renderText(fixtureReport, { colour: false, width }).split("\n")) expect(textWidth(line)).toBeLessThanOrEqual(width);
  });

  it("brings clearance, dangers and the next work before line 40 of the fixture", () => {
    const lines = plain.split("\n");
    for (const title of ["CLEARANCE", "DANGERS", "NEXT AT THE BENCH"]) {
      expect(lines.indexOf(title)).toBeGreaterThan(0);
      expect(lines.indexOf(title)).toBeLessThan(40);
    }
  });

  it("differs in colour by escapes only", () => {
    const painted = renderText(fixtureReport, { colour: true });
    expect(painted).toContain("\u001b[");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: terminal escapes are what is taken away
    expect(painted.replace(/\u001b\[\d+m/g, "")).toBe(plain);
    expect(plain).not.toContain("\u001b");
  });

  it("says why a section is empty", () => {
    const text = renderText(emptyReport, { colour: false }).replace(/\n\s*/g, " ");
    for (const key of [
      "holds",
      "dangers",
      "next",
      "stages",
      "readings",
      "expected",
      "changes",
      "order",
      "checksMade",
      "checksNotMade",
      "sources",
    ] as const) {
      expect(text).toContain(emptyWords[key]);
    }
  });

  it("lets no control, direction or hidden character of a job through", () => {
    const text = renderText(hostileReport, { colour: false });
    expect(/[\p{Cc}\p{Cf}\p{Cs}]/u.exec(text.replaceAll("\n", ""))).toBeNull();
    expect(text).toContain("[U+001B]");
    expect(text).toContain("[U+202E]");
  });

  it("cuts nothing off", () => {
    const text = renderText(hostileReport, { colour: false, width: 80 }).replace(/\s/g, "");
    expect(text.includes(hostileTexts.long)).toBe(true);
    for (const finding of hostileReport.findings) expect(text.includes(finding.title.slice(0, 20).replace(/\s/g, ""))).toBe(true);
  });
});

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
    for (const key of ["holds", "dangers", "next", "stages", "readings", "expected", "changes", "order", "checksMade"] as const) {
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
    for (const finding of hostileReport.findings.filter(({ severity }) => severity !== "good")) {
      expect(text).toContain(finding.title.slice(0, 20).replace(/\s/g, ""));
    }
  });
});

describe("renderText as a summary", () => {
  const lines = plain.split("\n");

  it("shows value, limit and margin of every danger", () => {
    // The two dangers of the fixture: 478.2 V on 450 V is 6.3 % too much; 2.21 mA is 4.42 times 0.5 mA, 342 % too much.
    expect(plain).toContain("478 V at high line before the tubes warm up, on a 450 V capacitor; at most 450 V,\n    over by 6.3 %");
    expect(plain).toContain("2.21 mA, at most 500 uA, over by 342 %");
  });

  it("names every finding that is not good, each by the number that it has in the full report", () => {
    for (const [index, { severity }] of fixtureReport.findings.entries()) {
      const number = index + 1;
      const isNamed = plain.includes(`(${number}) `) || plain.includes(`  ${number}. ${severity}`);
      expect([number, isNamed]).toStrictEqual([number, severity !== "good"]);
    }
  });

  it("prints every reading, part to order and change", () => {
    for (const { at } of fixtureReport.readings) expect(lines.some((line) => line.startsWith(`  ${at} `))).toBe(true);
    for (const { what } of fixtureReport.order) expect(plain).toContain(what);
    for (const { part } of fixtureReport.changes) expect(lines.some((line) => line.startsWith(`  ${part} `))).toBe(true);
  });

  it("says of a planned finding that it is planned", () => {
    const [first, ...others] = fixtureReport.findings;
    const planned = renderText({ ...fixtureReport, findings: [{ ...first!, life: "planned" }, ...others] }, { colour: false });
    expect(planned).toContain(`1. danger: If done as planned: ${first!.title}`);
  });

  it("counts what holds later steps, and names the next step's holds in full", () => {
    const { holds } = fixtureReport.clearance;
    const many = Array.from({ length: 9 }, (_, index) => ({ step: "service" as const, reason: `later ${index}`, finding: -1 }));
    const now = Array.from({ length: 9 }, (_, index) => ({ step: "current-limited" as const, reason: `now ${index}`, finding: -1 }));
    const clearance = { ...fixtureReport.clearance, holds: [...now, ...holds, ...many] };
    const text = renderText({ ...fixtureReport, clearance }, { colour: false });
    for (const { reason } of now) expect(text).toContain(reason);
    expect(text).toMatch(/Then service: 10.*7\s+more/s);
    expect(text).not.toContain("later 8");
  });

  it("prints at most eight steps and says how many are left", () => {
    const step = fixtureReport.next[0]!;
    const next = Array.from({ length: 11 }, (_, index) => ({ ...step, action: `step ${index}`, why: "" }));
    const text = renderText({ ...fixtureReport, next }, { colour: false });
    expect(text).toContain("  8. step 7");
    expect(text).not.toContain("step 8");
    expect(text).toContain("3 more in the full report.");
  });

  it("ends by saying where the rest is", () => {
    expect(lines.at(-3)).toMatch(/^Reasons, methods, sources/);
  });
});

import { describe, expect, it } from "vitest";
import { emptyReport } from "../testing/emptyReport.ts";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { hostileReport, hostileTexts } from "../testing/hostileReport.ts";
import { emptyWords } from "../view/emptyWords.ts";
import { sectionTitles } from "../view/sectionTitles.ts";
import { renderMarkdown } from "./renderMarkdown.ts";

const tablesOf = (text: string): string[][] =>
  text
    .split("\n\n")
    .filter((block) => block.startsWith("|"))
    .map((block) => block.trim().split("\n"));

const cellsOf = (row: string): number => row.split(/(?<!\\)(?:\\\\)*\|/).length;

describe("renderMarkdown", () => {
  it("prints the whole report", async () => {
    await expect(renderMarkdown(fixtureReport)).toMatchFileSnapshot("../testing/expected/report.md");
  });

  it("has its sections in the common order", () => {
    const heads = [...renderMarkdown(fixtureReport).matchAll(/^## (.+)$/gm)].map((match) => match[1]);
    expect(heads).toStrictEqual(Object.values(sectionTitles));
  });

  it("says why a section is empty", () => {
    const text = renderMarkdown(emptyReport);
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

  describe("with hostile text in every field", () => {
    const text = renderMarkdown(hostileReport);

    it("keeps every table's rows at the width of its head", () => {
      const tables = tablesOf(text);
      expect(tables.length).toBeGreaterThan(5);
      for (const rows of tables) for (const row of rows) expect(cellsOf(row)).toBe(cellsOf(rows[0] ?? ""));
    });

    it("has the headings of the report and no other", () => {
      const clean = renderMarkdown(fixtureReport);
      const levels = (markdown: string): string[] => [...markdown.matchAll(/^(#{1,6}) /gm)].map((match) => match[1] ?? "");
      expect(levels(text)).toStrictEqual(levels(clean));
    });

    it("has no tag, link, mention or hidden character of the job", () => {
      const found = (pattern: RegExp, from = text): string[] => [...from.matchAll(pattern)].map((match) => match[0]);
      expect(found(/(?<!\\)<\/?[a-z!].{0,20}/gi, text.replaceAll("<!-- -->", ""))).toStrictEqual([]);
      expect(found(/.{0,20}(?<!\\)\]\(/g)).toStrictEqual([]);
      expect(found(/[@#][\p{L}\p{N}]/gu)).toStrictEqual([]);
      expect(found(/(?<!\\):\/\/|www\.[a-z]/g)).toStrictEqual([]);
      expect(found(/[\p{Cc}\p{Cf}\p{Cs}]/gu, text.replaceAll("\n", ""))).toStrictEqual([]);
      expect(text).toContain(hostileTexts.long);
    });
  });
});

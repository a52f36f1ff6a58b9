import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { seriesByRule } from "../../shared/seriesByRule.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { preferredValues } from "./preferred-values.ts";

const file = "datasets/tables/preferred-values.csv";
const table = readFileSync(fileURLToPath(new URL(`../../../../../${file}`, import.meta.url)), "utf8");

const facts = "datasets/tables/preferred-series.csv";

testRule(preferredValues, {
  fires: [
    { name: "a member that the series has not", file, text: table.replace(/^E24,27,/m, "E24,«28»,"), says: "E24" },
    { name: "a row that is missing", file, text: table.replace(/^E96,105,.*\n/m, ""), whole: true, says: "E96 lacks 1" },
    { name: "other members", file: facts, text: "series,members,figures,source\nE24,«23»,2,from-memory\n" },
  ],
  passes: [
    { name: "the table as it is", file, text: table },
    { name: "the members of E24", file: facts, text: "series,members,figures,source\nE24,24,2,from-memory\n" },
  ],
});

// IEC 60063:2015, table 1.
it("has E12 as printed", () => expect(seriesByRule("E12")).toEqual([10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82]));
it("has E24 as printed", () =>
  expect(seriesByRule("E24")).toEqual([10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91]));

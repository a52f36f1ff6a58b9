import { markingFamilies, roles, substituteMarking } from "@underchassis/calc";
import { loadDataset } from "@underchassis/dataset/load";
import { expect, it } from "vitest";
import { familyFacts } from "../../packages/calc/src/markings/decode/markingFamily.ts";

const { sources, tubes } = loadDataset();

it("every source that a decoded code names is listed", () => {
  for (const family of markingFamilies) expect([family, sources.has(familyFacts[family].source)]).toEqual([family, true]);
});

it.each(roles)("every source that the role $id names is listed", ({ id, kind }) => {
  const cited = ["47k 1W", ".22 600V", "250 mmf mica", "40/450"].flatMap((text) =>
    substituteMarking(text, id, { lineVolts: 230, workingVolts: 100 }).flatMap((result) =>
      result.ok ? [result.value.limits.rule, ...result.value.rules, ...result.value.ratings.map(({ rule }) => rule)] : [],
    ),
  );
  expect(cited.length, kind).toBeGreaterThan(1);
  expect(cited.filter(({ source }) => !sources.has(source))).toEqual([]);
});

it("a record of every common rectifier gives the limit that a reservoir is held to", () => {
  // Types of the reference's rectifier table that take a capacitor input (section 10.5).
  for (const type of ["5Y3GT", "5U4G", "5U4GB", "5R4GY", "6X4", "6X5GT", "35W4", "35Z5GT", "5V4G", "GZ34"])
    expect([type, tubes.get(type)?.limits.maxInputFarads]).toEqual([type, expect.any(Number)]);
});

/** What the validator lets a formula ask of a part is what grading gives: the two lists stand apart, since neither package's list is the other's matter. */
import { expect, it } from "vitest";
import { MAIN_OF, PART_PROPERTIES } from "../../packages/grading/src/checks/shared/stageValues.ts";
import { PROPERTIES } from "../../packages/validation/src/shared/formulaProperties.ts";

it("formulas may ask for what grading gives, and for nothing else", () => {
  expect(Object.keys(PROPERTIES).sort()).toEqual(PART_PROPERTIES.toSorted());
});

it.each(Object.entries(MAIN_OF))("%s is had by the kinds of parts that grading gives it for", (property, kinds) => {
  expect(PROPERTIES[property]?.toSorted()).toEqual(kinds.toSorted());
});

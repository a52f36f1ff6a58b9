import { expect, test } from "vitest";
import { allChecks } from "../../packages/grading/src/checks/allChecks.ts";
import { checkFiles } from "../../scripts/generate/checkListFile.ts";

test("every check is named and filed as its file lies", () => {
  expect(allChecks.map(({ area, id }) => `${area}/${id}`)).toEqual(checkFiles());
});

/** The datasets against every rule that looks at data; the circuits are held by templates.test.ts and examples.test.ts. */
import { diskSource, validateAll } from "@underchassis/validation";
import { expect, it } from "vitest";
import { sourcesInCode } from "../../packages/validation/src/node/sourcesInCode.ts";

it("nothing is wrong with the datasets; npm run validate shows what is", () => {
  const { diagnostics, files } = validateAll(diskSource("."), { namedInCode: sourcesInCode(".") });
  expect(files).toBeGreaterThan(100);
  expect(diagnostics.map(({ code, file, line, message }) => `${file}:${line ?? ""} ${code} ${message}`)).toEqual([]);
}, 120_000);

import { expect, it } from "vitest";
import { DIAGNOSTIC_LIMIT, Problems } from "./problems.ts";
import { sourceText } from "./sourceText.ts";

const source = sourceText("job.json", "a\n".repeat(10_000));

function filled(count: number): Problems {
  const problems = new Problems();
  for (let line = count; line > 0; line--) problems.add({ source, offset: 2 * (line - 1), length: 1 }, { code: "x", message: "m" });
  return problems;
}

it("sorts by file, line and column and says each thing once", () => {
  const problems = filled(3);
  problems.add({ source, offset: 0, length: 1 }, { code: "x", message: "m" });
  problems.addToFile("a.json", { code: "y", message: "n" });
  expect(problems.list().map(({ file, line }) => [file, line])).toEqual([
    ["a.json", undefined],
    ["job.json", 1],
    ["job.json", 2],
    ["job.json", 3],
  ]);
});

it("shows the first and counts the rest", () => {
  expect(filled(DIAGNOSTIC_LIMIT).list()).toHaveLength(DIAGNOSTIC_LIMIT);
  const list = filled(DIAGNOSTIC_LIMIT + 7).list();
  expect(list).toHaveLength(DIAGNOSTIC_LIMIT + 1);
  expect(list.at(-1)).toMatchObject({ code: "problems-omitted", message: "7 more problems not shown" });
  expect(list.at(-2)).toMatchObject({ line: DIAGNOSTIC_LIMIT });
  expect(filled(9_000).list().at(-1)).toMatchObject({ message: `${9_000 - DIAGNOSTIC_LIMIT} more problems not shown` });
});

it("works out the nearest only for what is shown", () => {
  const problems = filled(DIAGNOSTIC_LIMIT);
  let asked = 0;
  problems.add({ source, offset: 2 * DIAGNOSTIC_LIMIT, length: 1 }, { code: "x", message: "m", nearest: () => String(++asked) });
  problems.list();
  expect(asked).toBe(0);
});

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import type { Diagnostic } from "../model/diagnostic.ts";
import { allRules } from "../rules/allRules.ts";
import type { ValidateResult } from "../run/validateFiles.ts";
import { explainRule, nearestRule } from "./explainRule.ts";
import { githubFormat, githubSummary } from "./githubFormat.ts";
import { jsonFormat } from "./jsonFormat.ts";
import { sarifFormat } from "./sarifFormat.ts";
import { textFormat } from "./textFormat.ts";

const FILE = "datasets/stages/supply/small-supply.json";
const placed: Diagnostic = {
  code: "UC-403",
  severity: "error",
  file: FILE,
  line: 2,
  column: 9,
  endLine: 2,
  endColumn: 12,
  message: 'the template has no role "abd"',
  received: "abd",
  expected: "abc or xyz",
  nearest: "abc",
};
const whole: Diagnostic = { code: "UC-102", severity: "warning", file: "datasets/a,b:c 100%.json", message: "no kind\nof file" };
const result: ValidateResult = { diagnostics: [placed, whole], omitted: 0, files: 7, simulated: 0 };
const text = '{\n  "x": "abd > 1"\n}\n';

describe("text", () => {
  const shown = (one: ValidateResult, most = 50) =>
    textFormat(one, { textOf: (file) => (file === FILE ? text : undefined), most, colour: false, electrical: one.simulated > 0 });

  it("shows place, message, the line with the place underlined, and what would work", () => {
    expect(shown(result)).toBe(
      `error UC-403 ${FILE}:2:9  the template has no role "abd"
    1 | {
  > 2 |   "x": "abd > 1"
      |         ^^^
    3 | }
  received: abd
  expected: abc or xyz
  nearest: abc

warning UC-102 datasets/a,b:c 100%.json  no kind[U+000A]of file

1 error and 1 warning in 7 files; circuits not simulated, which --electrical does
`,
    );
  });

  it("counts what it does not show, and says how to see it", () => {
    expect(shown({ ...result, omitted: 3 }, 1)).toContain("4 more not shown; --max-problems 5 shows them");
  });

  it("shows a window of a long line, and nothing that steers a terminal", () => {
    const long = `${"a".repeat(900)}\u001b[31mX${"b".repeat(900)}`;
    const one = { ...placed, line: 1, endLine: 1, column: 906, endColumn: 907, message: "\u001b[2J" };
    const output = textFormat({ ...result, diagnostics: [one] }, { textOf: () => long, most: 9, colour: false, electrical: false });
    expect(output).not.toContain("\u001b");
    expect(Math.max(...output.split("\n").map((line) => line.length))).toBeLessThan(260);
    expect(output).toContain("X");
  });

  it("says so when nothing was found", () => {
    expect(shown({ diagnostics: [], omitted: 0, files: 1, simulated: 2 })).toBe(
      "nothing found in 1 file; 2 circuits simulated, none of the findings electrical\n",
    );
  });
});

describe("json", () => {
  it("keeps its schema", () => {
    const schema = JSON.parse(
      readFileSync(fileURLToPath(new URL("../../../../schemas/validation.schema.json", import.meta.url)), "utf8"),
    ) as object;
    const validate = new Ajv2020({ allErrors: true, strict: true }).compile(schema);
    const output = JSON.parse(jsonFormat(result)) as { diagnostics: { line?: number; endLine?: number }[] };
    validate(output);
    expect(validate.errors ?? []).toEqual([]);
    expect(output).toMatchObject({ errors: 1, warnings: 1, files: 7 });
    delete output.diagnostics[0]?.endLine;
    expect(validate(output)).toBe(false);
  });
});

describe("github", () => {
  // Workflow commands: data escapes % CR LF, properties also : and , (GitHub, workflow commands).
  it("escapes what would end a command", () => {
    expect(githubFormat(result)).toBe(
      `::error file=${FILE},line=2,endLine=2,col=9,endColumn=12,title=UC-403::the template has no role "abd"%0Areceived: abd%0Aexpected: abc or xyz%0Anearest: abc
::warning file=datasets/a%2Cb%3Ac 100%25.json,title=UC-102::no kind%0Aof file
1 error and 1 warning in 7 files
`,
    );
  });

  it("puts errors before warnings and counts what GitHub would drop", () => {
    const many = Array.from({ length: 14 }, (_, index) => ({
      ...whole,
      severity: index % 2 === 0 ? ("warning" as const) : ("error" as const),
    }));
    const lines = githubFormat({ ...result, diagnostics: [...many, ...many] }).split("\n");
    expect(lines.filter((line) => line.startsWith("::error"))).toHaveLength(10);
    expect(lines.findIndex((line) => line.startsWith("::warning"))).toBe(10);
    expect(lines.at(-3)).toContain("8 more findings are not annotated");
  });

  it("leaves no markup of a file in the summary", () => {
    const summary = githubSummary({ ...result, diagnostics: [{ ...placed, message: "<img src=x> | `a` [b](javascript:c)" }] });
    expect(summary).not.toMatch(/<img|`a`|\[b\]/);
    expect(summary.split("\n").filter((line) => line.startsWith("| error"))).toHaveLength(1);
  });
});

describe("sarif", () => {
  // SARIF 2.1.0 (OASIS), sections 3.13, 3.14, 3.27, 3.29, 3.30.
  it("has what the standard requires of a log", () => {
    const log = JSON.parse(sarifFormat(result, allRules));
    expect(log.version).toBe("2.1.0");
    const [run] = log.runs;
    expect(run.tool.driver.name).toEqual(expect.any(String));
    const ids = run.tool.driver.rules.map(({ id }: { id: string }) => id);
    expect(run.columnKind).toBe("utf16CodeUnits");
    for (const one of run.results) {
      expect(["error", "warning", "note", "none"]).toContain(one.level);
      expect(ids[one.ruleIndex]).toBe(one.ruleId);
      expect(one.message.text).toEqual(expect.any(String));
      const { artifactLocation } = one.locations[0].physicalLocation;
      expect(artifactLocation.uri).not.toMatch(/^\/|^[a-z]+:|\\| /);
    }
    expect(run.results[0].locations[0].physicalLocation.region).toEqual({ startLine: 2, startColumn: 9, endLine: 2, endColumn: 12 });
    expect(run.results[1].locations[0].physicalLocation).not.toHaveProperty("region");
  });
});

describe("explain", () => {
  it("knows rules by code and name", () => {
    const text = explainRule(allRules, "uc-403");
    expect(text).toContain("UC-403 formula-name (error, looks at: record)");
    expect(explainRule(allRules, "formula-name")).toBe(text);
    expect(explainRule(allRules, "UC-000")).toBeUndefined();
    expect(nearestRule(allRules, "formula-nam")).toBe("formula-name");
  });
});

import type { Diagnostic } from "@underchassis/grading";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { textWidth } from "../text/wrapText.ts";
import { codeFrame } from "./codeFrame.ts";
import { renderDiagnostics } from "./renderDiagnostics.ts";
import { renderDiagnosticsJson } from "./renderDiagnosticsJson.ts";

const files = {
  "parts.csv": { path: "bench/parts.csv", text: "part,marked\r\nC1,47 kV\r\nC2,8 mfd\r\n" },
  "job.json": { path: "bench/job.json", text: '{\n  "titel": "x"\n}\n' },
};

const problems: Diagnostic[] = [
  {
    code: "value-unreadable",
    severity: "error",
    file: "parts.csv",
    line: 2,
    column: 4,
    length: 5,
    message: "kV is not a unit of capacitance",
    received: "47 kV",
    expected: 'a capacitance such as "0.05 uF"',
    nearest: "47 nF",
  },
  {
    code: "key-unknown",
    severity: "error",
    file: "job.json",
    line: 2,
    column: 3,
    length: 7,
    message: "no such field",
    received: "titel",
    nearest: "title",
    help: "fields are listed in the job schema",
  },
  { code: "readings-missing", severity: "warning", file: "readings.csv", message: "the job holds no reading" },
];

describe("renderDiagnostics", () => {
  it("groups by file, in order, with the place underlined and a count", () => {
    expect(renderDiagnostics(problems, files, { colour: false })).toBe(`job.json
  error job.json:2:3 no such field [key-unknown]
    2 |   "titel": "x"
      |   ^^^^^^^
    received: "titel"
    nearest: title
    help: fields are listed in the job schema

parts.csv
  error parts.csv:2:4 kV is not a unit of capacitance [value-unreadable]
    2 | C1,47 kV
      |    ^^^^^
    received: "47 kV"
    expected: a capacitance such as "0.05 uF"
    nearest: 47 nF

readings.csv
  warning readings.csv the job holds no reading [readings-missing]

2 errors, 1 warning in 3 files
`);
  });

  it("finds a file by its path too, and does without one that was not read", () => {
    const [first] = problems as [Diagnostic, ...Diagnostic[]];
    expect(renderDiagnostics([{ ...first, file: "bench/parts.csv" }], files, { colour: false })).toContain("2 | C1,47 kV");
    expect(renderDiagnostics([{ ...first, file: "__proto__" }], files, { colour: false })).not.toContain("|");
    expect(renderDiagnostics([{ ...first, line: 99 }], files, { colour: false })).not.toContain("|");
  });

  it("shows what a terminal would obey instead of sending it", () => {
    const text = "C1,\u001b[2J\u202e47 kV";
    const output = renderDiagnostics(
      [
        {
          code: "x",
          severity: "error",
          file: "a\u001b.csv",
          line: 1,
          column: 4,
          length: 5,
          message: "m\u0007",
          received: text,
          nearest: "\u009b",
          help: "\ud800",
        },
      ],
      { "a\u001b.csv": { path: "p", text } },
      { colour: false },
    );
    expect(output.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
    expect(output).toContain("C1,[U+001B][2J[U+202E]47 kV");
    expect(output).toContain(`|    ${"^".repeat("[U+001B][2J[U+202E]".length)}`);
  });

  it("cuts a long line around the place and a long value at its end", () => {
    const text = `${"a".repeat(1000)}BAD${"c".repeat(1000)}`;
    const output = renderDiagnostics(
      [{ code: "x", severity: "error", file: "f", line: 1, column: 1001, length: 3, message: "m", received: text }],
      { f: { path: "f", text } },
      { colour: false },
    );
    const [, , source = "", underline = ""] = output.split("\n");
    expect(source.length).toBeLessThan(140);
    expect(source).toMatch(/\.\.\.a+BADc+\.\.\.$/);
    expect(source.slice(underline.indexOf("^"), underline.lastIndexOf("^") + 1)).toBe("BAD");
    expect(output).toContain("... (2003 characters)");
  });

  it("says so when there is nothing to say", () => {
    expect(renderDiagnostics([], files, { colour: true })).toBe("no problems found\n");
  });

  it("paints by severity on request", () => {
    expect(renderDiagnostics(problems, files, { colour: true })).toContain("\u001b[31merror\u001b[39m");
  });
});

/** Any UTF-16 units, halves of pairs among them. */
const anyUnits = fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 300 }).map((units) => String.fromCharCode(...units));

describe("codeFrame", () => {
  it("points inside the shown text whatever the line and place", () => {
    fc.assert(
      fc.property(anyUnits, fc.integer({ min: -5, max: 400 }), fc.integer({ min: 0, max: 400 }), (line, column, length) => {
        const { source, underline } = codeFrame(line, column, length);
        expect(source).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
        expect(underline).toMatch(/^ *\^+$/);
        expect(textWidth(underline)).toBeLessThanOrEqual(textWidth(source) + 1);
      }),
    );
  });

  it("never shows half of a character outside the basic plane", () => {
    // The pair stands at columns 2 and 3.
    expect(codeFrame("a\u{1f4fb}b", 3, 1)).toStrictEqual({ source: "a\u{1f4fb}b", underline: " ^^" });
  });
});

it("shows every choice and the whole advice, though not the whole of a long value", () => {
  const expected = Array.from({ length: 30 }, (_, index) => `choice-${index}`).join(", ");
  const [problem] = problems as [Diagnostic];
  const output = renderDiagnostics([{ ...problem, expected, help: `do ${"this and ".repeat(20)}that`, received: "v".repeat(200) }], files, {
    colour: false,
  });
  expect(output).toContain("choice-29");
  expect(output).toContain("and that\n");
  expect(output).toContain("... (200 characters)");
});

it("counts what is not shown behind all that is shown, for it speaks of the ones above", () => {
  const omitted: Diagnostic = { code: "problems-omitted", severity: "error", file: "job.json", message: "7 more problems not shown" };
  const lines = renderDiagnostics([omitted, ...problems], files, { colour: false }).split("\n");
  const told = lines.filter((line) => /^ {2}(error|warning)/.test(line));
  expect(told).toHaveLength(4);
  expect(told.at(-1)).toContain("7 more problems not shown");
});

describe("renderDiagnosticsJson", () => {
  it("keeps texts as written, in order, with counts", () => {
    const parsed = JSON.parse(renderDiagnosticsJson(problems)) as { diagnostics: Diagnostic[]; errors: number; warnings: number };
    expect(parsed.diagnostics).toStrictEqual([problems[1], problems[0], problems[2]]);
    expect([parsed.errors, parsed.warnings]).toStrictEqual([2, 1]);
  });
});

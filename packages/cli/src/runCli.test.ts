import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { runCli } from "./runCli.ts";

// The engine's side is played here by a job.json that says what the engine should answer; tests/cli/ runs the real one.
vi.mock("@underchassis/grading", () => ({
  gradeJob: (files: { job: { text: string } }) => {
    const answer = JSON.parse(files.job.text);
    if (answer.fault !== undefined) throw new TypeError(answer.fault);
    return answer;
  },
}));
vi.mock("@underchassis/report", () => ({
  renderText: (_report: object, options: object) => `text ${JSON.stringify(options)}\n`,
  renderJson: (report: object) => JSON.stringify(report),
  renderMarkdown: () => "# markdown\n",
  renderHtml: () => "<!doctype html>\n",
  renderDiagnosticsJson: (diagnostics: object) => JSON.stringify({ diagnostics }),
  renderDiagnostics: (diagnostics: { message: string }[], files: object) =>
    `${diagnostics.map(({ message }) => message).join("\n")} in ${Object.keys(files)}\n`,
}));

let folder = "";

async function run(args: readonly string[], colour = false): Promise<{ code: number; out: string; err: string }> {
  const said = { out: "", err: "" };
  const code = await runCli(args, {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    colour: { out: colour, err: colour },
    columns: colour ? 77 : undefined,
  });
  return { code, ...said };
}

const answering = (answer: object): string => {
  writeFileSync(join(folder, "job.json"), JSON.stringify(answer));
  return folder;
};

const graded = (danger: number) => ({ ok: true, report: { counts: { danger } } });

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "underchassis-cli-"));
  const datasets = join(folder, "datasets");
  for (const name of ["stages", "tubes", "cautions", "failure-notes", "tables"]) mkdirSync(join(datasets, name), { recursive: true });
  writeFileSync(join(datasets, "manifest.json"), '{"datasetVersion":"9.9.9"}');
  writeFileSync(join(datasets, "sources.csv"), "id,kind,title,detail\n");
  vi.stubEnv("UNDERCHASSIS_DATASETS", datasets);
});

afterEach(() => rmSync(folder, { recursive: true }));

test("exit code 1 exactly when a finding says danger", async () => {
  expect(await run(["grade", answering(graded(0))])).toEqual({ code: 0, out: 'text {"colour":false}\n', err: "" });
  expect((await run(["grade", answering(graded(2))])).code).toBe(1);
});

test.each([
  ["text", 'text {"colour":true,"width":77}\n'],
  ["markdown", "# markdown\n"],
  ["html", "<!doctype html>\n"],
])("prints %s", async (format, expected) => {
  expect((await run(["grade", answering(graded(0)), "--format", format], true)).out).toBe(expected);
});

test("--format json prints the report and nothing else", async () => {
  expect(JSON.parse((await run(["grade", answering(graded(1)), "--format", "json"])).out)).toEqual({ counts: { danger: 1 } });
});

test.each([
  ["report.html", [], "<!doctype html>\n"],
  ["report.md", [], "# markdown\n"],
  ["report.txt", [], 'text {"colour":false}\n'],
  ["report.html", ["--format", "markdown"], "# markdown\n"],
])("--out %s %j writes the file in the format that its ending or --format asks for, without colours", async (name, more, expected) => {
  const path = join(folder, name);
  const { code, out, err } = await run(["grade", answering(graded(1)), "--out", path, ...more], true);
  expect({ code, out, err }).toEqual({ code: 1, out: "", err: `wrote ${path}\n` });
  expect(readFileSync(path, "utf8")).toBe(expected);
});

test("an --out that ends in a format of no report is refused, not filled with text", async () => {
  const path = join(folder, "report.pdf");
  const { code, err } = await run(["grade", answering(graded(0)), "--out", path]);
  expect(code).toBe(2);
  expect(err).toContain("no report is written as .pdf");
  expect(() => readFileSync(path)).toThrow("ENOENT");
});

test("a report never replaces the job", async () => {
  const job = join(answering(graded(0)), "job.json");
  const before = readFileSync(job, "utf8");
  expect((await run(["grade", folder, "--out", job])).code).toBe(2);
  expect(readFileSync(job, "utf8")).toBe(before);
});

test("a job that cannot be graded: its diagnostics, exit code 2, and no file", async () => {
  const answer = { ok: false, diagnostics: [{ message: "value unreadable" }] };
  const path = join(folder, "report.html");
  expect(await run(["grade", answering(answer), "--out", path])).toEqual({
    code: 2,
    out: "",
    err: `value unreadable in ${join(folder, "job.json")}\n`,
  });
  expect(() => readFileSync(path)).toThrow("ENOENT");
  expect(JSON.parse((await run(["grade", folder, "--format=json"])).out)).toEqual({ diagnostics: answer.diagnostics });
});

test("a fault of ours: one line, how to report it, exit code 2, no stack trace, no terminal codes", async () => {
  const { code, out, err } = await run(["grade", answering({ fault: "cannot read x\u001b[31m" })]);
  expect(code).toBe(2);
  expect(out).toBe("");
  expect(err).toMatch(/^internal error: cannot read x\\u001b\[31m\n/);
  expect(err).toContain("open an issue");
  expect(err).not.toMatch(/\n\s+at /);
  expect(JSON.parse((await run(["grade", folder, "--format", "json"])).out)).toEqual({
    internalError: "cannot read x\u001b[31m",
  });
});

test("a job that is not there, as text and as JSON", async () => {
  const missing = join(folder, "nowhere", "x");
  expect(await run(["grade", missing])).toEqual({ code: 2, out: "", err: `${missing}: no such file or folder\n` });
  const { out } = await run(["grade", missing, "--format", "json"]);
  expect(JSON.parse(out).diagnostics).toEqual([{ code: "input", severity: "error", file: missing, message: "no such file or folder" }]);
});

test("a datasets folder that is not there is no internal error", async () => {
  vi.stubEnv("UNDERCHASSIS_DATASETS", join(folder, "gone"));
  const { code, err } = await run(["grade", answering(graded(0))]);
  expect(code).toBe(2);
  expect(err).toBe(`UNDERCHASSIS_DATASETS is ${join(folder, "gone")}, where no manifest.json lies\n`);
});

test.each([
  [["grde"], "Did you mean grade?"],
  [["grade"], "missing required argument"],
  [["grade", "x", "--format", "xml"], "Allowed choices are text, markdown, json, html"],
  [[], "Usage: underchassis"],
])("arguments %j: exit code 2 and the way out", async (args, expected) => {
  const { code, err } = await run(args);
  expect(code).toBe(2);
  expect(err).toContain(expected);
});

test("help and version go to the output, exit code 0", async () => {
  const help = await run(["--help"]);
  expect(help.code).toBe(0);
  expect(help.out).toMatch(/grade a job[\s\S]*Exit codes: 0 done/);
  expect((await run(["help", "grade"])).out).toContain("--out <file>");
  expect((await run(["--version"])).out).toMatch(/^\d+\.\d+\.\d+\n$/);
});

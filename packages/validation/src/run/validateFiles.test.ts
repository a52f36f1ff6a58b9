import { describe, expect, it } from "vitest";
import type { BytesRule, RecordRule } from "../model/rule.ts";
import { memorySource } from "../testing/memorySource.ts";
import { AT, SOUND_FILES } from "../testing/soundFiles.ts";
import { validateAll } from "./validateAll.ts";
import { validateFiles } from "./validateFiles.ts";

const facts = { severity: "error", title: "t", why: "w", bad: "b", good: "g" } as const;

it("makes a rule that throws a finding of that rule, and goes on", () => {
  const thrower: RecordRule = {
    ...facts,
    code: "UC-499",
    name: "thrower",
    scope: "record",
    kinds: ["tube"],
    check: () => {
      throw new Error("oops");
    },
  };
  const other: BytesRule = { ...facts, code: "UC-199", name: "other", scope: "bytes", kinds: ["tube"], check: () => [{ message: "seen" }] };
  const { diagnostics } = validateFiles(memorySource(SOUND_FILES), { rules: [thrower, other] });
  expect(diagnostics.map(({ code, file, message }) => [code, file, message])).toEqual([
    ["UC-199", AT.tube, "seen"],
    ["UC-901", AT.tube, "the rule UC-499 (thrower) failed: oops"],
  ]);
});

it("blames the rule that points outside its file", () => {
  const astray: BytesRule = {
    ...facts,
    code: "UC-199",
    name: "astray",
    scope: "bytes",
    kinds: ["tube"],
    check: () => [{ at: { line: 999, column: 1, length: 1 }, message: "there" }],
  };
  const { diagnostics } = validateFiles(memorySource(SOUND_FILES), { rules: [astray] });
  expect(diagnostics).toMatchObject([{ code: "UC-901", message: expect.stringContaining("outside") }]);
});

it("tells of a file that cannot be read, and reads the others", () => {
  const source = memorySource(SOUND_FILES);
  const broken = { list: source.list, read: (path: string) => (path === AT.tube ? fail() : source.read(path)) };
  const { diagnostics, files } = validateFiles(broken, { rules: [] });
  expect(diagnostics).toMatchObject([{ code: "UC-902", file: AT.tube, message: "the file cannot be read: no permission" }]);
  expect(files).toBe(Object.keys(SOUND_FILES).length);
});

describe("a file that cannot be used is told of itself, not of all that name it", () => {
  const JOB = "datasets/jobs/test-set/job.json";
  const jobText = (type: string) =>
    `${JSON.stringify({
      format: 1,
      title: "Test set",
      chassis: { era: 1950, line: { designVolts: "117 V", hertz: 60 } },
      stages: [{ id: "supply", template: "small-supply", bind: { hv: "T1 red", "b-plus": "B+" }, parts: { rectifier: { type } } }],
    })}\n`;
  const found = (files: Readonly<Record<string, string>>) =>
    validateAll(memorySource({ ...SOUND_FILES, [JOB]: jobText("1N4007"), ...files })).diagnostics.map(
      ({ code, file }) => `${code} ${file}`,
    );

  it("nothing is wrong before", () => expect(found({})).toEqual([]));
  it.each<[name: string, file: keyof typeof SOUND_FILES, change: (text: string) => string, code: string]>([
    [
      "a template with a comma too many",
      AT.stage,
      (text: string) => text.replace('"sources": ["common-practice"]', '"sources": ["common-practice"],'),
      "UC-201",
    ],
    ["a template that breaks off", AT.stage, (text: string) => `${text.slice(0, text.indexOf('"role": "outputCapacitor"'))}\n`, "UC-201"],
    ["a template with a wrong id", AT.stage, (text: string) => text.replace('"id": "small-supply"', '"id": "small-suply"'), "UC-501"],
    ["a template that breaks its schema", AT.stage, (text: string) => text.replace('"kind": "capacitor"', '"kind": "condenser"'), "UC-304"],
    ["a caution that is a list", AT.caution, () => "[]\n", "UC-303"],
    ["an empty failure note", AT.note, () => "", "UC-104"],
    [
      "a list of sources with a stray quote mark",
      AT.sources,
      (text: string) => text.replace("common-practice,common", 'common-practice,"common'),
      "UC-206",
    ],
    ["a list of diodes with semicolons", AT.diodes, (text: string) => text.replaceAll(",", ";"), "UC-506"],
  ])("%s", (_name, file, change, code) => {
    const codes = found({ [file]: change(SOUND_FILES[file]) });
    expect(codes.filter((one) => !one.endsWith(file))).toEqual([]);
    expect(codes[0]).toBe(`${code} ${file}`);
  });

  it("a job that breaks off is told so once", () =>
    expect(found({ [JOB]: `${jobText("1N4007").slice(0, 90)}\n` })).toEqual([`UC-201 ${JOB}`]));

  it("a job's own faults are told all the same", () => expect(found({ [JOB]: jobText("1N40007") })).toEqual([`UC-610 ${JOB}`]));
});

function fail(): never {
  throw new Error("no permission");
}

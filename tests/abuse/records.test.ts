/** Contributions that mean harm: each file is refused by name, at its place, in little time, and the others are still looked at. */
import { cpuUsage } from "node:process";
import { describe, expect, it } from "vitest";
import type { FileSource } from "../../packages/validation/src/model/fileSource.ts";
import { allRules } from "../../packages/validation/src/rules/allRules.ts";
import { validateFiles } from "../../packages/validation/src/run/validateFiles.ts";

/** Milliseconds of processor time that one hostile file may take, the parser's start included. */
const MOST_MILLISECONDS = 1500;

const CAUTION = "datasets/cautions/hostile.json";
const TABLE = "datasets/tables/hostile.csv";
const SOURCES = "datasets/sources.csv";
const STAGE = "datasets/stages/supply/hostile.json";

const sound = {
  $schema: "../../schemas/caution.schema.json",
  schemaVersion: 1,
  id: "hostile",
  title: "A hazard",
  text: "Something hot can burn a hand.",
  rank: 5,
  sources: ["common-practice"],
};
const text = JSON.stringify(sound, null, 2);
/** The sound record with one piece of its text exchanged. */
const edited = (from: string, to: string): string => {
  if (text.split(from).length !== 2) throw new Error(`"${from}" does not stand once in the record`);
  return `${text.replace(from, () => to)}\n`;
};
const bytes = (content: string | Uint8Array): Uint8Array => (typeof content === "string" ? new TextEncoder().encode(content) : content);

interface Attempt {
  what: string;
  path: string;
  content: string | Uint8Array;
  /** The rule that must speak first, by name. */
  rule: string;
  /** Another that must speak too. */
  also?: string;
  /** 1-based; absent where the file as a whole is refused. */
  line?: number;
  link?: boolean;
}

const FEED = "\n";
const ATTEMPTS: readonly Attempt[] = [
  {
    what: "a property that would reach the prototype",
    path: CAUTION,
    content: edited('"rank": 5', '"__proto__": { "rank": 5 },\n  "rank": 5'),
    rule: "name-forbidden",
    line: 7,
  },
  {
    what: "a property named constructor",
    path: CAUTION,
    content: edited('"rank": 5', '"constructor": 1,\n  "rank": 5'),
    rule: "name-forbidden",
    line: 7,
  },
  {
    what: "a prototype by escape",
    path: CAUTION,
    content: edited('"rank": 5', '"\\u005f_proto__": 1,\n  "rank": 5'),
    rule: "character-escape",
    also: "name-forbidden",
    line: 7,
  },
  {
    what: "a property that stands twice",
    path: CAUTION,
    content: edited('"rank": 5', '"rank": 1,\n  "rank": 5'),
    rule: "name-repeated",
    line: 8,
  },
  { what: "a hundred thousand brackets", path: CAUTION, content: "[".repeat(100_000) + FEED, rule: "nesting-and-length", line: 1 },
  {
    what: "brackets nested 500 deep and closed",
    path: CAUTION,
    content: "[".repeat(500) + "]".repeat(500) + FEED,
    rule: "nesting-and-length",
    line: 1,
  },
  { what: "half a million commas", path: CAUTION, content: `[${",".repeat(500_000)}]\n`, rule: "nesting-and-length" },
  { what: "a number beyond all bounds", path: CAUTION, content: edited('"rank": 5', '"rank": 1e999'), rule: "number-size", line: 7 },
  {
    what: "a number of ten thousand digits",
    path: CAUTION,
    content: edited('"rank": 5', `"rank": ${"9".repeat(10_000)}`),
    rule: "number-size",
    line: 7,
  },
  {
    what: "an id that leads out of the folder",
    path: CAUTION,
    content: edited('"id": "hostile"', '"id": "../../../etc/passwd"'),
    rule: "value-shape",
    line: 4,
  },
  {
    what: "an id of a hundred thousand letters",
    path: CAUTION,
    content: edited('"id": "hostile"', `"id": "${"a-".repeat(50_000)}!"`),
    rule: "value-shape",
    line: 4,
  },
  {
    what: "a schema that is fetched",
    path: CAUTION,
    content: edited("../../schemas/caution.schema.json", "https://example.invalid/evil.json"),
    rule: "schema-link",
    line: 2,
  },
  {
    what: "a Cyrillic letter in an id",
    path: CAUTION,
    content: edited('"id": "hostile"', '"id": "h\u043estile"'),
    rule: "look-alike-letter",
    line: 4,
  },
  {
    what: "a direction that turns the text round",
    path: CAUTION,
    content: edited("A hazard", "A \u202ehazard"),
    rule: "hidden-character",
    line: 5,
  },
  { what: "a space that cannot be seen", path: CAUTION, content: edited("A hazard", "A\u200bhazard"), rule: "hidden-character", line: 5 },
  {
    what: "an escape sequence of a terminal",
    path: CAUTION,
    content: edited("A hazard", "A \u001b[31mhazard"),
    rule: "json-syntax",
    line: 5,
  },
  { what: "a zero byte", path: CAUTION, content: edited("A hazard", "A \u0000hazard"), rule: "json-syntax", line: 5 },
  { what: "no UTF-8", path: CAUTION, content: new Uint8Array([0x7b, 0xff, 0xfe, 0x7d]), rule: "text-encoding" },
  { what: "UTF-16", path: CAUTION, content: new Uint8Array([0xff, 0xfe, 0x7b, 0x00, 0x7d, 0x00]), rule: "text-encoding" },
  { what: "six megabytes", path: CAUTION, content: `"${"x".repeat(6_000_000)}"\n`, rule: "file-size" },
  { what: "a comment", path: CAUTION, content: edited('"rank": 5', '"rank": 5 // five'), rule: "json-syntax", line: 7 },
  { what: "half a record", path: CAUTION, content: text.slice(0, 90), rule: "json-syntax" },
  { what: "nothing at all", path: CAUTION, content: "", rule: "file-size" },
  { what: "a list instead of a record", path: CAUTION, content: "[]\n", rule: "value-type", line: 1 },
  { what: "a symbolic link", path: CAUTION, content: "", rule: "symbolic-link", link: true },
  { what: "a program", path: "datasets/cautions/run.sh", content: "#!/bin/sh\n", rule: "file-place" },
  { what: "a record in a folder of its own making", path: "datasets/cautions/deep/hostile.json", content: `${text}\n`, rule: "file-place" },
  { what: "a name with a line break", path: "datasets/cautions/host\nile.json", content: `${text}\n`, rule: "file-name-plain" },
  { what: "a name that only looks like ours", path: "datasets/cautions/h\u043estile.json", content: `${text}\n`, rule: "file-name-plain" },
  { what: "a quote that never ends", path: TABLE, content: `a,b,source\n"${"x\n".repeat(50_000)}`, rule: "csv-syntax" },
  { what: "a row of a hundred thousand cells", path: TABLE, content: `a,b,source\n${",".repeat(100_000)}\n`, rule: "csv-rows" },
  { what: "two hundred thousand quotes", path: TABLE, content: `a,b,source\n${'"'.repeat(200_001)}\n`, rule: "csv-syntax" },
  { what: "a table of a million rows", path: TABLE, content: `a,b,source\n${"1,2,x\n".repeat(1_000_000)}`, rule: "csv-syntax" },
  {
    what: "a list of sources with a stray quote",
    path: SOURCES,
    content: 'id,kind,title,detail\ncommon-practice,common-practice,The "trade,x\n',
    rule: "csv-syntax",
    line: 2,
  },
];

const stageWith = (formula: string): string =>
  `${JSON.stringify(
    {
      $schema: "../../../schemas/stage.schema.json",
      schemaVersion: 1,
      id: "hostile",
      title: "Hostile",
      family: "supply",
      summary: "A stage whose formula tries to get out.",
      terminals: [
        { id: "feed", meaning: "Supply." },
        { id: "return", meaning: "Return.", default: "chassis" },
      ],
      parts: [
        { role: "load", title: "Load", kind: "resistor", between: ["feed", "return"], typical: "1 kohm 1 W", source: "common-practice" },
      ],
      expected: [],
      requirements: [{ id: "one", title: "It holds", formula, otherwise: "It does not.", severity: "watch", source: "common-practice" }],
      cautions: ["hostile"],
      sources: ["common-practice"],
    },
    null,
    2,
  )}\n`;

const FORMULAS: readonly [string, string, string][] = [
  ["a constructor", 'load.constructor("return process")() > 1', "formula-syntax"],
  ["a prototype", "load.__proto__ > 1", "formula-syntax"],
  ["an assignment", "x = load.ohms > 1", "formula-syntax"],
  ["a function of the parser", 'evaluate("1") > 0', "formula-syntax"],
  ["powers without end", "9^9^9^9 > load.ohms", "formula-syntax"],
  ["parentheses without end", `${"(".repeat(120)}1${")".repeat(120)} > load.ohms`, "formula-syntax"],
  ["a Cyrillic letter", "l\u043ead.ohms > 1", "look-alike-letter"],
];

const ruleOf = new Map(allRules.map(({ code, name }) => [code, name]));

/** Everything that is said of some files, in the order in which it is said, with the processor time that it took. */
function told(files: readonly { path: string; content: string | Uint8Array; link?: boolean }[]) {
  const held = new Map(files.map((file) => [file.path, file]));
  const source: FileSource = {
    list: () =>
      [...held.values()]
        .map(({ path, content, link = false }) => ({ path, link, bytes: bytes(content).length }))
        .sort((a, b) => (a.path < b.path ? -1 : 1)),
    read: (path) => bytes(held.get(path)!.content),
  };
  const start = cpuUsage();
  const { diagnostics } = validateFiles(source, { rules: allRules });
  const { user, system } = cpuUsage(start);
  return {
    diagnostics: diagnostics.map((diagnostic) => ({ ...diagnostic, rule: ruleOf.get(diagnostic.code) ?? diagnostic.code })),
    milliseconds: (user + system) / 1000,
  };
}

const NEIGHBOUR = {
  path: "datasets/cautions/neighbour.json",
  content: edited('"id": "hostile"', '"id": "neighbour"').replace('"rank": 5', '"rank": 55'),
};

// The first run builds parsers and schemas; that is nobody's fault.
told([NEIGHBOUR]);

it("there are at least forty attempts", () => expect(ATTEMPTS.length + FORMULAS.length).toBeGreaterThanOrEqual(40));

describe("a hostile file", () => {
  it.each(ATTEMPTS.map((attempt) => [attempt.what, attempt] as const))("%s", (_what, attempt) => {
    const { diagnostics, milliseconds } = told([attempt, NEIGHBOUR]);
    const own = diagnostics.filter(({ file }) => file === attempt.path);
    const first = own[0];
    expect({ rule: first?.rule, severity: first?.severity }, own.map(({ rule, message }) => `${rule}: ${message}`).join("\n")).toEqual({
      rule: attempt.rule,
      severity: "error",
    });
    if (attempt.also !== undefined) expect(own.map(({ rule }) => rule)).toContain(attempt.also);
    if (attempt.line !== undefined) expect(first?.line).toBe(attempt.line);
    expect(milliseconds).toBeLessThan(MOST_MILLISECONDS);
    // Its neighbour is looked at all the same, and nothing of the hostile text reaches a terminal unescaped.
    expect(diagnostics.filter(({ file }) => file === NEIGHBOUR.path).map(({ rule }) => rule)).toContain("value-shape");
    for (const { message, received = "", expected = "" } of own)
      expect(`${message}${received}${expected}`.length, message.slice(0, 80)).toBeLessThan(3000);
  });
});

describe("a hostile formula in a record", () => {
  it.each(FORMULAS)("%s", (_what, formula, rule) => {
    const { diagnostics, milliseconds } = told([{ path: STAGE, content: stageWith(formula) }]);
    const first = diagnostics.find(({ file }) => file === STAGE);
    expect(first?.rule, diagnostics.map((one) => `${one.rule}: ${one.message}`).join("\n")).toBe(rule);
    const lines = stageWith(formula).split("\n");
    expect(lines[(first?.line ?? 0) - 1]).toContain('"formula"');
    expect(milliseconds).toBeLessThan(MOST_MILLISECONDS);
  });
});

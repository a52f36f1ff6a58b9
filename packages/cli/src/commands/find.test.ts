import { expect, it } from "vitest";
import { runCli } from "../runCli.ts";

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const said = { out: "", err: "" };
  const code = await runCli(args, {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    colour: { out: false, err: false },
    columns: 100,
  });
  return { code, ...said };
}

const found = async (...args: string[]) => {
  const { code, out } = await run("find", ...args, "--format", "json");
  return {
    code,
    ...(JSON.parse(out) as { hits: { kind: string; id: string; exact: boolean; quote: string; use: string }[]; nearest: string[] }),
  };
};

it("answers a complaint from the bench with the notes about it, and says how to use them", async () => {
  const { code, out } = await run("find", "low", "B+", "loud", "hum");
  expect(code).toBe(0);
  expect(out).toMatch(/^1\. Filter capacitor dried out \(failure note: filter-dried-out\)\n {3}says: B\+ low, loud hum/);
  expect(out).toContain('use: in a job, on the part: "measured"');
});

it.each([
  ["supply-bridge", "stage", "supply-bridge"],
  ["12ax7", "tube", "12ax7"],
  ["pcb-oil", "caution", "pcb-oil"],
  ["line-fuse", "check", "line-fuse"],
  ["bleeder-current", "rule-of-thumb", "bleeder-current"],
  ["wire-gauges", "table", "wire-gauges"],
  ["primary-open", "failure-note", "primary-open"],
])("finds %s by its id", async (question, kind, id) => {
  expect((await found(question)).hits[0]).toMatchObject({ kind, id, exact: true });
});

it("looks at the kinds asked for, and prints no more than asked for", async () => {
  const { hits } = await found("hum", "--kind", "stage", "tube", "--top", "2");
  expect(hits).toHaveLength(2);
  expect(hits.every(({ kind }) => kind === "stage" || kind === "tube")).toBe(true);
});

it("says what is near where nothing is found, with code 1", async () => {
  const { code, out, err } = await run("find", "zzbleeeder", "--kind", "caution");
  expect([code, out]).toEqual([1, ""]);
  expect(err).toMatch(/^nothing found for "zzbleeeder" among caution\n {2}nearest words: .*\bbleeder\b/);
  expect(await found("qqqqqqqqq")).toMatchObject({ code: 1, hits: [], nearest: [] });
});

it.each([
  [["find"], "missing required argument"],
  [["find", " "], "what is looked for?"],
  [["find", "x".repeat(501)], "at most 500 characters"],
  [["find", "hum", "--top", "0"], "whole number from 1"],
  [["find", "hum", "--top", "2.5"], "whole number from 1"],
  [["find", "hum", "--kind", "nonsense"], "Allowed choices"],
])("refuses %j", async (args, complaint) => {
  const { code, err } = await run(...args);
  expect(code).toBe(2);
  expect(err).toContain(complaint);
});

it("shows control characters of a question instead of obeying them", async () => {
  const { err } = await run("find", "qqqqqqqq\u001b[2J");
  expect(err).toContain("\\u001b[2J");
});

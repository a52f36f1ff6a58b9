import { expect, test } from "vitest";
import { runCli } from "../runCli.ts";

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const said = { out: "", err: "" };
  const code = await runCli(["substitute", ...args], {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    colour: { out: false, err: false },
    columns: 200,
  });
  return { code, ...said };
}

// 1 / (2 pi * 470 kohm * 0.05 uF) = 6.77 Hz, with 0.047 uF 7.2 Hz.
test("prints old part, values, limits, rating, make, reasons with sources, what is missing and the caution", async () => {
  const { code, out, err } = await run(".05 600V paper", "--role", "coupling", "--grid-leak", "470k", "--working", "300");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(out).toContain("old       0.05 uF, +-20 % (not written), 600 V, paper, corner 6.77 Hz");
  expect(out).toContain("fit       0.047 uF  (-6 %, E6, corner 7.2 Hz)");
  expect(out).toContain("rating    630 V DC, at least 600 V DC");
  expect(out).toContain("[film-selection-notes]");
  expect(out).toContain("caution   Disconnect the line");
  expect(out).not.toContain("not known");
});

test("looks the rectifier up in the datasets", async () => {
  const { out } = await run("16/450", "--role", "reservoir", "--rectifier", "5y3gt", "--format", "json");
  expect(JSON.parse(out)).toMatchObject({
    role: "reservoir",
    context: { rectifier: { type: "5Y3GT", maxInputFarads: 2e-5 } },
    sections: [{ limits: { highest: 2e-5 }, candidates: [{ value: 1.5e-5 }] }],
  });
});

test("answers for each section of a can", async () => {
  const { out } = await run("20-20/450", "--role", "filter");
  expect(out).toContain("section 1\nold       20 uF");
  expect(out).toContain("section 2\nold       20 uF");
});

test("--help explains every role", async () => {
  const { code, out } = await run("--help");
  expect(code).toBe(0);
  expect(out).toMatch(/line-to-chassis\s+Capacitor from line to chassis/);
});

test.each([
  [["16/450"], "--role: where does the part sit?", "reservoir, filter"],
  [["16/450", "--role", "reservor"], '"reservor" is not a role', "nearest: reservoir"],
  [["47k", "--role", "coupling"], "is not a unit here", "a capacitor marking such as"],
  [["16/450", "--role", "reservoir", "--rectifier", "5Y3"], 'no tube "5Y3"', "nearest: 5Y3G"],
  [["16/450", "--role", "reservoir", "--rectifier", "12AX7"], "12AX7: it is no rectifier", "5Y3GT"],
  [["16/450", "--role", "reservoir", "--rectifier", "866A"], "gives no largest input capacitor", "5Y3GT"],
  [[".05", "--role", "coupling", "--grid-leak", "470 mfd"], "--grid-leak:", "it takes"],
  [[".05", "--role", "coupling", "--grid-leak", "0"], "no resistance of more than nothing", ""],
] as const)("%j is refused in plain words with exit code 2", async (args, message, help) => {
  const { code, out, err } = await run(...args);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toContain(message);
  expect(err).toContain(help);
  expect(err).not.toMatch(/internal error|\n\s+at |\\u000a/);
});

import { expect, test } from "vitest";
import { runCli } from "../runCli.ts";

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const said = { out: "", err: "" };
  const code = await runCli(["decode", ...args], {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    colour: { out: false, err: false },
    columns: undefined,
  });
  return { code, ...said };
}

// IEC 60062: 47, three noughts, 10 %.
test("prints value, tolerance, why, today's spellings and the source", async () => {
  expect(await run("yellow violet orange silver")).toEqual({
    code: 0,
    err: "",
    out: `yellow violet orange silver

47 kohm +-10 %  resistor
  why     4 bands: a value of E12
  write   47K | yellow violet orange silver
  source  iec-60062-2016
`,
  });
});

test("takes the words apart or together, and numbers the readings where there are several", async () => {
  expect((await run("yellow", "violet", "orange", "silver")).out).toBe((await run("yellow violet orange silver")).out);
  const { out } = await run("472");
  expect(out).toContain("can be read in more than one way");
  expect(out).toMatch(/^1\. 4\.7 kohm/m);
  expect(out).toMatch(/^2\. 4\.7 nF/m);
});

test("json gives SI numbers", async () => {
  const { code, out } = await run(".05 600V", "--kind", "capacitor", "--era", "1952", "--format", "json");
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({
    asWritten: ".05 600V",
    context: { era: 1952, kind: "capacitor" },
    readings: [{ kind: "capacitor", value: 5e-8, ratedVolts: 600, dielectric: "paper" }],
  });
});

test.each([
  [["yelow violet orange"], '"yelow" is not a colour of the code', "nearest: yellow violet orange;"],
  [["hello"], '"hello" gives no resistance', 'it takes a resistor marking such as "47k 1W 10%"'],
  [["4k7", "--era", "52"], '--era: "52" is not a year', "such as 1952"],
  [["4k7", "--family", "mica-rma-3"], '"4k7" names no colours', "nearest: yellow violet orange"],
  [["4k7", "--kind", "resistr"], "--kind", "Allowed choices are resistor, capacitor"],
  [[], "missing required argument", ""],
] as const)("%j is refused in plain words with exit code 2", async (args, message, help) => {
  const { code, out, err } = await run(...args);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toContain(message);
  expect(err).toContain(help);
  expect(err).not.toMatch(/internal error|\n\s+at |\\u000a/);
});

test("a refusal in json is data too", async () => {
  const { code, out } = await run("hello", "--format", "json");
  expect(code).toBe(2);
  expect(JSON.parse(out)).toMatchObject({ errors: 1, diagnostics: [{ file: "marking", severity: "error" }] });
});

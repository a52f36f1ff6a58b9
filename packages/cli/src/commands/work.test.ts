import { allFormulas } from "@underchassis/calc/formulas";
import { expect, test } from "vitest";
import { runCli } from "../runCli.ts";

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const said = { out: "", err: "" };
  const code = await runCli(["work", ...args], {
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

// NEETS module 1, ch. 3, about p. 3-99: 95 V at 55 mA is 1.727 kohm and 5.225 W.
test("prints the result with units, the formula, its limits and its source", async () => {
  expect(await run("dropping-resistor", "E=270V", "loadvolts=175", "amps=55 mA")).toEqual({
    code: 0,
    err: "",
    out: `Series dropping resistor
  R = (E - V)/I; P = (E - V) I

given
  E  270 V  supply voltage
  V  175 V  voltage wanted behind the resistor
  I  55 mA  current through the resistor, bleeder included

result
  R  1.727 kohm  resistance
  P  5.225 W     heat in it

limits: Steady current; with the load off, the whole supply voltage stands behind the resistor. The load voltage lies below the supply.
source: neets-module-1
`,
  });
});

test("json gives SI numbers with their units", async () => {
  const { code, out } = await run("dropping-resistor", "E=0.27kV", "V=175V", "I=55mA", "--format", "json");
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({
    formula: "dropping-resistor",
    source: "neets-module-1",
    inputs: { supplyVolts: { value: 270, unit: "V" }, amps: { value: 0.055, unit: "A" } },
    results: { ohms: { value: expect.closeTo(1727.2727, 3), unit: "ohm" }, watts: { value: expect.closeTo(5.225, 9), unit: "W" } },
  });
});

test("an open circuit is a text in json, because json has no infinity", async () => {
  const { out } = await run("parallel-resistance", "R=100", "R=open", "-f", "json");
  expect(JSON.parse(out)).toMatchObject({ inputs: { ohms: { value: [100, "open"] } }, results: { totalOhms: { value: 100 } } });
});

test("a list is given once for each value, numbered or not", async () => {
  for (const names of [
    ["ohms", "ohms"],
    ["R", "R"],
    ["R1", "R2"],
  ])
    expect((await run("series-resistance", `${names[0]}=1k`, `${names[1]}=2k2`)).out).toContain("R  3.2 kohm");
});

test("without arguments every formula is listed under its area", async () => {
  const { code, out } = await run();
  expect(code).toBe(0);
  const listed = out
    .split("\n")
    .filter((line) => line.startsWith("  "))
    .map((line) => line.trim().split(" ")[0]);
  expect(listed).toEqual(allFormulas.map(({ id }) => id));
  expect(out.split("\n").filter((line) => /^[a-z]+$/.test(line))).toEqual([...new Set(allFormulas.map(({ area }) => area))]);
});

test.each([
  ["reservior-ripple", "reservoir-ripple"],
  ["shunt", "meter-shunt"],
  ["Loaded-Dividr", "loaded-divider"],
])("an unknown formula %s: exit code 2, and the nearest", async (written, nearest) => {
  const { code, out, err } = await run(written);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toContain(`no formula "${written}"`);
  expect(err).toContain(nearest);
});

const takes = `max-power-transfer takes
  openVolts   E   voltage     voltage of the source without load
  sourceOhms  Rs  resistance  its resistance (above 0 ohm)
`;

test.each([
  ["missing", ["E=11.2V"], "sourceOhms is missing: its resistance"],
  ["unknown", ["E=11.2V", "Rs=1", "souceOhms=1"], '"souceOhms" is not an argument of max-power-transfer; did you mean "sourceOhms"?'],
  ["given twice", ["E=11.2V", "Rs=1", "sourceOhms=1"], "sourceOhms is given more than once"],
  ["without a value", ["E=11.2V", "Rs=1", "E"], '"E" is not name=value'],
  ["outside its limits", ["E=11.2V", "Rs=0"], "max-power-transfer: sourceOhms is 0 ohm; must be above 0 ohm"],
])("an argument %s: exit code 2, the reason, and what the formula takes", async (_, words, reason) => {
  expect(await run("max-power-transfer", ...words)).toEqual({ code: 2, out: "", err: `${reason}\n${takes}` });
});

test("a wrong unit is named with what would be right", async () => {
  const { code, err } = await run("max-power-transfer", "E=11.2 ohm", "Rs=0.8");
  expect(code).toBe(2);
  expect(err).toBe(
    `openVolts: "ohm" is a unit of resistance, not of voltage; expected a voltage such as "285 V" or "-55 V", perhaps "11.2 V"\n${takes}`,
  );
});

test("refusals are data too", async () => {
  const { code, out, err } = await run("max-power-transfer", "--format", "json");
  expect({ code, err }).toEqual({ code: 2, err: "" });
  expect(JSON.parse(out)).toMatchObject({ errors: 2, diagnostics: [{ code: "input", severity: "error" }, {}] });
});

test("control characters of an argument are shown, not obeyed", async () => {
  expect((await run("max-power-transfer", "\u001b[2J=1")).err).toContain("\\u001b");
});

import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { allFormulas } from "./allFormulas.ts";
import { readArguments } from "./readArguments.ts";

const folder = import.meta.dirname;
const camelCase = (id: string): string => id.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

test("the list is what lies in the folders, each named for its formula", () => {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => name.includes("/") && name.endsWith(".ts") && !name.endsWith(".test.ts"));
  expect(allFormulas.map(({ area, id }) => `${area}/${camelCase(id)}.ts`).sort()).toEqual(files.sort());
});

test.each(allFormulas.map((formula) => [formula.id, formula] as const))("%s: its facts are whole", (_, formula) => {
  for (const text of [formula.title, formula.expression, formula.limits]) expect(text.length).toBeGreaterThan(2);
  expect(Object.keys(formula.outputs).length).toBeGreaterThan(0);
  const defaults = Object.entries(formula.inputs).filter(([, input]) => input.default !== undefined);
  // A default outside its own limits would be refused here.
  expect(() => readArguments({ id: formula.id, inputs: Object.fromEntries(defaults) }, {})).not.toThrow();
});

test.each(allFormulas.map((formula) => [formula.id, formula] as const))(
  "%s: symbols are used once, and the expression gives a result",
  (_, formula) => {
    const symbols = Object.values(formula.outputs).map(({ symbol }) => symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
    expect(new Set(Object.values(formula.inputs).map(({ symbol }) => symbol)).size).toBe(Object.keys(formula.inputs).length);
    expect(symbols.some((symbol) => formula.expression.includes(symbol.split(/[/ ]/)[0] ?? symbol))).toBe(true);
  },
);

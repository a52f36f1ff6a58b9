import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const dist = "packages/cli/dist";

/** The files that run before `underchassis decode` answers: its own and everything that they import statically. */
function loadedBy(...entries: string[]): string[] {
  const loaded = new Set<string>();
  const visit = (file: string): void => {
    if (loaded.has(file)) return;
    loaded.add(file);
    const text = readFileSync(`${dist}/${file}`, "utf8");
    for (const [, other = ""] of text.matchAll(/^(?:import|\}|export)[^;\n]*"\.\/([\w.-]+\.js)"/gm)) visit(other);
  };
  for (const entry of entries) visit(entry);
  return [...loaded];
}

const own = (command: string): string => {
  const found = readdirSync(dist).find((name) => name.startsWith(`${command}-`));
  if (!found) throw new Error(`${dist} has no ${command} command; run npm run build first`);
  return found;
};

const heavy = /node_modules\/(?:mathjs|ajv|preact|csv-parse)\//;

test("decode starts without mathjs, ajv, preact and the datasets' reader", () => {
  const files = loadedBy("main.js", own("decode"));
  const texts = files.map((file) => readFileSync(`${dist}/${file}`, "utf8"));
  expect(files.length).toBeGreaterThan(3);
  expect(texts.filter((text) => heavy.test(text))).toEqual([]);
  // Nor the circuit engine: all that runs is the argument reader, quantities and markings.
  expect(texts.join("").length).toBeLessThan(400_000);
});

test("the walk over imports would see them", () => {
  const texts = loadedBy("main.js", own("grade")).map((file) => readFileSync(`${dist}/${file}`, "utf8"));
  expect(texts.some((text) => heavy.test(text))).toBe(true);
});

/** What the program says never promises what it cannot know: the pattern that contributed texts are held to, on the texts of the code. */
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const PROMISE =
  /\b(?:safe|safely|harmless|(?:risk|danger|hazard)[- ]free|foolproof|no (?:danger|risk|hazard)|not dangerous|cannot (?:hurt|harm))\b/i;
/** The rule itself, and what it says of itself. */
const RULE = "packages/validation/src/rules/record/wording-promise.ts";

const files = readdirSync("packages").flatMap((name) =>
  readdirSync(`packages/${name}/src`, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\.tsx?$|\.d\.ts$|generated\//.test(file))
    .map((file) => `packages/${name}/src/${file.replaceAll("\\", "/")}`),
);

/** Lines of code, comments left out: they are the builders' own. */
const codeOf = (text: string): string[] =>
  text
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .split("\n")
    .map((line) => line.replace(/(^|\s)\/\/.*$/, ""));

it("no text of the program calls equipment, or work on it, anything of the kind", () => {
  expect(files.length).toBeGreaterThan(300);
  const promises = files
    .filter((file) => file !== RULE)
    .flatMap((file) =>
      codeOf(readFileSync(file, "utf8"))
        .filter((line) => PROMISE.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
  expect(promises).toEqual([]);
});

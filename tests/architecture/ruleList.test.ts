import { expect, it } from "vitest";
import { SCOPES } from "../../packages/validation/src/model/rule.ts";
import { allRules } from "../../packages/validation/src/rules/allRules.ts";
import { ruleFiles } from "../../scripts/generate/ruleListFile.ts";

/** First figures of a scope's codes. */
const FIGURES: Readonly<Record<string, string>> = { bytes: "12", record: "34", file: "5", collection: "6", electrical: "7" };

it("every rule is named and filed as its file lies", () => {
  expect(allRules.map(({ scope, name }) => `${scope}/${name}`)).toEqual(ruleFiles());
});

it("every code is its own, and of its scope", () => {
  expect(new Set(allRules.map(({ code }) => code)).size).toBe(allRules.length);
  for (const { code, scope } of allRules) {
    expect(code).toMatch(/^UC-\d{3}$/);
    expect([code, FIGURES[scope]?.includes(code[3] ?? "?")]).toEqual([code, true]);
    expect(SCOPES).toContain(scope);
  }
});

it("every rule says what it asks for, why, and shows both", () => {
  for (const { code, title, why, bad, good } of allRules) {
    expect([code, title.length > 10, why.endsWith("."), bad.length > 0, good.length > 0, bad !== good]).toEqual([
      code,
      true,
      true,
      true,
      true,
      true,
    ]);
    expect(title).not.toMatch(/\.$/);
  }
});

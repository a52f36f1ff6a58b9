import { nearestOf } from "@underchassis/source-text";
import type { Rule } from "../model/rule.ts";

/** What a rule asks for and why, with an example of each; undefined when no rule has the code or name. */
export function explainRule(rules: readonly Rule[], code: string): string | undefined {
  const rule = rules.find((one) => one.code === code.toUpperCase() || one.name === code);
  if (rule === undefined) return undefined;
  return [
    `${rule.code} ${rule.name} (${rule.severity}, looks at: ${rule.scope})`,
    "",
    `${rule.title}.`,
    rule.why,
    "",
    "breaks it:",
    indented(rule.bad),
    "keeps it:",
    indented(rule.good),
    ...(rule.fixable === true ? ["", "npm run validate -- --fix mends it."] : []),
    "",
  ].join("\n");
}

/** The code or name of a rule that somebody may have meant. */
export function nearestRule(rules: readonly Rule[], code: string): string | undefined {
  return nearestOf(code, [...rules.map((rule) => rule.code), ...rules.map((rule) => rule.name)]);
}

const indented = (text: string): string =>
  text
    .split("\n")
    .map((line) => `  ${line}`)
    .join("\n");

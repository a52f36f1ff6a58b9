import type { Report } from "@underchassis/dataset";
import { formatValue } from "./formatValue.ts";

type Settings = Report["stages"][number]["settings"];

/**
 * What a stage works at, in one sentence: "Works at: standing-wave ratio 3 (from the job); output 50 W." Values of the template are the
 * assumptions that its rules rest on. Empty for a stage without settings.
 */
export function settingWords(settings: Settings): string {
  if (settings === undefined || settings.length === 0) return "";
  const words = settings.map(
    ({ meaning, value, unit, from }) => `${meaning} ${formatValue(value, unit)}${from === "job" ? " (from the job)" : ""}`,
  );
  return `Works at: ${words.join("; ")}.`;
}

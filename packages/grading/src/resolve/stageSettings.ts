import { SETTING_DIMENSION, type StageTemplate } from "@underchassis/dataset";
import type { Path } from "../job/loadedJob.ts";
import type { ResolveContext } from "./context.ts";

/**
 * What a stage works at, SI: the template's typical values, and the job's own where it gives any. A value that cannot be read is
 * reported at its place and left out.
 */
export function stageSettings(
  context: ResolveContext,
  template: StageTemplate,
  written: Readonly<Record<string, string | number>>,
  path: Path,
): Record<string, number> {
  return Object.fromEntries(
    Object.entries(template.settings ?? {}).flatMap(([name, { unit, typical }]): [string, number][] => {
      const own = Object.hasOwn(written, name) ? written[name] : undefined;
      const value = context.quantity(own ?? typical, SETTING_DIMENSION[unit], own === undefined ? path.slice(0, -1) : [...path, name]);
      return value === undefined ? [] : [[name, value]];
    }),
  );
}

import { positionAt, spanOf } from "@underchassis/source-text";
import { type ReferenceContext, report } from "./context.ts";
import type { PartSurvey } from "./survey.ts";

/** Every part has a name of its own: two sections of one envelope or can are told apart by a letter (V3A, V3B). */
export function checkPartNames(context: ReferenceContext): void {
  const seen = new Map<string, PartSurvey>();
  for (const part of context.survey.parts) {
    if (part.name === undefined || part.path === undefined) continue;
    const earlier = seen.get(part.name);
    if (earlier?.path === undefined) {
      warnAlike(context, part, seen.keys());
      seen.set(part.name, part);
      continue;
    }
    // Told at whichever is not in a stage: the template's own part comes first.
    const where = spanOf(context.job.place, [...earlier.path, "name"]);
    report(context, [...part.path, "name"], {
      code: "part-duplicate",
      message:
        earlier.role !== undefined && earlier.template && part.template === undefined
          ? `part "${part.name}" already fills the role "${earlier.role}" of stage "${earlier.stage}"`
          : `two parts are called "${part.name}"`,
      received: part.name,
      expected: "a name of its own for each part",
      help: `the other stands in ${where.source.name}, line ${positionAt(where.source, where.offset).line}; sections of one can or envelope take letters, as in C3A and C3B`,
    });
  }
}

/** C1A and c1a are two parts to the job, but hardly to the person who wrote them. */
function warnAlike(context: ReferenceContext, part: PartSurvey, names: Iterable<string>): void {
  const alike = [...names].find((name) => name.toLowerCase() === part.name?.toLowerCase());
  if (alike === undefined || part.name === undefined || part.path === undefined) return;
  report(context, [...part.path, "name"], {
    code: "part-name-alike",
    severity: "warning",
    message: `"${part.name}" and "${alike}" count as two parts`,
    received: part.name,
    nearest: alike,
    help: "if they are one part, describe it once; if not, nothing need be done",
  });
}

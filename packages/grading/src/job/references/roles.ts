import { nearestOf, oneOf, recordOf } from "@underchassis/source-text";
import { type ReferenceContext, report } from "./context.ts";
import type { PartSurvey, StageSurvey } from "./survey.ts";

/** Roles, windings and pins against the stage's template, and kinds that a table gives for a role. */
export function checkRoles(context: ReferenceContext): void {
  for (const stage of context.survey.stages) {
    if (stage.template === undefined) continue;
    const roles = stage.template.parts.map(({ role }) => role);
    for (const role of stage.written.keys()) {
      if (roles.includes(role)) continue;
      report(
        context,
        [...stage.path, "parts", role],
        {
          code: "role-unknown",
          message: `the template "${stage.template.id}" has no part "${role}"`,
          received: role,
          expected: oneOf(roles, 40),
          nearest: () => nearestOf(role, roles),
          help: 'a part beyond the template stands in the job\'s "parts"',
        },
        "key",
      );
    }
    checkKinds(context, stage);
  }
  for (const part of context.survey.parts) if (part.template && part.path) checkInside(context, part);
}

function checkInside(context: ReferenceContext, { template, path, written }: PartSurvey): void {
  if (template === undefined || path === undefined) return;
  const pins = template.between ? ["a", "b"] : Object.keys(template.pins ?? {});
  const fitted = recordOf(written.fitted);
  const lists = [
    {
      at: [...path, "windings"],
      value: written.windings,
      known: Object.keys(template.windings ?? {}),
      code: "winding-unknown",
      word: "winding",
    },
    {
      at: [...path, "fitted", "windings"],
      value: fitted.windings,
      known: Object.keys(template.windings ?? {}),
      code: "winding-unknown",
      word: "winding",
    },
    { at: [...path, "foundPins"], value: written.foundPins, known: pins, code: "pin-unknown", word: "pin" },
    { at: [...path, "fitted", "pins"], value: fitted.pins, known: pins, code: "pin-unknown", word: "pin" },
  ];
  for (const { at, value, known, code, word } of lists) {
    for (const name of Object.keys(recordOf(value))) {
      if (known.includes(name)) continue;
      report(
        context,
        [...at, name],
        {
          code,
          message: `"${template.role}" has no ${word} "${name}"`,
          received: name,
          expected: known.length === 0 ? `no ${word}s; the part has none` : oneOf(known),
          nearest: () => nearestOf(name, known),
        },
        "key",
      );
    }
  }
}

function checkKinds(context: ReferenceContext, stage: StageSurvey): void {
  for (const claim of context.kinds) {
    if (stage.path[1] !== claim.stage) continue;
    const role = stage.template?.parts.find((part) => part.role === claim.role);
    if (role === undefined || role.kind === claim.kind) continue;
    context.problems.add(claim.span, {
      code: "kind-mismatch",
      message: `the role "${claim.role}" is a ${role.kind}, not a ${claim.kind}`,
      received: claim.kind,
      expected: role.kind,
      help: "leave the cell blank: the template knows the kind",
    });
  }
}

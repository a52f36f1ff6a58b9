import type { StageTemplate } from "@underchassis/dataset";
import { nearestOf, oneOf, positionAt, spanOf } from "@underchassis/source-text";
import { pathWords } from "../pathWords.ts";
import { isDoubtful, type ReferenceContext, report } from "./context.ts";
import type { StageSurvey } from "./survey.ts";

/** Stage ids, their templates, the terminals that they bind, and parts that name a stage. */
export function checkStages(context: ReferenceContext): void {
  const seen = new Map<string, StageSurvey>();
  for (const stage of context.survey.stages) {
    checkId(context, stage, seen);
    if (stage.template) {
      checkBinds(context, stage, stage.template.id);
      checkSettings(context, stage, stage.template);
    } else if (stage.templateId !== undefined) {
      const known = [...context.dataset.stages.keys()];
      report(context, [...stage.path, "template"], {
        code: "template-unknown",
        message: `the dataset has no stage template "${stage.templateId}"`,
        received: stage.templateId,
        expected: oneOf(familiar(stage.templateId, known), 12),
        help: 'npx underchassis find "what the stage does" --kind stage looks for one by words',
        nearest: () => nearestOf(stage.templateId ?? "", known),
      });
    }
  }
  for (const part of context.survey.parts) {
    if (
      part.template !== undefined ||
      part.path?.[0] !== "parts" ||
      part.stage === undefined ||
      seen.has(part.stage) ||
      isDoubtful(context, part.stage)
    )
      continue;
    const { stage } = part;
    const known = [...seen.keys()];
    report(context, [...part.path, "stage"], {
      code: "stage-unknown",
      message: `no stage is called "${stage}"`,
      received: stage,
      expected: known.length === 0 ? "the id of a stage; the job has none" : oneOf(known),
      nearest: () => nearestOf(stage, known),
    });
  }
}

/** The templates of which some word stands in the id that was written, before the others. */
function familiar(written: string, known: readonly string[]): string[] {
  const words = written.toLowerCase().split(/[^a-z0-9]+/);
  const shared = (id: string): number => id.split("-").filter((word) => words.includes(word)).length;
  return known.toSorted((a, b) => shared(b) - shared(a));
}

function checkId(context: ReferenceContext, stage: StageSurvey, seen: Map<string, StageSurvey>): void {
  if (stage.id === undefined) return;
  const earlier = seen.get(stage.id);
  if (earlier === undefined) {
    seen.set(stage.id, stage);
    return;
  }
  const where = spanOf(context.job.place, [...earlier.path, "id"]);
  report(context, [...stage.path, "id"], {
    code: "stage-duplicate",
    message: `two stages are called "${stage.id}"`,
    received: stage.id,
    expected: "an id of its own for each stage",
    help: `the first stands on line ${positionAt(where.source, where.offset).line}`,
  });
}

function checkBinds(context: ReferenceContext, stage: StageSurvey, templateId: string): void {
  const { template } = stage;
  if (template === undefined) return;
  const known = [...template.terminals.map(({ id }) => id), ...Object.keys(template.points ?? {})];
  const unknown = [...stage.bind.keys()].filter((terminal) => !known.includes(terminal));
  for (const terminal of unknown) {
    report(
      context,
      [...stage.path, "bind", terminal],
      {
        code: "terminal-unknown",
        message: `the template "${templateId}" has no terminal "${terminal}"`,
        received: terminal,
        expected: oneOf(known, 40),
        nearest: () => nearestOf(terminal, known),
      },
      "key",
    );
  }
  for (const { id, meaning, default: fallback, optional } of template.terminals) {
    if (stage.bind.has(id) || fallback !== undefined || optional === true) continue;
    // The misspelt name of this very terminal has been reported.
    if (unknown.some((terminal) => nearestOf(terminal, [id]) !== undefined)) continue;
    report(
      context,
      [...stage.path, "bind"],
      {
        code: "terminal-unbound",
        message: `the terminal "${id}" of ${pathWords(stage.path, context.job.value)} is bound to no point`,
        expected: `"${id}": the chassis's point for it (${meaning})`,
      },
      "key",
    );
  }
}

function checkSettings(context: ReferenceContext, stage: StageSurvey, template: StageTemplate): void {
  const known = Object.keys(template.settings ?? {});
  for (const name of stage.settings.filter((name) => !known.includes(name))) {
    report(
      context,
      [...stage.path, "settings", name],
      {
        code: "setting-unknown",
        message: `the template "${template.id}" has no setting "${name}"`,
        received: name,
        expected: known.length === 0 ? "no settings: this template has none" : oneOf(known, 40),
        nearest: () => nearestOf(name, known),
      },
      "key",
    );
  }
}

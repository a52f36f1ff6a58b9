import type { StageTemplate } from "@underchassis/dataset";
import { type ChassisModel, type Part, type PartState, type Stage, type Stress, stresses } from "@underchassis/grading";
import type { Path } from "@underchassis/source-text";
import type { TemplateRun } from "../model/subjects.ts";

/** A template that simulates, with or without its optional parts. */
export interface SolvedVariant {
  optional: boolean;
  model: ChassisModel;
  stage: Stage;
}

/** The variants of a template that could be built; why one could not is a rule of its own. */
export function solvedVariants({ variants }: TemplateRun): SolvedVariant[] {
  return variants.flatMap(({ optional, built }) => {
    const stage = built.ok ? built.model.stages[0] : undefined;
    return built.ok && stage !== undefined ? [{ optional, model: built.model, stage }] : [];
  });
}

/** A part of the template in the simulation, with what it bears in every powered condition. */
export interface StressedPart {
  role: string;
  path: Path;
  part: Part;
  state: PartState;
  stress: readonly Stress[];
}

/** The parts of the template that are there, of some kinds. */
export function stressedParts({ model, stage }: SolvedVariant, template: StageTemplate, ...kinds: readonly string[]): StressedPart[] {
  const all = stresses(model, "restored");
  return template.parts.flatMap(({ role, kind }, index): StressedPart[] => {
    const part = model.parts.get(stage.parts[role] ?? "");
    const state = part?.lives.restored;
    if (!kinds.includes(kind) || part === undefined || state?.present !== true) return [];
    return [{ role, path: ["parts", index, "role"], part, state, stress: all.get(part.id) ?? [] }];
  });
}

/** The entry in which a figure is largest. */
export function worstBy(stress: readonly Stress[], figure: (entry: Stress) => number): Stress | undefined {
  return stress.reduce<Stress | undefined>((best, entry) => (best === undefined || figure(entry) > figure(best) ? entry : best), undefined);
}

/** One complaint of a kind a place: what both variants show is said once. */
export function once<T extends { at?: unknown; message: string }>(complaints: readonly T[]): T[] {
  const seen = new Set<string>();
  return complaints.filter(({ at, message }) => {
    const key = JSON.stringify([at, message.replace(/-?\d+(\.\d+)?/g, "#")]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** A figure with three digits. */
export function shown(value: number, unit: string): string {
  return `${Number(value.toPrecision(3))} ${unit}`;
}

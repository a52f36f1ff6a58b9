import type { Dataset, TubeRecord } from "@underchassis/dataset";
import type { Grader } from "../model/grader.ts";
import type { Complaint, ElectricalRule } from "../model/rule.ts";
import type { Collection } from "../model/subjects.ts";
import { jobFolder } from "./jobFolder.ts";
import type { Recaller } from "./recaller.ts";
import type { ValidateOptions } from "./validateFiles.ts";

interface ElectricalSubject {
  file: string;
  /** Chassis simulated: a tube alone is none. */
  circuits: 0 | 1;
  checks: { rule: ElectricalRule; check: () => readonly (Complaint & { file?: string })[] }[];
}

/** Every tube that nothing else is wrong with, every such template, simulated, and every such job, graded; one at a time. */
export function* electricalRun(
  rules: readonly ElectricalRule[],
  grader: Grader,
  dataset: Dataset,
  collection: Collection,
  recaller: Recaller,
  broken: ReadonlySet<string>,
  options: ValidateOptions,
): Generator<ElectricalSubject> {
  const wanted = (path: string) => !broken.has(path) && (options.only?.(path) ?? true);
  for (const file of collection.files("tube").filter(wanted)) {
    const tube = collection.recall(file).value as TubeRecord;
    yield { file, circuits: 0, checks: rules.flatMap((rule) => (rule.of === "tube" ? [{ rule, check: () => rule.check(tube) }] : [])) };
  }
  const templateRules = rules
    .filter((rule) => rule.of === "template")
    .toSorted((a, b) => Number(b.phase === "sense") - Number(a.phase === "sense"));
  for (const file of collection.files("stage").filter(wanted)) {
    const run = grader.simulate(file, collection.recall(file).value, dataset);
    yield {
      file,
      circuits: 1,
      checks: templateRules.map((rule) => ({ rule, check: () => rule.check(run) })),
    };
  }
  for (const file of collection.files("job").filter(wanted)) {
    const recorded = options.recorded?.(file);
    const job = jobFolder(file, collection, recaller, (files) => grader.grade(files, dataset), recorded);
    yield { file, circuits: 1, checks: rules.flatMap((rule) => (rule.of === "job" ? [{ rule, check: () => rule.check(job) }] : [])) };
  }
}

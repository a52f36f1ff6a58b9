import { readdirSync, readFileSync } from "node:fs";
import type { PublishedPoint } from "../../scripts/fit/fit-unit.ts";
import type { FittedParameters } from "../../scripts/fit/plate-current.ts";

/** What the tests need of a published point beyond what a fit needs. */
export interface TypicalPoint extends PublishedPoint {
  plateOhms?: number;
  mu?: number;
  dropVolts?: number;
  dropAmps?: number;
}

export interface TubeFile {
  id: string;
  class: string;
  limits: { system: string; [name: string]: unknown };
  units: { kind: string; parameters?: Record<string, number>; fittedTo?: string; spread?: number; source?: string }[];
  typical: TypicalPoint[];
  note?: string;
}

const FOLDER = new URL("../../datasets/tubes/", import.meta.url);

/** Every tube record as it lies in the datasets folder, read without the loader so that a fault there shows elsewhere. */
export const tubeFiles: readonly TubeFile[] = readdirSync(FOLDER)
  .sort()
  .map((name) => JSON.parse(readFileSync(new URL(name, FOLDER), "utf8")) as TubeFile);

/** The unit that amplifies, with its parameters, if the record has one. */
export function amplifierOf(
  tube: TubeFile,
): { kind: "triode" | "pentode"; parameters: FittedParameters; fittedTo: string; source: string } | undefined {
  const unit = tube.units.find(({ kind }) => kind === "triode" || kind === "pentode");
  if (!unit?.parameters) return undefined;
  return {
    kind: unit.kind as "triode" | "pentode",
    parameters: unit.parameters as unknown as FittedParameters,
    fittedTo: unit.fittedTo ?? "",
    source: unit.source ?? "",
  };
}

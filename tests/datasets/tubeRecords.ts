import { readdirSync, readFileSync } from "node:fs";
import type { FittedParameters } from "../../scripts/fit/plate-current.ts";
import type { Distance, PublishedPoint } from "../../scripts/fit/residuals.ts";
import type { TubeUnit } from "../../scripts/fit/tubeFile.ts";

/** What the tests need of a published point beyond what a fit needs. */
export interface TypicalPoint extends PublishedPoint {
  mu?: number;
  dropVolts?: number;
  dropAmps?: number;
  note?: string;
  source: string;
}

export interface TubeFile {
  id: string;
  names: string[];
  class: string;
  base?: { code: string; socket?: string; pins?: Record<string, string>; source: string };
  heater: { volts: number; amps: number; heating?: string; taps?: string; source: string };
  limits: { system: string; note?: string; source: string; [name: string]: unknown };
  units: TubeUnit[];
  typical: TypicalPoint[];
  note?: string;
}

const FOLDER = new URL("../../datasets/tubes/", import.meta.url);

/** Every tube record as it lies in the datasets folder, read without the loader so that a fault there shows elsewhere. */
export const tubeFiles: readonly TubeFile[] = readdirSync(FOLDER)
  .sort()
  .map((name) => JSON.parse(readFileSync(new URL(name, FOLDER), "utf8")) as TubeFile);

export interface Amplifier {
  tube: TubeFile;
  /** Which unit of the record, counted from 1. */
  number: number;
  kind: "triode" | "pentode";
  parameters: FittedParameters;
  distance: readonly Distance[];
  source: string;
}

/** Every unit that amplifies, with its parameters. */
export function amplifiersOf(tube: TubeFile): Amplifier[] {
  return tube.units.flatMap(({ kind, parameters, distance = [], source = "" }, i) =>
    (kind === "triode" || kind === "pentode") && parameters !== undefined
      ? [{ tube, number: i + 1, kind, parameters: parameters as unknown as FittedParameters, distance, source }]
      : [],
  );
}

import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import type { FittedParameters } from "./plate-current.ts";
import type { Distance, PublishedPoint } from "./residuals.ts";

export interface TubeUnit {
  kind: string;
  count?: number;
  parameters?: Record<string, number>;
  fittedTo?: string;
  distance?: Distance[];
  spread?: number;
  source?: string;
}

/** What a fit reads and writes of a tube record. */
export interface TubeFile {
  id: string;
  units: TubeUnit[];
  typical: PublishedPoint[];
}

const FOLDER = new URL("../../datasets/tubes/", import.meta.url);

/** Ids of all tube records, sorted. */
export const tubeIds = (): string[] =>
  readdirSync(FOLDER)
    .filter((name) => name.endsWith(".json"))
    .map((name) => name.slice(0, -".json".length))
    .sort();

export const readTube = (id: string): TubeFile => JSON.parse(readFileSync(new URL(`${id}.json`, FOLDER), "utf8")) as TubeFile;

/** Writes a record back; the formatter of the repository has the last word on its line breaks. */
export const writeTube = (tube: TubeFile): void => writeFileSync(new URL(`${tube.id}.json`, FOLDER), `${JSON.stringify(tube, null, 2)}\n`);

/** Parameters of a unit that amplifies; undefined for diodes, regulators and units that are not simulated. */
export function amplifierParameters(unit: TubeUnit): FittedParameters | undefined {
  return unit.kind === "triode" || unit.kind === "pentode" ? (unit.parameters as unknown as FittedParameters | undefined) : undefined;
}

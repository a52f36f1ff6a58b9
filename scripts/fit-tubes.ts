/**
 * Fits a tube record's model to the published points that stand in the same record, and writes the result into it.
 *
 *   npx tsx scripts/fit-tubes.ts 6sj7 mu,kg1,kg2
 *
 *   npx tsx scripts/fit-tubes.ts 50l6gt mu,kg1,kg2 1      (to the first published point only)
 *
 * The record's present parameters are the start and stay for every name that is not free.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { type FreeParameter, fitUnit, type PublishedPoint } from "./fit/fit-unit.ts";
import type { FittedParameters } from "./fit/plate-current.ts";

interface TubeFile {
  units: { kind: string; parameters?: FittedParameters; fittedTo?: string; source?: string }[];
  typical: PublishedPoint[];
}

const [id, free, only] = process.argv.slice(2);
if (!id || !free) {
  console.error("usage: fit-tubes.ts <tube id> <free parameters, with commas: mu,kg1,kg2> [numbers of the points, with commas]");
  process.exit(2);
}
const path = new URL(`../datasets/tubes/${id}.json`, import.meta.url);
const tube = JSON.parse(readFileSync(path, "utf8")) as TubeFile;
const unit = tube.units.find((candidate) => candidate.parameters?.kg1 !== undefined);
if (!unit?.parameters) {
  console.error(`${id}: no unit with amplifier parameters`);
  process.exit(2);
}
const names = free.split(",") as FreeParameter[];
const wanted = only?.split(",").map(Number);
const points = tube.typical.filter((_, i) => wanted === undefined || wanted.includes(i + 1));
const { parameters, worst } = fitUnit(unit.parameters, names, points);
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const screen = parameters.kg2 === undefined ? "" : `, screen current within ${percent(worst.screen)}`;
const slope = points.some((point) => point.siemens !== undefined) ? `, transconductance within ${percent(worst.siemens)}` : "";
unit.parameters = parameters;
unit.source = "fitted-here";
unit.fittedTo = `${only ? `Published point ${only}` : "The published points"} of this record, ${names.join(", ")} free: plate current within ${percent(worst.plate)}${screen}${slope}.`;
writeFileSync(path, `${JSON.stringify(tube, null, 2)}\n`);
console.log(`${id}: ${JSON.stringify(parameters)} ${unit.fittedTo}`);

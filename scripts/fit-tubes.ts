/**
 * Fits tube models to the published points that stand in the same records, and writes the result and its distances into them.
 *
 *   npx tsx scripts/fit-tubes.ts                       distances of every record anew, from the parameters that stand there
 *   npx tsx scripts/fit-tubes.ts 6sj7                  fits every amplifying unit of a record (6sj7,6sk7: of several)
 *   npx tsx scripts/fit-tubes.ts 6sj7 mu,kg1,kg2       only these are free; the others stay as they stand
 *   npx tsx scripts/fit-tubes.ts 6sj7 mu,kg1,kg2 1,2   and only to these points (counted from 1)
 *
 * Parameters that stand in a record are where its fit begins. `npx biome format --write datasets/tubes` afterwards.
 */
import { type Family, FREE, seedOf } from "./fit/families.ts";
import { type FreeParameter, fitUnit } from "./fit/fit-unit.ts";
import { distancesOf } from "./fit/residuals.ts";
import { amplifierParameters, readTube, type TubeFile, tubeIds, writeTube } from "./fit/tubeFile.ts";

const [id, named, only] = process.argv.slice(2);
const numbers = only?.split(",").map(Number);

/** A converter's transconductance is not that of its signal grid, so fewer parameters can be told from its points. */
const familyOf = (tube: TubeFile & { class?: string }, kind: string): Family =>
  tube.class === "converter" ? "converter" : kind === "triode" ? "triode" : "pentode";

function fitRecord(tube: TubeFile): void {
  tube.units.forEach((unit, i) => {
    if (unit.kind !== "triode" && unit.kind !== "pentode") return;
    const own = tube.typical.filter((point, k) => (point.unit ?? 1) === i + 1 && (numbers === undefined || numbers.includes(k + 1)));
    const family = familyOf(tube, unit.kind);
    const free = (named?.split(",") as FreeParameter[] | undefined) ?? FREE[family];
    unit.parameters = { ...fitUnit(amplifierParameters(unit) ?? seedOf(family, own), free, own) };
    unit.source = "fitted-here";
    unit.fittedTo = `${numbers ? `Published point ${only}` : "The published points"} of this record, ${free.join(", ")} free.${own.length === 1 ? " A single point: its distance is no test of the model elsewhere." : ""}`;
  });
}

for (const each of id?.split(",") ?? tubeIds()) {
  const tube = readTube(each);
  if (id !== undefined) fitRecord(tube);
  tube.units = tube.units.map(({ distance: _old, ...unit }, i) => {
    const parameters = amplifierParameters(unit);
    const distance = parameters === undefined ? [] : distancesOf(parameters, tube.typical, i + 1);
    if (distance.length === 0) return unit;
    const { spread, source, ...head } = unit;
    return { ...head, distance, ...(spread === undefined ? {} : { spread }), ...(source === undefined ? {} : { source }) };
  });
  writeTube(tube);
  for (const { parameters, distance } of tube.units)
    if (id !== undefined) console.log(each, JSON.stringify(parameters), JSON.stringify(distance));
}

/**
 * Simulates the seeded faults of the benchmark chassis in the general-purpose simulator and stores the readings in tests/suspects/data.
 * Chassis whose figures are there and whose netlist has not changed are left as they are.
 * Usage: npx tsx scripts/make-fault-cases.ts [chassis...] [--again]   (all chassis: about half an hour of one core)
 */
import { parseArgs } from "node:util";
import { loadDataset } from "@underchassis/dataset/load";
import { readCaseFile, writeCaseFile } from "../tests/suspects/cases/caseFile.ts";
import { CaseMaker } from "../tests/suspects/cases/caseMaker.ts";
import { makeCases } from "../tests/suspects/cases/makeCases.ts";
import { CHASSIS_IDS } from "../tests/suspects/chassisFiles.ts";

const { values, positionals } = parseArgs({ allowPositionals: true, options: { again: { type: "boolean", default: false } } });
const unknown = positionals.filter((id) => !CHASSIS_IDS.includes(id));
if (unknown.length > 0) throw new Error(`no such chassis: ${unknown.join(", ")}`);
const dataset = loadDataset();
let failures = 0;
for (const id of positionals.length > 0 ? positionals : CHASSIS_IDS) {
  if (!values.again && readCaseFile(id)?.netlist === new CaseMaker(id, dataset).netlist) continue;
  const before = process.cpuUsage();
  try {
    writeCaseFile(await makeCases(id, dataset, (line) => console.log(line)));
  } catch (error) {
    failures += 1;
    console.error(`${id} FAILED: ${error instanceof Error ? error.message : String(error)}`);
  }
  const { user, system } = process.cpuUsage(before);
  console.log(`${id}  ${((user + system) / 1e6).toFixed(0)} s of CPU`);
}
process.exit(failures === 0 ? 0 : 1);

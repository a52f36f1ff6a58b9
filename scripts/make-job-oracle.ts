/**
 * Simulates the job circuits, as grading compiles them, in the general-purpose simulator and stores the figures in tests/jobs/data.
 * Usage: npx tsx scripts/make-job-oracle.ts [name...]   (no name: all; some minutes)
 */
import { measure } from "../tests/engine/oracle/measure.ts";
import { checkPlausible } from "../tests/engine/oracle/plausible.ts";
import { writeRecord } from "../tests/engine/oracle/record.ts";
import { JOB_CASES, JOB_DATA } from "../tests/jobs/oracleCases.ts";

const wanted = process.argv.slice(2);
const cases = JOB_CASES.map(({ oracle }) => oracle);
const unknown = wanted.filter((name) => !cases.some((circuit) => circuit.name === name));
if (unknown.length > 0) throw new Error(`no such circuit: ${unknown.join(", ")}`);
let failures = 0;
for (const circuit of cases) {
  if (wanted.length > 0 && !wanted.includes(circuit.name)) continue;
  const start = performance.now();
  try {
    const record = await measure(circuit);
    checkPlausible(circuit, record);
    writeRecord(circuit.name, record, JOB_DATA);
    console.log(`${circuit.name}  ${((performance.now() - start) / 1000).toFixed(1)} s  ${record.settling?.runs ?? 0} runs`);
  } catch (error) {
    failures += 1;
    console.error(`${circuit.name}  FAILED: ${error instanceof Error ? error.message : String(error)}`);
  }
}
process.exit(failures === 0 ? 0 : 1);

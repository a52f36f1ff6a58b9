/**
 * Simulates the cross-check circuits in the general-purpose simulator and stores the figures in tests/engine/data.
 * Usage: npx tsx scripts/make-engine-oracle.ts [name...]   (no name: all circuits; some minutes)
 */
import { circuits } from "../tests/engine/circuits/index.ts";
import { measure } from "../tests/engine/oracle/measure.ts";
import { checkPlausible } from "../tests/engine/oracle/plausible.ts";
import { writeRecord } from "../tests/engine/oracle/record.ts";

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !circuits.some((circuit) => circuit.name === name));
if (unknown.length > 0) throw new Error(`no such circuit: ${unknown.join(", ")}`);
let failures = 0;
for (const circuit of circuits) {
  if (wanted.length > 0 && !wanted.includes(circuit.name)) continue;
  const start = performance.now();
  try {
    const record = await measure(circuit);
    checkPlausible(circuit, record);
    writeRecord(circuit.name, record);
    const settling = record.settling === undefined ? "" : `  ${record.settling.runs} runs, drift ${record.settling.drift.toExponential(1)}`;
    console.log(`${circuit.name}  ${((performance.now() - start) / 1000).toFixed(1)} s${settling}`);
  } catch (error) {
    failures += 1;
    console.error(`${circuit.name}  FAILED: ${error instanceof Error ? error.message : String(error)}`);
  }
}
process.exit(failures === 0 ? 0 : 1);

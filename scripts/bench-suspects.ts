/**
 * The fault search against seeded faults whose readings come from an independent simulator (scripts/make-fault-cases.ts).
 * Usage: npx tsx scripts/bench-suspects.ts [--half tune|report] [--chassis ID] [--cases N] [--healthy N] [--measurements N] [--no-baselines] [--json FILE]
 */
import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { loadDataset } from "@underchassis/dataset/load";
import { searchSuspects } from "@underchassis/grading";
import { printBench } from "../tests/suspects/bench/printBench.ts";
import { runBench } from "../tests/suspects/bench/runBench.ts";

const { values } = parseArgs({
  options: {
    half: { type: "string" },
    chassis: { type: "string" },
    cases: { type: "string" },
    healthy: { type: "string" },
    measurements: { type: "string", default: "2" },
    "no-baselines": { type: "boolean", default: false },
    json: { type: "string" },
  },
});
const { half } = values;
if (half !== undefined && half !== "tune" && half !== "report") throw new Error(`--half is tune or report, not ${half}`);
const count = (text: string | undefined): number => {
  const value = text === undefined ? Number.POSITIVE_INFINITY : Number(text);
  if (!(value >= 0)) throw new Error(`not a number: ${text}`);
  return value;
};
const result = runBench(loadDataset(), searchSuspects, {
  ...(half === undefined ? {} : { half }),
  ...(values.chassis === undefined ? {} : { chassis: values.chassis }),
  cases: count(values.cases),
  healthy: count(values.healthy),
  measurements: count(values.measurements),
  baselines: !values["no-baselines"],
  log: (line) => process.stderr.write(`${line}\n`),
});
console.log(printBench(result).join("\n"));
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(result, null, 1)}\n`);

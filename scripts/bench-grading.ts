/**
 * Times the grading of the demo jobs in CPU milliseconds, cold and warm, with the steady states solved and the periods marched:
 * the counts do not depend on what else the machine does. Usage: npx tsx scripts/bench-grading.ts
 */
import { readdirSync } from "node:fs";
import { loadDataset } from "@underchassis/dataset/load";
import { gradeJob } from "@underchassis/grading";
import { Marcher } from "../packages/calc/src/circuit/march.ts";
import { loadJobFiles } from "../packages/cli/src/files/loadJobFiles.ts";

const WARM_RUNS = 8;

function cpuMs(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

/** Periods marched, periods marched with their transition matrix, and stages, during some work. */
function counted(work: () => void): { plain: number; carried: number; stages: number; networks: number } {
  const counts = { plain: 0, carried: 0, stages: 0, networks: 0 };
  const networks = new Set<unknown>();
  const march = Marcher.prototype.march;
  Marcher.prototype.march = function (this: Marcher, plan, state, startSeconds, transition, record): void {
    counts[transition === undefined ? "plain" : "carried"] += 1;
    counts.stages += 2 * plan.levels.length;
    networks.add(this.circuit.network);
    march.call(this, plan, state, startSeconds, transition, record);
  };
  try {
    work();
  } finally {
    Marcher.prototype.march = march;
  }
  return { ...counts, networks: networks.size };
}

/** Time of a fixed piece of arithmetic, by which figures of two machines or hours can be compared. */
function yardstickMs(): number {
  const values = new Float64Array(4096).map((_, k) => 1 / (k + 1));
  let sum = 0;
  const ms = cpuMs(() => {
    for (let round = 0; round < 5000; round += 1) for (let k = 0; k < values.length; k += 1) sum += values[k]! * values[4095 - k]!;
  });
  if (!(sum > 0)) throw new Error("the yardstick was not computed");
  return ms;
}

const dataset = loadDataset();
const jobs = new URL("../datasets/jobs/", import.meta.url);
console.log(`yardstick (20 million multiply-adds): ${yardstickMs().toFixed(0)} ms`);
console.log("job                            cold ms   warm ms   networks   periods   with transition   stages");
for (const name of readdirSync(jobs)) {
  const files = loadJobFiles(new URL(name, jobs).pathname);
  const grade = (): void => {
    if (!gradeJob(files, dataset, { toolVersion: "bench" }).ok) throw new Error(`${name} was not graded`);
  };
  const cold = cpuMs(grade);
  let warm = Number.POSITIVE_INFINITY;
  for (let run = 0; run < WARM_RUNS; run += 1) warm = Math.min(warm, cpuMs(grade));
  const { plain, carried, stages, networks } = counted(grade);
  const columns = [cold.toFixed(0), warm.toFixed(0), networks, plain, carried, stages];
  console.log(`${name.padEnd(28)} ${columns.map((value) => String(value).padStart(9)).join(" ")}`);
}

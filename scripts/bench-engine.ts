/**
 * Times the engine against the general-purpose simulator on the same circuits in one process, then the engine alone in CPU time (the
 * machine may be shared): hypotheses a second, and cost against network size, with the periods marched or Newton passes made. Usage: npx tsx scripts/bench-engine.ts [name...]
 */
import { changedSolver, type Network, type SteadyState, solveSteady } from "@underchassis/calc";
import { supplyOfTwelveParts, supplyWithStages } from "../tests/engine/circuits/chassis.ts";
import { circuits } from "../tests/engine/circuits/index.ts";
import { compareSteady, toleranceOf } from "../tests/engine/compare.ts";
import { measure } from "../tests/engine/oracle/measure.ts";

const DEFAULT_NAMES = [
  "half-wave-capacitor-vacuum-heavy",
  "full-wave-capacitor-silicon-heavy",
  "full-wave-choke-vacuum-heavy",
  "clc-5y3",
  "crcrc-chain",
  "bias-half-wave",
  "series-capacitors-slow-high-ohm-balance",
  "transformerless-half-wave-silicon-heavy",
  "long-tail-pair",
  "beam-output-6v6",
];

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? (sorted[middle] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}

/** Median milliseconds of `repeats` calls, after three that warm the compiler up. */
function timed(repeats: number, work: () => void): number {
  for (let k = 0; k < 3; k += 1) work();
  const times: number[] = [];
  for (let k = 0; k < repeats; k += 1) {
    const start = performance.now();
    work();
    times.push(performance.now() - start);
  }
  return median(times);
}

async function againstSimulator(names: readonly string[]): Promise<void> {
  console.log(
    "circuit                                     engine ms   simulator ms      ratio   largest disagreement (share of what is allowed)",
  );
  await measure(circuits.find(({ name }) => name === "long-tail-pair") ?? circuits[0]!);
  const ratios: number[] = [];
  for (const name of names) {
    const circuit = circuits.find((candidate) => candidate.name === name);
    if (circuit === undefined) throw new Error(`no such circuit: ${name}`);
    const start = performance.now();
    const record = await measure(circuit);
    const simulatorMs = performance.now() - start;
    const engineMs = timed(15, () => solveSteady(circuit.network));
    const worst = compareSteady(record, solveSteady(circuit.network), toleranceOf(circuit)).figures.reduce((a, b) =>
      b.share > a.share ? b : a,
    );
    ratios.push(simulatorMs / engineMs);
    const disagreement = `${worst.where} ${worst.found.toPrecision(5)} / ${worst.expected.toPrecision(5)} (${worst.share.toFixed(2)})`;
    console.log(
      `${name.padEnd(42)} ${engineMs.toFixed(2).padStart(10)} ${simulatorMs.toFixed(0).padStart(14)} ${(simulatorMs / engineMs).toFixed(0).padStart(10)}   ${disagreement}`,
    );
  }
  console.log(`median ratio ${median(ratios).toFixed(0)} (the simulator's time holds all its settling runs and the measuring run)`);
}

/** The network with one part's main value multiplied. */
function changed(network: Network, id: string, factor: number): Network {
  const elements = network.elements.map((element) => {
    if (element.id !== id) return element;
    if (element.kind === "resistor") return { ...element, ohms: element.ohms * factor };
    if (element.kind === "capacitor") return { ...element, farads: element.farads * factor };
    if (element.kind === "inductor") return { ...element, henries: element.henries * factor };
    if (element.kind === "vacuum-diode") return { ...element, perveance: element.perveance * factor };
    if (element.kind === "voltage-source") return { ...element, rmsVolts: (element.rmsVolts ?? 0) * factor };
    if (element.kind === "transformer") return { ...element, windings: element.windings.map((w) => ({ ...w, ohms: w.ohms * factor })) };
    throw new Error(`${id}: no value to change`);
  });
  return { ...network, elements };
}

const FACTORS = [0.3, 0.7, 0.9, 1.1, 1.5, 3];
const RUNS = 5;

/** Least CPU milliseconds of several calls, after one that warms the compiler up. */
function leastCpu(work: () => void): number {
  work();
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < RUNS; run += 1) {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

/** One part changed at a time; parts that have no value to change (tubes) are left alone. */
function onePartChanges(network: Network): Network[] {
  const fixed = new Set(["triode", "pentode"]);
  return network.elements.filter(({ kind }) => !fixed.has(kind)).flatMap(({ id }) => FACTORS.map((factor) => changed(network, id, factor)));
}

/** Solves every network, reads the mean of every point, and returns the periods or passes that it took. */
function sweep(networks: readonly Network[], solve: (network: Network) => SteadyState): number {
  let iterations = 0;
  for (const network of networks) {
    const solution = solve(network);
    iterations += solution.iterations;
    for (const figures of solution.points.values()) if (!Number.isFinite(figures.meanVolts)) throw new Error("a point without a voltage");
  }
  return iterations;
}

function hypothesesPerSecond(): void {
  const network = supplyOfTwelveParts();
  const hypotheses = onePartChanges(network);
  const nominal = solveSteady(network);
  const fine = changedSolver(network);
  const coarse = changedSolver(network, { coarse: true });
  const ways: [string, (hypothesis: Network) => SteadyState][] = [
    ["marched, cold", (hypothesis) => solveSteady(hypothesis)],
    ["marched, from the nominal solution", (hypothesis) => solveSteady(hypothesis, { warmStart: nominal })],
    ["as changes of the nominal network", (hypothesis) => fine.solve(hypothesis)],
    ["as changes, coarse", (hypothesis) => coarse.solve(hypothesis)],
  ];
  for (const [label, solve] of ways) {
    let iterations = 0;
    const ms = leastCpu(() => {
      iterations = sweep(hypotheses, solve);
    });
    const rate = (hypotheses.length / ms) * 1000;
    console.log(
      `${network.elements.length}-part supply, ${hypotheses.length} one-part changes, ${label}: ${rate.toFixed(0)} a second (${(iterations / hypotheses.length).toFixed(1)} periods or passes each)`,
    );
  }
}

function costAgainstSize(): void {
  console.log(
    "CPU milliseconds: a steady state, from a solution of the same network, a family of changes made ready, and each change of one part",
  );
  console.log("points  elements     cold     warm  periods    ready   change   coarse   marched of all");
  for (const stages of [0, 1, 3, 5, 8, 10, 13]) {
    const network = supplyWithStages(stages);
    const solution = solveSteady(network);
    const cold = leastCpu(() => solveSteady(network));
    const warm = leastCpu(() => solveSteady(network, { warmStart: solution }));
    const ready = leastCpu(() => changedSolver(network));
    const hypotheses = onePartChanges(network).filter((_, k) => k % 3 === 0);
    const fine = changedSolver(network);
    const coarse = changedSolver(network, { coarse: true });
    const each = leastCpu(() => sweep(hypotheses, (hypothesis) => fine.solve(hypothesis))) / hypotheses.length;
    const eachCoarse = leastCpu(() => sweep(hypotheses, (hypothesis) => coarse.solve(hypothesis))) / hypotheses.length;
    const { quick, whole } = fine.counts;
    const figures = [cold, warm].map((ms) => ms.toFixed(2));
    const rest = [ready, each, eachCoarse].map((ms) => ms.toFixed(2));
    const columns = [solution.points.size, network.elements.length, ...figures, solution.iterations, ...rest, `${whole}/${quick + whole}`];
    console.log(columns.map((value) => String(value).padStart(7)).join("  "));
  }
}

const names = process.argv.slice(2);
await againstSimulator(names.length > 0 ? names : DEFAULT_NAMES);
hypothesesPerSecond();
costAgainstSize();
process.exit(0);

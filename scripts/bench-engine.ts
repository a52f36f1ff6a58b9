/**
 * Times the engine against the general-purpose simulator on the same circuits in one process, then the engine alone:
 * hypotheses a second, and cost against network size. Usage: npx tsx scripts/bench-engine.ts [name...]
 */
import { type Network, type SteadyState, solveSteady } from "@underchassis/calc";
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

function hypothesesPerSecond(): void {
  const network = supplyOfTwelveParts();
  const factors = [0.3, 0.7, 0.9, 1.1, 1.5, 3];
  const hypotheses = network.elements.flatMap(({ id }) => factors.map((factor) => changed(network, id, factor)));
  const nominal = solveSteady(network);
  const sweep = (warmStart?: SteadyState): void => {
    for (const hypothesis of hypotheses) {
      const solution = solveSteady(hypothesis, warmStart === undefined ? {} : { warmStart });
      for (const figures of solution.points.values()) if (!Number.isFinite(figures.meanVolts)) throw new Error("a point without a voltage");
    }
  };
  for (const [label, warmStart] of [["cold", undefined] as const, ["from the nominal solution", nominal] as const]) {
    const ms = timed(3, () => sweep(warmStart));
    const rate = (hypotheses.length / ms) * 1000;
    console.log(`${network.elements.length}-part supply, ${hypotheses.length} one-part changes, ${label}: ${rate.toFixed(0)} a second`);
  }
}

function costAgainstSize(): void {
  console.log("points  elements   cold ms   warm ms   periods");
  for (const stages of [0, 1, 3, 5, 8, 10, 13]) {
    const network = supplyWithStages(stages);
    const solution = solveSteady(network);
    const cold = timed(5, () => solveSteady(network));
    const warm = timed(5, () => solveSteady(network, { warmStart: solution }));
    const columns = [solution.points.size, network.elements.length, cold.toFixed(2), warm.toFixed(2), solution.iterations];
    console.log(columns.map((value) => String(value).padStart(8)).join("  "));
  }
}

const names = process.argv.slice(2);
await againstSimulator(names.length > 0 ? names : DEFAULT_NAMES);
hypothesesPerSecond();
costAgainstSize();
process.exit(0);

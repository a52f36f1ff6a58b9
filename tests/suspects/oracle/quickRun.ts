/** One transient in the general-purpose simulator, with tolerances for the bench (a part in ten thousand) and not for a proof. */
import { Simulation } from "eecircuit-engine";
import type { Trace } from "../../engine/oracle/simulator.ts";

/** Tried in turn: what one integration method stumbles over, another may pass. */
const MANNERS = [
  { options: "reltol=1e-4 abstol=1e-10 vntol=1e-6 trtol=7 method=gear", steps: 300 },
  { options: "reltol=3e-4 abstol=1e-9 vntol=1e-5 trtol=7 method=trap", steps: 500 },
  { options: "reltol=1e-3 abstol=1e-8 vntol=1e-5 trtol=7 method=gear", steps: 1000 },
] as const;
const COMMON = "itl1=500 itl4=100 gmin=1e-13 rshunt=1e12";

let shared: Promise<Simulation> | undefined;

/** Counts the runs. A run that fails leaves the figures of the one before it: each carries its number as a voltage, so that none is taken for another. */
let number = 0;

async function started(): Promise<Simulation> {
  const simulation = new Simulation();
  await simulation.start();
  // Without figures from an earlier run a failing one never comes back.
  simulation.setNetList(["first", "v1 1 0 1", "r1 1 0 1", ".save v(1)", ".op", ".end"].join("\n"));
  await simulation.runSim();
  return simulation;
}

/** Runs lines and a command; undefined when the simulator gave up. */
export async function quickRun(
  lines: readonly string[],
  saved: Iterable<string>,
  options: string,
  command: string,
): Promise<Trace | undefined> {
  shared ??= started();
  const simulation = await shared;
  number += 1;
  const mark = `vmark mark 0 ${number}`;
  const netlist = ["bench", ...lines, mark, `.options ${options} ${COMMON}`, `.save v(mark) ${[...saved].join(" ")}`, command, ".end"];
  simulation.setNetList(netlist.join("\n"));
  try {
    const result = await simulation.runSim();
    if (result.dataType !== "real") throw new Error("expected real vectors");
    const trace = new Map(result.data.map((vector) => [vector.name.toLowerCase(), Float64Array.from(vector.values)]));
    const marked = trace.get("v(mark)")?.at(-1) ?? Number.NaN;
    return Math.abs(marked - number) < 0.01 ? trace : undefined;
  } catch {
    shared = undefined;
    return undefined;
  }
}

/**
 * `periods` of the line from the starting values in the lines; the trace holds the last of them.
 *
 * @throws Error when no manner reaches the end
 */
export async function runPeriods(lines: readonly string[], saved: Iterable<string>, hertz: number, periods: number): Promise<Trace> {
  const stop = periods / hertz;
  const names = [...saved];
  for (let attempt = 0; attempt < MANNERS.length; attempt += 1) {
    const { options, steps } = MANNERS[attempt] ?? MANNERS[0];
    const step = 1 / hertz / steps;
    const trace = await quickRun(lines, names, options, `.tran ${step} ${stop} ${stop - 1 / hertz} ${step} uic`);
    const times = trace?.get("time");
    const [first, last] = [times?.[0], times?.at(-1)];
    if (trace === undefined || first === undefined || last === undefined) continue;
    if (Math.abs(last - stop) > 1e-6 * stop || Math.abs(first - (stop - 1 / hertz)) > 2 * step) continue;
    return trace;
  }
  throw new Error("the simulator did not reach the end of the run");
}

/** Name and version as the simulator announces itself. */
export async function quickVersion(): Promise<string> {
  shared ??= started();
  return /ngspice-[\d.]+/.exec((await shared).getInitInfo())?.[0] ?? "unknown";
}

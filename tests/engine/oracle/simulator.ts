/** Runs one netlist in the general-purpose simulator and gives back its vectors. */
import { Simulation } from "eecircuit-engine";

/** Vectors by lower-case name; `time` and the others have one entry a step. */
export type Trace = ReadonlyMap<string, Float64Array>;

/** Complex vectors of a frequency sweep. */
export type ComplexTrace = ReadonlyMap<string, readonly { re: number; im: number }[]>;

/** Tight tolerances; a shunt of 1e12 ohm at each node stands in for the insulation that lets a floating winding have a voltage. */
const OPTIONS = ".options reltol=1e-6 abstol=1e-11 vntol=1e-8 trtol=1 method=gear itl1=500 itl4=100 gmin=1e-13 rshunt=1e12";

let shared: Promise<Simulation> | undefined;

async function started(): Promise<Simulation> {
  const simulation = new Simulation();
  await simulation.start();
  return simulation;
}

async function run(lines: readonly string[], saved: ReadonlySet<string>, command: string) {
  shared ??= started();
  const simulation = await shared;
  const netlist = ["cross-check", ...lines, OPTIONS, `.save ${[...saved].join(" ")}`, command, ".end"].join("\n");
  simulation.setNetList(netlist);
  try {
    return { result: await simulation.runSim(), simulation };
  } catch (cause) {
    shared = undefined;
    throw new Error(`the simulator failed on:\n${netlist}\n${simulation.getError().join("\n")}`, { cause });
  }
}

/** A transient or an operating point. A transient that stops before `.tran`'s second figure is an error. */
export async function simulate(lines: readonly string[], saved: ReadonlySet<string>, command: string): Promise<Trace> {
  const { result, simulation } = await run(lines, saved, command);
  if (result.dataType !== "real") throw new Error("expected real vectors");
  const trace = new Map(result.data.map((vector) => [vector.name.toLowerCase(), Float64Array.from(vector.values)]));
  const [kind, , stop] = command.split(" ");
  const reached = trace.get("time")?.at(-1);
  if (kind === ".tran" && !(reached !== undefined && Math.abs(reached - Number(stop)) <= 1e-6 * Number(stop))) {
    throw new Error(`the simulator stopped at ${reached} s of ${stop} s: ${simulation.getInfo().slice(-400)}`);
  }
  return trace;
}

/** A frequency sweep. */
export async function simulateSweep(lines: readonly string[], saved: ReadonlySet<string>, command: string): Promise<ComplexTrace> {
  const { result } = await run(lines, saved, command);
  if (result.dataType !== "complex") throw new Error("expected complex vectors");
  return new Map(
    result.data.map((vector) => [vector.name.toLowerCase(), vector.values.map((value) => ({ re: value.real, im: value.img }))]),
  );
}

/** Name and version as the simulator announces itself. */
export async function simulatorVersion(): Promise<string> {
  shared ??= started();
  const banner = (await shared).getInitInfo();
  const found = /ngspice-[\d.]+/.exec(banner);
  if (found === null) throw new Error("the simulator did not announce its version");
  return found[0];
}

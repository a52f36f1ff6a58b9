/** The job circuits as cases for the independent simulator: what grading compiled, loaded and with the tubes pulled. */
import type { Element } from "@underchassis/calc";
import type { Job } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { buildModel } from "@underchassis/grading";
import type { ChassisModel, Solved } from "../../packages/grading/src/model/index.ts";
import type { CircuitCase, Tolerance } from "../engine/oracle/case.ts";
import { asTemplate, type JobCircuit, LINE_HERTZ } from "./circuits/case.ts";
import { JOB_CIRCUITS } from "./circuits/index.ts";

/** Where the stored figures lie. */
export const JOB_DATA = new URL("./data/", import.meta.url);

/** How closely a graded job must follow the simulator. */
export const JOB_TOLERANCE: Tolerance = {
  mean: 0.005,
  ripple: 0.05,
  peak: 0.05,
  reason: "half a percent and five: finer than a bench meter",
};

/**
 * The simulator's windings would pass direct current to the line; a real core does not, and the engine knows. A core of 2000 H takes
 * 0.2 mA of the line and settles the matter.
 */
const CORE_HENRIES = 2000;
const withCore = (element: Element): Element =>
  element.kind === "transformer" ? { ...element, magnetizingHenries: CORE_HENRIES } : element;

const dataset = loadDataset();

/** @throws Error with every diagnostic when the job cannot be read or simulated */
export function jobModel(job: Job): ChassisModel {
  const built = buildModel({ job: { name: "job.json", text: JSON.stringify(job, null, 1) } }, dataset);
  if (!built.ok) throw new Error(built.diagnostics.map(({ message, received }) => `${message} (${received})`).join("\n"));
  return built.model;
}

export interface JobCase {
  circuit: JobCircuit;
  condition: "operating" | "tubes-out";
  oracle: CircuitCase;
  /** What grading works with. */
  solved: Extract<Solved, { ok: true }>;
}

function jobCase(circuit: JobCircuit, model: ChassisModel, condition: JobCase["condition"]): JobCase {
  const solved = model.solve({ life: "restored", condition, line: "actual" });
  if (!solved.ok) throw new Error(`${circuit.name}: ${solved.message}`);
  const loaded = condition === "operating";
  const { point, within, formula, noLoad, loaded: underLoad } = circuit.byHand;
  const oracle: CircuitCase = {
    name: `${circuit.name}-${loaded ? "loaded" : "no-load"}`,
    network: { ...solved.compiled.network, elements: solved.compiled.network.elements.map(withCore) },
    analysis: { kind: "steady", hertz: LINE_HERTZ },
    tolerance: JOB_TOLERANCE,
    plausible: { point, volts: loaded ? underLoad : noLoad, within, formula },
    ...(circuit.lit === undefined || !loaded ? {} : { lit: circuit.lit }),
  };
  return { circuit, condition, oracle, solved };
}

export const JOB_CASES: readonly JobCase[] = JOB_CIRCUITS.flatMap((circuit) => {
  const model = jobModel(asTemplate(circuit));
  // Heaters in series: with the tubes out nothing has power.
  const conditions = (["operating", "tubes-out"] as const).filter((id) => model.conditions.get(id)?.powered);
  return conditions.map((condition) => jobCase(circuit, model, condition));
});

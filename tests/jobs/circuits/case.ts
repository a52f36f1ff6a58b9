/** A supply described twice: by a stage template, and by free parts alone. */
import type { Job, JobPart, JobStage } from "@underchassis/dataset";

export interface JobCircuit {
  name: string;
  /** Transformer, loads and whatever else both ways of writing have in common. */
  around: readonly JobPart[];
  /** The stage with all its points bound and all its parts named. */
  stage: Pick<JobStage, "template" | "bind" | "parts">;
  /** The same parts between the same points, without a template. */
  parts: readonly JobPart[];
  reference?: string;
  isolation?: "transformer" | "transformerless";
  /** Hand estimates of one point's mean volts, and how far they may be off (relative). */
  byHand: { point: string; loaded: number; noLoad: number; within: number; formula: string };
  /** Gas regulator tubes that must be lit under load. */
  lit?: Readonly<Record<string, boolean>>;
}

const LINE_VOLTS = 120;
export const LINE_HERTZ = 60;

function job(circuit: JobCircuit, rest: Pick<Job, "stages" | "parts">): Job {
  const { reference, isolation, name } = circuit;
  return {
    format: 1,
    title: name,
    chassis: {
      era: 1950,
      ...(isolation === undefined ? {} : { isolation }),
      line: { designVolts: `${LINE_VOLTS} V`, actualVolts: `${LINE_VOLTS} V`, hertz: LINE_HERTZ },
    },
    ...(reference === undefined ? {} : { reference }),
    ...rest,
  };
}

export const asTemplate = (circuit: JobCircuit): Job =>
  job(circuit, { stages: [{ id: "supply", ...circuit.stage }], parts: [...circuit.around] });

export const asParts = (circuit: JobCircuit): Job => job(circuit, { parts: [...circuit.around, ...circuit.parts] });

import { CircuitError, type Element, operatingPoint } from "@underchassis/calc";
import type { TubeRecord } from "@underchassis/dataset";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";

type Unit = TubeRecord["units"][number];
type Point = TubeRecord["typical"][number];

/** The aim of a fit: new tubes themselves spread three times as far. */
const CLOSE = 0.1;
/** How far what a record states may lie from what the model gives: it states tenths of a percent. */
const STATED = 0.0015;

/** A tube's model gives what its sheet says. */
export const tubeModel: ElectricalRule = {
  code: "UC-713",
  name: "tube-model",
  scope: "electrical",
  of: "tube",
  severity: "error",
  title: "A tube's model passes its published points within 10 %, or within what the record states",
  why: "Every chassis with this tube is simulated with the model; off by a factor, it accuses sound parts.",
  bad: '"parameters": { "perveance": 0.003536 } beside a published drop of 50 V at 125 mA',
  good: '"parameters": { "perveance": 0.0003536 }',
  check: ({ units, typical, id }) =>
    typical.flatMap((point, index): Complaint[] => {
      const number = (point.unit ?? 1) - 1;
      const unit = units[number];
      const gives = unit === undefined ? undefined : attempted(unit, point);
      if (unit === undefined || gives === undefined) return [];
      if (typeof gives === "string")
        return [{ at: { path: ["units", number, "parameters"], part: "key" }, message: `the model cannot be reckoned: ${gives}` }];
      const share = gives.value / gives.published - 1;
      const stated = unit.distance?.find((distance) => distance.point === index + 1)?.plateAmps;
      if (stated === undefined ? Math.abs(share) <= CLOSE : Math.abs(share - stated) <= STATED) return [];
      return [
        {
          at: { path: ["units", number, "parameters"], part: "key" },
          message: `the model gives ${shown(gives.value)} ${gives.unit} at published point ${index + 1}, not ${shown(gives.published)} ${gives.unit}`,
          received: `${percent(share)} off`,
          expected: stated === undefined ? `at most ${percent(CLOSE)} off` : `${percent(stated)} off, as "distance" says`,
          help: `npx tsx scripts/fit-tubes.ts ${id} fits the parameters, and writes how far they lie from the points`,
        },
      ];
    }),
};

/** The same, or the words of the engine for parameters that it refuses. */
function attempted(unit: Unit, point: Point): ReturnType<typeof modelAt> | string {
  try {
    return modelAt(unit, point);
  } catch (error) {
    if (!(error instanceof CircuitError)) throw error;
    return error.message;
  }
}

/** What a unit's model gives where the sheet gives a figure; undefined where the point says nothing of it. */
function modelAt(unit: Unit, point: Point): { value: number; published: number; unit: string } | undefined {
  const { parameters: { perveance, dropVolts, ohms, operatingVolts, slopeOhms } = {}, kind } = unit;
  if (point.dropVolts !== undefined && point.dropAmps !== undefined) {
    const volts = (value: number) => ({ value, published: point.dropVolts!, unit: "V" });
    // The three-halves-power law, backwards.
    if (kind === "vacuum-diode" && perveance !== undefined) return volts((point.dropAmps / perveance) ** (2 / 3));
    if (kind === "gas-diode" && dropVolts !== undefined) return volts(dropVolts + (ohms ?? 0) * point.dropAmps);
    if (kind === "gas-regulator" && operatingVolts !== undefined) return volts(operatingVolts + (slopeOhms ?? 0) * point.dropAmps);
  }
  return kind === "triode" || kind === "pentode" ? amplifierAt(unit, point) : undefined;
}

function amplifierAt({ kind, parameters }: Unit, point: Point): { value: number; published: number; unit: string } | undefined {
  const { plateVolts, plateAmps, screenVolts, screenAmps = 0, cathodeOhms } = point;
  // Bias by a cathode resistor becomes grid volts from the published currents.
  const gridVolts = point.gridVolts ?? (cathodeOhms === undefined ? undefined : -cathodeOhms * ((plateAmps ?? 0) + screenAmps));
  if (parameters === undefined || plateVolts === undefined || plateAmps === undefined || gridVolts === undefined) return undefined;
  if (kind === "pentode" && screenVolts === undefined) return undefined;
  const source = (id: string, node: string, dcVolts: number): Element => ({ kind: "voltage-source", id, nodes: [node, "k"], dcVolts });
  const triode = { plate: "p", grid: "g", cathode: "k" };
  const tube =
    kind === "pentode"
      ? { kind: "pentode", id: "tube", nodes: { ...triode, screen: "s" }, parameters }
      : { kind: "triode", id: "tube", nodes: triode, parameters };
  const state = operatingPoint({
    elements: [
      source("plate", "p", plateVolts),
      source("grid", "g", gridVolts),
      ...(kind === "pentode" ? [source("screen", "s", screenVolts!)] : []),
      // Which parameters a model needs, the schema leaves to the model; the solver refuses a network that lacks some.
      tube as unknown as Element,
    ],
    reference: "k",
  });
  return { value: -state.read({ quantity: "dc-amps", element: "plate" }), published: plateAmps, unit: "A" };
}

const shown = (value: number): number => Number(value.toPrecision(3));
const percent = (share: number): string => `${Number((100 * share).toFixed(1))} %`;

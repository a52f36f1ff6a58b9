import type { TubeRecord } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";

type Unit = TubeRecord["units"][number];

const TRIODE = ["mu", "ex", "kg1", "kp", "kvb"];
/** What each model reckons with. */
const NEEDED: Readonly<Record<Unit["kind"], readonly string[]>> = {
  triode: TRIODE,
  pentode: [...TRIODE, "kg2"],
  "vacuum-diode": ["perveance"],
  "gas-diode": ["dropVolts", "ohms"],
  "gas-regulator": ["strikeVolts", "operatingVolts", "slopeOhms", "extinguishAmps"],
  none: [],
};
/** What a model may have besides: the contact potential, alone among all it may be below zero, and what the grid draws above it. */
const ALSO: Readonly<Partial<Record<Unit["kind"], readonly string[]>>> = { triode: ["vct", "gridOhms"], pentode: ["vct", "gridOhms"] };

/** A model has its parameters. */
export const tubeParameters: RecordRule = {
  code: "UC-426",
  name: "tube-parameters",
  scope: "record",
  severity: "error",
  title: "A tube's model has the parameters of its equation, all of them, no others, above zero",
  why: "A model that lacks one gives no current, and every chassis with the tube is refused.",
  bad: '"kind": "triode", "parameters": { "mu": 100, "kg": 1060 }',
  good: '"kind": "triode", "parameters": { "mu": 100, "ex": 1.4, "kg1": 1060, "kp": 600, "kvb": 300 }',
  kinds: ["tube"],
  check(record) {
    const { id, units } = record.value as TubeRecord;
    return units.flatMap((unit, index) => faultsOf(unit, ["units", index], id));
  },
};

function faultsOf({ kind, parameters = {} }: Unit, path: readonly (string | number)[], id: string): Complaint[] {
  const needed = NEEDED[kind];
  const also = ALSO[kind] ?? [];
  const known = [...needed, ...also];
  const all = known.length === 0 ? "no parameters: it is not simulated" : oneOf(known);
  const strange = Object.keys(parameters).filter((name) => !known.includes(name));
  const missing = needed.filter((name) => !Object.hasOwn(parameters, name));
  return [
    ...strange.map(
      (name): Complaint => ({
        at: { path: [...path, "parameters", name], part: "key" },
        message: `the model of a ${kind} has no parameter "${name}"`,
        received: name,
        expected: all,
        nearest: nearestOf(name, missing) ?? nearestOf(name, known),
      }),
    ),
    // A misspelt one is told as such.
    ...(missing.length === 0 || strange.length > 0
      ? []
      : [
          {
            at: { path: [...path, "kind"] },
            message: `the model of a ${kind} lacks ${missing.join(", ")}`,
            received: kind,
            expected: `"parameters" with ${needed.join(", ")}; or the kind none, where only the limits are known`,
            ...(kind === "triode" || kind === "pentode"
              ? { help: `npx tsx scripts/fit-tubes.ts ${id} fits them to the published points` }
              : {}),
          },
        ]),
    ...Object.entries(parameters).flatMap(([name, value]): Complaint[] =>
      value > 0 || name === "vct" || !known.includes(name)
        ? []
        : [
            {
              at: { path: [...path, "parameters", name] },
              message: `the parameter "${name}" is not above zero`,
              received: String(value),
              expected: "more than 0",
            },
          ],
    ),
  ];
}

import type { StageTemplate } from "@underchassis/dataset";
import { oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { gather, nothing } from "../../shared/gather.ts";

/** Properties that only some kinds of parts have. */
const ONLY: Readonly<Record<string, readonly string[]>> = {
  polarised: ["capacitor"],
  windings: ["transformer"],
  positions: ["switch"],
  type: ["tube", "rectifier", "regulator-tube", "zener"],
  driven: ["tube"],
  pins: ["tube", "rectifier", "regulator-tube", "potentiometer", "switch", "transformer", "cord"],
};
/** What a part of a kind cannot do without. */
const NEEDS: Readonly<Record<string, readonly string[]>> = {
  transformer: ["windings"],
  tube: ["pins", "type"],
  "regulator-tube": ["type"],
};
/** What a meter can show of some kinds of parts only. common-practice. */
const MEASURED_ON: Readonly<Record<string, readonly string[]>> = {
  capacitance: ["capacitor"],
  esr: ["capacitor"],
  inductance: ["inductor", "transformer"],
  dcr: ["inductor", "transformer"],
  emission: ["tube", "rectifier", "regulator-tube"],
};
const LIMITED = Object.keys(ONLY);
const VALUED = ["resistor", "potentiometer", "capacitor", "inductor", "fuse", "breaker", "thermistor", "load", "battery"];

/** A part has what its kind has. */
export const kindFit: RecordRule = {
  code: "UC-417",
  name: "kind-fit",
  scope: "record",
  severity: "error",
  title: "A part has the properties of its kind, and those that its kind needs",
  why: "A polarised resistor or a transformer without windings means that kind or property is wrong.",
  bad: '"kind": "resistor", "polarised": true',
  good: '"kind": "capacitor", "polarised": true',
  kinds: ["stage"],
  check: (record) =>
    gather((record.value as StageTemplate).parts, (part, index): readonly Complaint[] => {
      const having = part as unknown as Readonly<Record<string, unknown>>;
      if (fits(part, having)) return nothing();
      const wrong = Object.entries(ONLY).flatMap(([property, kinds]): Complaint[] =>
        having[property] === undefined || kinds.includes(part.kind)
          ? []
          : [
              {
                at: { path: ["parts", index, property], part: "key" },
                message: `"${property}" is no property of a ${part.kind}`,
                received: part.kind,
                expected: oneOf(kinds),
              },
            ],
      );
      const needed = [...(NEEDS[part.kind] ?? []), ...(VALUED.includes(part.kind) ? ["typical"] : [])];
      const nameless = part.kind === "rectifier" && part.type === undefined && part.typical === undefined;
      const missing = needed.flatMap((property): Complaint[] =>
        having[property] !== undefined ? [] : [lacks(index, part.kind, property)],
      );
      const ends = part.between === undefined && part.pins === undefined && part.windings === undefined;
      return [
        ...wrong,
        ...missing,
        ...(nameless ? [lacks(index, part.kind, "type")] : []),
        ...(ends ? [lacks(index, part.kind, "between")] : []),
        ...(part.measure ?? []).flatMap((what, at): Complaint[] =>
          isMeasured(what, part.kind)
            ? []
            : [
                {
                  at: { path: ["parts", index, "measure", at] },
                  message: `a ${part.kind} has no ${what} to measure`,
                  received: what,
                  expected: `it on ${oneOf(MEASURED_ON[what] ?? [])}`,
                },
              ],
        ),
      ];
    }),
};

const isMeasured = (what: string, kind: string): boolean => MEASURED_ON[what]?.includes(kind) !== false;

/** Whether nothing is to be said of a part, as of most. */
function fits(part: StageTemplate["parts"][number], having: Readonly<Record<string, unknown>>): boolean {
  const { kind } = part;
  for (const property of LIMITED) if (having[property] !== undefined && ONLY[property]?.includes(kind) !== true) return false;
  if (NEEDS[kind]?.some((property) => having[property] === undefined) === true) return false;
  if (part.typical === undefined && (VALUED.includes(kind) || (kind === "rectifier" && part.type === undefined))) return false;
  if (part.measure !== undefined) for (const what of part.measure) if (!isMeasured(what, kind)) return false;
  return part.between !== undefined || part.pins !== undefined || part.windings !== undefined;
}

function lacks(index: number, kind: string, property: string): Complaint {
  return {
    at: { path: ["parts", index, "kind"] },
    message: `a ${kind} without "${property}"`,
    expected: property === "between" ? 'the two points it lies between, as "between" or "pins"' : `"${property}"`,
  };
}

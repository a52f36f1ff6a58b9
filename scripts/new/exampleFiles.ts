import type { Job, StageTemplate } from "@underchassis/dataset";
import { templateJob } from "@underchassis/grading";
import { FILL } from "./blank.ts";
import type { SchemaNode } from "./schemaNode.ts";
import { skeleton } from "./skeleton.ts";

type Part = StageTemplate["parts"][number];
type Measured = Record<string, string>;

/** How parts of a kind are called on drawings. common-practice. */
const LETTERS: Readonly<Record<string, string>> = {
  resistor: "R",
  potentiometer: "R",
  capacitor: "C",
  inductor: "L",
  transformer: "T",
  rectifier: "D",
  zener: "D",
  tube: "V",
  "regulator-tube": "V",
  fuse: "F",
  breaker: "F",
  switch: "S",
  thermistor: "RT",
  lamp: "DS",
  cord: "W",
  wire: "W",
  load: "X",
  battery: "BT",
};

/** What a job writes for each thing that is measured on a part. */
const MEASURED: Readonly<Record<string, Measured>> = {
  resistance: { value: "ohms, one end lifted: 10.3 kohm" },
  capacitance: { value: "capacity out of circuit: 9.8 uF" },
  inductance: { value: "inductance: 9.6 H" },
  leakage: { leakage: "leakage at the voltage below: 0.1 mA", atVolts: "voltage that the leakage was read at: 450 V" },
  esr: { esr: "series resistance: 1.9 ohm" },
  dcr: { dcr: "wire resistance: 148 ohm" },
  emission: { emission: "share of new on a tester: 95 %" },
};

function measuredOf({ measure = [] }: Part): Measured | undefined {
  const entries = measure.flatMap((what) =>
    Object.entries(MEASURED[what] ?? {}).map(([name, words]) => [name, `${FILL}${words}`] as const),
  );
  return entries.length === 0 ? undefined : { ...Object.fromEntries(entries), meter: "bench" };
}

/** The parts that are always there, each with its name on the drawing, its typical marking and blanks for what a meter shows. */
function namedParts({ parts }: StageTemplate, given: Readonly<Record<string, object>>): Record<string, object> {
  const counts = new Map<string, number>();
  const present = parts.filter(({ optional, role }) => optional !== true || Object.hasOwn(given, role));
  return Object.fromEntries(
    present.map((part) => {
      const letter = LETTERS[part.kind] ?? "X";
      const count = (counts.get(letter) ?? 0) + 1;
      counts.set(letter, count);
      const measured = measuredOf(part);
      return [
        part.role,
        {
          ...given[part.role],
          name: `${letter}${count}`,
          ...(part.typical === undefined ? {} : { marked: part.typical }),
          ...(part.type === undefined ? {} : { type: part.type }),
          ...(measured === undefined ? {} : { measured }),
        },
      ];
    }),
  );
}

/** The expected figures that are read at a point, as readings without a value. */
function readingsOf({ expected }: StageTemplate, pointOf: (name: string) => string, life: string | undefined): object[] {
  return expected.flatMap(({ at, to, quantity, condition }) =>
    at === undefined
      ? []
      : [
          {
            at: pointOf(at),
            ...(to === undefined ? {} : { to: pointOf(to) }),
            quantity,
            condition,
            value: `${FILL}what the meter shows, with its unit`,
            meter: "bench",
            ...(life === undefined ? {} : { life }),
          },
        ],
  );
}

function jobOf(template: StageTemplate, title: string, description: string, life?: string): object {
  const { stages: [stage] = [], parts, chassis, format, reference } = templateJob(template);
  const bind: Readonly<Record<string, string>> = stage?.bind ?? {};
  const pointOf = (name: string): string => bind[name] ?? `${stage?.id}:${name}`;
  return {
    $schema: "../../../../schemas/job.schema.json",
    format,
    title,
    chassis: {
      description,
      era: `${FILL}year of making; a whole number from 1915 to 1985, no quotes`,
      assembly: "factory",
      line: chassis.line,
    },
    meters: { bench: { title: "digital multimeter", input: "10 Mohm", accuracy: "1 %" } },
    ...(reference === undefined ? {} : { reference }),
    stages: [{ ...stage, parts: namedParts(template, (stage?.parts ?? {}) as Readonly<Record<string, object>>) }],
    parts: parts as NonNullable<Job["parts"]>,
    readings: readingsOf(template, pointOf, life),
  };
}

/**
 * The files of a template's worked example, below datasets/examples/<id>: a sound job and one with a fault, both from the template's typical values
 * and surroundings, and the record of what they come to; blanks where only a bench knows.
 *
 * @param schema of the record, schemas/example.schema.json
 */
export function exampleFiles(template: StageTemplate, schema: SchemaNode): { name: string; record: object }[] {
  const { title } = template;
  return [
    { name: "nominal/job.json", record: jobOf(template, title, `${FILL}what it is and in what state: nothing is wrong here`, "restored") },
    {
      name: "fault/job.json",
      record: jobOf(template, `${title}, before the repair`, `${FILL}how the fault shows; one part or reading is changed below`),
    },
    {
      name: "expected.json",
      record: skeleton(schema, { include: ["fault.finds[]"], known: { $schema: "../../../schemas/example.schema.json" } }),
    },
  ];
}

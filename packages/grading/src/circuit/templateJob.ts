import type { Job, JobPart, StageTemplate } from "@underchassis/dataset";

type Surround = NonNullable<NonNullable<StageTemplate["typical"]>["parts"]>[number];

/** Id of the stage under test in the job. */
const STAGE = "stage";
/** Wire resistance that is nothing beside what a surround writes as a resistor of its own. */
const NO_OHMS = "0.001 ohm";

/**
 * A stage template alone with its typical surroundings, as a job: every terminal is a point of its own name, sources of
 * alternating voltage are windings of one stiff transformer on the line (all in phase), and the line stays at what the template was
 * designed for.
 *
 * @param optional also have every optional part, at its typical value
 */
export function templateJob(template: StageTemplate, optional = false): Job {
  const { line: { designVolts, hertz } = { designVolts: "117 V", hertz: 60 }, parts = [] } = template.typical ?? {};
  const bind = Object.fromEntries(template.terminals.map(({ id, default: fallback }) => [id, fallback ?? id]));
  const pointOf = (name: string) => bind[name] ?? (Object.hasOwn(template.points ?? {}, name) ? `${STAGE}:${name}` : name);
  const reference = template.typical?.reference ?? template.terminals.find((terminal) => terminal.default === "chassis")?.id ?? "chassis";
  return {
    format: 1,
    title: template.title,
    chassis: {
      era: 1950,
      // At the line's own voltage, with a rectifier: no transformer stands between. Heaters are then in series, and dark with the tubes out.
      ...(parts.some(({ kind, value }) => kind === "ac-source" && value === designVolts) &&
      template.parts.some(({ kind }) => kind === "rectifier")
        ? { isolation: "transformerless" as const }
        : {}),
      line: { designVolts, actualVolts: designVolts, lowVolts: designVolts, highVolts: designVolts, hertz: hertz as 60 },
    },
    reference: pointOf(reference),
    stages: [{ id: STAGE, template: template.id, bind, parts: named(template, optional) }],
    parts: [...parts.flatMap((part, index) => surround(part, index, pointOf)), ...sources(parts, pointOf, designVolts)],
  };
}

/** What a template's job calls a part of the surroundings. @param index its place in `typical.parts` */
export const surroundName = ({ kind }: Surround, index: number): string => `${kind} ${index + 1}`;

function surround(part: Surround, index: number, pointOf: (name: string) => string): JobPart[] {
  if (part.kind === "ac-source") return [];
  return [
    {
      name: surroundName(part, index),
      kind: part.kind,
      between: [pointOf(part.between[0]), pointOf(part.between[1])],
      marked: part.value,
      ...(part.presentIn === undefined ? {} : { presentIn: part.presentIn }),
    },
  ];
}

/** A source straight across the line is the line itself; the others are windings. */
function sources(parts: readonly Surround[], pointOf: (name: string) => string, lineVolts: string): JobPart[] {
  const wanted = parts.flatMap((part) =>
    part.kind === "ac-source" ? [{ between: part.between.map(pointOf) as [string, string], value: part.value }] : [],
  );
  const windings = wanted.filter(({ between }) => !isLine(between));
  if (windings.length === 0) return [];
  return [
    {
      name: "source",
      kind: "transformer",
      windings: {
        primary: { between: ["line hot", "line neutral"], marked: lineVolts, measured: NO_OHMS },
        ...Object.fromEntries(
          windings.map(({ between, value }, index) => [`source-${index + 1}`, { between, marked: value, measured: NO_OHMS }]),
        ),
      },
    },
  ];
}

/** What the job must name so that it is there: optional windings always, since the surroundings load them, optional parts when wanted. */
function named(template: StageTemplate, optional: boolean): NonNullable<NonNullable<Job["stages"]>[number]["parts"]> {
  type State = NonNullable<NonNullable<NonNullable<Job["stages"]>[number]["parts"]>[string]>;
  return Object.fromEntries(
    template.parts.flatMap((part): [string, State][] => {
      const windings = Object.entries(part.windings ?? {}).filter(([, winding]) => winding.optional === true);
      if (windings.length > 0) return [[part.role, { windings: Object.fromEntries(windings.map(([id]) => [id, {}])) }]];
      return optional && part.optional === true ? [[part.role, part.typical === undefined ? {} : { marked: part.typical }]] : [];
    }),
  );
}

/** Whether two points are the two sides of the line. */
function isLine([from, to]: readonly string[]): boolean {
  return from === "line hot" && to === "line neutral";
}

import { FILL } from "./blank.ts";
import type { Plan } from "./skeleton.ts";
import { isFitted, tubePlan } from "./tubePlan.ts";

/** What the command line may say beyond kind and id. */
export interface NewOptions {
  family?: string;
  title?: string;
  "part-kind"?: string;
  class?: string;
  "source-kind"?: string;
  detail?: string;
  template?: string;
}

/** A stage template as far as a new job needs it. */
export interface KnownTemplate {
  terminals: readonly { id: string; meaning: string; default?: string; optional?: boolean }[];
}

/** A kind of record that can be begun. */
export interface RecordKind {
  name: string;
  /** Schema that it follows: the name before `.schema.json`. */
  schema: string;
  /** Options whose value must be one of the schema's choices, and the property that has them. */
  choices: Readonly<Partial<Record<keyof NewOptions, string>>>;
  /** Folder below datasets/, and the file's name. */
  place(id: string, options: NewOptions): { folder: string; file: string };
  /** @param template the stage template that was asked for, where one was */
  plan(id: string, options: NewOptions, template?: KnownTemplate): Plan;
  /** What is run once the blanks are filled, before everything else. */
  next?(id: string, options: NewOptions): string[];
}

const given = (shape: string, value: string | undefined): Record<string, string> => (value === undefined ? {} : { [shape]: value });
const schemaPath = (up: string, name: string): string => `${up}schemas/${name}.schema.json`;

const STAGE: RecordKind = {
  name: "stage",
  schema: "stage",
  choices: { family: "family" },
  place: (id, { family = "" }) => ({ folder: `stages/${family}`, file: `${id}.json` }),
  plan: (id, { family, title }) => ({
    include: [
      ...["terminals[]", "parts[]", "typical", "typical.parts", "typical.parts[]", "expected[]", "requirements[]", "failureNotes"],
      ...["between", "typical", "duty", "measure", "measure[]", "ages", "replace", "substitute", "substitute.text", "source"].map(
        (name) => `parts[].${name}`,
      ),
      ...["at", "to", "low", "high"].map((name) => `expected[].${name}`),
      "requirements[].action",
    ],
    append: { terminals: [{ id: "return", meaning: "Negative return.", default: "chassis" }] },
    known: {
      $schema: schemaPath("../../../", "stage"),
      id,
      ...given("family", family),
      ...given("title", title),
      "typical.line": { designVolts: "117 V", hertz: 60 },
    },
  }),
};

const FAILURE: RecordKind = {
  name: "failure",
  schema: "failure-note",
  choices: { "part-kind": "partKind" },
  place: (id) => ({ folder: "failure-notes", file: `${id}.json` }),
  plan: (id, { title, "part-kind": kind }) => ({
    include: [
      "roles",
      "roles[]",
      "symptom.quantity",
      "symptom.direction",
      "measurement.quantity",
      "measurement.limit",
      "cautions",
      "cautions[]",
      "frequency",
      "fault",
    ],
    known: { $schema: schemaPath("../../", "failure-note"), id, ...given("title", title), ...given("partKind", kind) },
  }),
};

const TUBE: RecordKind = {
  name: "tube",
  schema: "tube",
  choices: { class: "class" },
  place: (id) => ({ folder: "tubes", file: `${id}.json` }),
  plan: (id, { title, class: tubeClass }) => {
    const { include, known } = tubePlan(tubeClass);
    return {
      include: ["base", "base.socket", "heater.heating", "units[].source", "typical[]", ...include],
      known: {
        $schema: schemaPath("../../", "tube"),
        id,
        names: [id.toUpperCase()],
        ...given("title", title),
        ...given("class", tubeClass),
        ...known,
      },
    };
  },
  next: (id, { class: tubeClass }) =>
    isFitted(tubeClass) ? [`npx tsx scripts/fit-tubes.ts ${id}        fits the model to the published points`] : [],
};

const CAUTION: RecordKind = {
  name: "caution",
  schema: "caution",
  choices: {},
  place: (id) => ({ folder: "cautions", file: `${id}.json` }),
  plan: (id, { title }) => ({ include: [], known: { $schema: schemaPath("../../", "caution"), id, ...given("title", title) } }),
};

const RULE_OF_THUMB: RecordKind = {
  name: "rule-of-thumb",
  schema: "rule-of-thumb",
  choices: {},
  place: (id) => ({ folder: "rules-of-thumb", file: `${id}.json` }),
  plan: (id, { title }) => ({
    include: ["figures", "figures[].value", "appliesTo.partKinds", "appliesTo.partKinds[]", "cautions", "cautions[]"],
    known: { $schema: schemaPath("../../", "rule-of-thumb"), id, ...given("title", title) },
  }),
};

/** A template's terminals, each at its own point of the chassis or at a blank; what need not be bound is left out. */
function bindOf(template: KnownTemplate | undefined): Record<string, string> {
  const bound = (template?.terminals ?? []).filter(({ optional, default: point }) => optional !== true || point !== undefined);
  return Object.fromEntries(bound.map(({ id, meaning, default: point }) => [id, point ?? `${FILL}point of the chassis: ${meaning}`]));
}

const JOB: RecordKind = {
  name: "job",
  schema: "job",
  choices: {},
  place: (id) => ({ folder: `jobs/${id}`, file: "job.json" }),
  plan: (_id, { title, template: name }, template) => ({
    include: [
      "chassis.description",
      "chassis.era",
      "chassis.assembly",
      "chassis.line.actualVolts",
      "stages",
      "stages[]",
      "parts",
      "parts[]",
      "parts[].between",
      "parts[].marked",
      "readings",
      "readings[]",
    ],
    known: {
      $schema: schemaPath("../../../", "job"),
      ...given("title", title),
      ...given("stages[].template", name),
      "stages[].bind": bindOf(template),
    },
  }),
};

export const KINDS: readonly RecordKind[] = [STAGE, FAILURE, TUBE, CAUTION, RULE_OF_THUMB, JOB];

import type { WorkMeasure, WorkPart, WorkPoint, WorkStage, Worksheet } from "@underchassis/grading";
import { formatValue } from "../view/formatValue.ts";
import { count } from "../view/headFacts.ts";
import { quantityUnit, quantityWord } from "../view/words.ts";
import type { WordTable } from "../view/wordTable.ts";

/** What stands in a cell that is written into at the bench. */
export const BLANK = "________";

export interface StageView {
  id: string;
  title: string;
  lead: string;
  cautions: readonly { title: string; text: string }[];
  parts: WordTable;
  /** How each of the measurements asked for is made. */
  methods: readonly string[];
  readings: readonly { title: string; powered: boolean; table: WordTable }[];
}

/** A bench sheet in words, the same for every renderer. */
export interface WorksheetView {
  title: string;
  facts: readonly (readonly [string, string])[];
  cautions: readonly { title: string; text: string }[];
  order: readonly string[];
  stages: readonly StageView[];
  notes: string;
}

/** The order of work. common-practice; each step is due before the next, whatever the sheet's stages. */
const ORDER: readonly string[] = [
  "Unplug it. Discharge every filter capacitor through a resistor, then prove with the meter that nothing is left. Do so again after every power-up.",
  "Look first: cord, plug, fuse, burnt or swollen parts, leads on wrong lugs. Write down what stands on each part before anything is changed.",
  "Cold, unplugged: measure the parts of every stage, then the resistances of its points. Do not go on while a part of the line or of the B+ supply is doubtful.",
  "Write the figures into the job and grade it; no power before the grading has nothing against current-limited power.",
];
const POWERED_ORDER: readonly string[] = [
  "Current-limited, tubes out except rectifiers: one hand, clip leads on only with the plug out. Read the points of that condition; switch off when one is outside its window.",
  "All tubes in, on the full line: read the points of the remaining conditions in the order of the sheet.",
];

const PARTS_HEAD = ["Part", "Lies between", "Should be", "Measure", "Change it when", "Marked", "Measured", "Fitted"];
const READINGS_HEAD = ["At", "To", "What", "Expected", "Read", "Line"];

function limitWords({ low, high, unit }: WorkMeasure): string {
  return low === undefined || high === undefined || unit === undefined ? "" : ` (${formatValue(low, unit)} to ${formatValue(high, unit)})`;
}

function partRow(part: WorkPart): string[] {
  const title = [part.name, part.title].filter(Boolean).join(", ") + (part.optional ? " (not in every chassis)" : "");
  const should = [part.marked, part.typical === part.marked ? undefined : part.typical && `typical ${part.typical}`]
    .filter(Boolean)
    .join("; ");
  const measures = part.measures.map((measure) => `${measure.quantity}${limitWords(measure)}`).join(", ");
  const change = [
    part.replace,
    part.substitute && `In its place: ${part.substitute}`,
    part.sources.length > 0 && `[${part.sources.join(", ")}]`,
  ];
  return [
    title,
    part.between,
    should,
    measures,
    change.filter(Boolean).join(" "),
    part.marked ?? BLANK,
    part.measures.length > 0 ? BLANK : "",
    BLANK,
  ];
}

function windowWords({ low, high, quantity, source }: WorkPoint): string {
  if (low === undefined || high === undefined) return "";
  const unit = quantityUnit(quantity);
  return `${formatValue(low, unit)} to ${formatValue(high, unit)} [${source}]`;
}

const readingRow = (point: WorkPoint, powered: boolean): string[] => {
  const amps = point.quantity.endsWith("amps");
  return [
    point.at,
    amps ? "" : point.to,
    [point.title, quantityWord(point.quantity)].filter(Boolean).join(": "),
    windowWords(point),
    BLANK,
    powered ? BLANK : "",
  ];
};

const methodsOf = (parts: readonly WorkPart[]): string[] => [
  ...new Set(parts.flatMap(({ measures }) => measures.flatMap(({ quantity, how }) => (how === "" ? [] : [`${quantity}: ${how}`])))),
];

/** A template stands for itself: its inner points need no stage before them. */
function withoutStage(stage: WorkStage): WorkStage {
  if (stage.template === undefined || stage.template !== stage.id) return stage;
  const bare = (text: string): string => text.replaceAll(`${stage.id}:`, "").replaceAll(`${stage.id}.`, "");
  return {
    ...stage,
    parts: stage.parts.map((part) => ({ ...part, between: bare(part.between) })),
    points: stage.points.map((point) => ({ ...point, at: bare(point.at), to: bare(point.to) })),
  };
}

function stageView(stage: WorkStage, conditions: Worksheet["conditions"], said: ReadonlySet<string>): StageView {
  return {
    id: stage.id,
    title:
      stage.template === undefined || stage.template === stage.id
        ? stage.title
        : `${stage.title} (${stage.id}, template ${stage.template})`,
    lead: stage.summary ?? "",
    cautions: stage.cautions.map(({ id, title, text }) => ({ title, text: said.has(id) ? AGAIN : text })),
    parts: { head: PARTS_HEAD, rows: stage.parts.map(partRow) },
    methods: methodsOf(stage.parts),
    readings: conditions.flatMap(({ id, title, powered }) => {
      const points = stage.points.filter(({ condition }) => condition === id);
      if (points.length === 0) return [];
      return [
        { title: `Readings: ${title}`, powered, table: { head: READINGS_HEAD, rows: points.map((point) => readingRow(point, powered)) } },
      ];
    }),
  };
}

/** A caution that stands in full at the head of the sheet. */
const AGAIN = "As said at the head of this sheet.";

/** The sheet in words. */
export function worksheetView(sheet: Worksheet): WorksheetView {
  const powered = sheet.conditions.some((condition) => condition.powered);
  const said = new Set(sheet.cautions.map(({ id }) => id));
  const [parts, points] = [sheet.stages.flatMap((stage) => stage.parts), sheet.stages.flatMap((stage) => stage.points)];
  return {
    title: sheet.title,
    facts: [
      ["On this sheet", `${count(sheet.stages.length, "stage")}, ${count(parts.length, "part")}, ${count(points.length, "reading")}`],
      ["Dataset", sheet.datasetVersion],
      ["Chassis", BLANK],
      ["Date, hand", BLANK],
      ["Meters", BLANK],
      ["Line", BLANK],
    ],
    cautions: sheet.cautions,
    order: [...ORDER, ...(powered ? POWERED_ORDER : [])],
    stages: sheet.stages.map((stage) => stageView(withoutStage(stage), sheet.conditions, said)),
    notes:
      "Windows marked computed take in part tolerances, tube spread and a 10 Mohm meter; the others come from the source named. Where local codes or licensed practice say more, they rule.",
  };
}

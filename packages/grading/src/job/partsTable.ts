import {
  type PlacedObject,
  type Problems,
  placedObject,
  put,
  type Row,
  readCsv,
  requireColumns,
  type SourceText,
  type Span,
} from "@underchassis/source-text";
import { asId, yesOrNo } from "./cellWords.ts";
import { JOB_LIMITS } from "./jobLimits.ts";

/** Columns whose text goes into the part as it stands. */
const PATH_OF: Readonly<Record<string, readonly string[]>> = {
  name: ["name"],
  marked: ["marked"],
  type: ["type"],
  tolerance: ["tolerance"],
  measured: ["measured", "value"],
  measured_in: ["measured", "circuit"],
  leakage: ["measured", "leakage"],
  leakage_volts: ["measured", "atVolts"],
  esr: ["measured", "esr"],
  dcr: ["measured", "dcr"],
  meter: ["measured", "meter"],
  fitted: ["fitted", "marked"],
  fitted_type: ["fitted", "type"],
  fitted_measured: ["fitted", "measured", "value"],
  found_marked: ["foundMarked"],
  found_type: ["foundType"],
  note: ["note"],
};
const WORDS = new Set(["measured_in", "meter"]);

/** Columns that parts.csv may have. A row needs stage and role, or name and kind. */
const PARTS_COLUMNS = [
  ...["stage", "role", "name", "kind", "from", "to", "found_from", "found_to", "marked", "type", "tolerance", "found_marked", "found_type"],
  ...["measured", "measured_in", "leakage", "leakage_volts", "esr", "dcr", "meter"],
  ...["fitted", "fitted_type", "fitted_measured", "planned", "removed", "why", "note"],
];

/** One row of parts.csv: a part of a stage's role when both are named, else a part of its own. */
export interface PartRow {
  part: PlacedObject;
  stage?: { text: string; span: Span };
  role?: { text: string; span: Span };
  kind?: { text: string; span: Span };
}

export interface PartsTable {
  rows: PartRow[];
  /** Texts of cells that could not be used; `all` when nothing of the table could be read. */
  lost: readonly string[] | "all";
}

/** The parts of a table, with the place of each cell. */
export function readPartsTable(source: SourceText, problems: Problems): PartsTable {
  const table = readCsv(source, PARTS_COLUMNS, JOB_LIMITS, problems);
  if (table === undefined) return { rows: [], lost: "all" };
  const onItsOwn = (row: Row) => !(row.cells.has("stage") && row.cells.has("role"));
  if (
    table.rows.some(onItsOwn) &&
    !requireColumns(table.header, ["name", "kind"], problems, "only rows that name a stage and a role can do without")
  )
    return { rows: [], lost: "all" };
  return { rows: table.rows.map((row) => readRow(row, problems)), lost: table.lost };
}

function readRow(row: Row, problems: Problems): PartRow {
  const part = placedObject(row.span, row.doubtful);
  const { cells } = row;
  for (const [column, { text, span }] of cells) {
    const path = PATH_OF[column];
    if (path !== undefined) put(part, path, WORDS.has(column) ? asId(text) : text, span);
  }
  putPair(part, row, "between", "from", "to", problems);
  putPair(part, row, "foundBetween", "found_from", "found_to", problems);
  putChange(part, row, problems);
  const word = (column: string, read: (text: string) => string) => {
    const cell = cells.get(column);
    return cell === undefined ? {} : { [column]: { text: read(cell.text), span: cell.span } };
  };
  return { part, ...word("stage", asId), ...word("role", (text) => text), ...word("kind", asId) };
}

/** Two cells that make a pair of points. Of the leads as found, one alone is enough where the other's right place is known. */
function putPair(part: PlacedObject, row: Row, property: string, from: string, to: string, problems: Problems): void {
  const found = property === "foundBetween";
  const own = [row.cells.get(from), row.cells.get(to)];
  const written = own[0] ?? own[1];
  if (written === undefined) return;
  const first = own[0] ?? (found ? row.cells.get("from") : undefined);
  const second = own[1] ?? (found ? row.cells.get("to") : undefined);
  if (first === undefined || second === undefined) {
    if (row.doubtful) return;
    part.place.doubtful = true;
    problems.add(written.span, {
      code: "csv-pair-half",
      message: `"${first === undefined ? to : from}" without "${first === undefined ? from : to}"`,
      received: written.text,
      expected: "both points of the part",
    });
    return;
  }
  put(part, [property], [first.text, second.text], first.span, [first.span, second.span]);
}

/** The columns that say what the restorer did. */
function putChange(part: PlacedObject, row: Row, problems: Problems): void {
  const { cells } = row;
  const fitted = part.value.fitted !== undefined;
  const removed = yesOrNo(cells.get("removed"), "removed", problems);
  const planned = yesOrNo(cells.get("planned"), "planned", problems);
  if (removed !== undefined) put(part, ["removed"], removed, cells.get("removed")!.span);
  if (planned !== undefined && fitted) put(part, ["fitted", "planned"], planned, cells.get("planned")!.span);
  if (planned === true && !fitted) {
    problems.add(cells.get("planned")!.span, {
      code: "csv-planned-nothing",
      message: "planned, but no part is named to be fitted",
      received: cells.get("planned")!.text,
      expected: 'the new part in "fitted"',
    });
  }
  const why = cells.get("why");
  if (why === undefined) return;
  const { note } = part.value;
  if (fitted) put(part, ["fitted", "why"], why.text, why.span);
  // Only what is fitted has a reason of its own in the job format; any other reason joins the note.
  else if (typeof note === "string") part.value.note = `${note}; ${why.text}`;
  else put(part, ["note"], why.text, why.span);
}

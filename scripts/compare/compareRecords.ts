import type { Change } from "./change.ts";
import { differencesOf } from "./differences.ts";
import { judgeRecord, judgeWhole } from "./judgeRecord.ts";
import { judgeSchema } from "./judgeSchema.ts";
import type { ReferenceRecord } from "./readRecords.ts";

type Records = ReadonlyMap<string, ReferenceRecord>;

/** Schemas of what we write ourselves: they have versions of their own and refuse nobody's records. */
const OUTPUT_SCHEMAS = new Set(["report", "diagnostics", "validation-report"]);

const withoutId = ({ value }: ReferenceRecord): string => {
  const { id: _, $schema: __, ...rest } = value;
  return JSON.stringify(rest);
};

/** The new record that holds what a record that is gone held: its id was changed. */
function renamed(gone: ReferenceRecord, records: readonly ReferenceRecord[]): ReferenceRecord | undefined {
  const text = withoutId(gone);
  return records.find((record) => record.kind === gone.kind && record.id !== gone.id && withoutId(record) === text);
}

function whole(record: ReferenceRecord, what: "added" | "removed", twin?: ReferenceRecord): Change {
  const { bump, why } = judgeWhole(record.kind, what);
  const told = twin === undefined ? why : `${why}; "${twin.id}" holds the same`;
  return { what, kind: record.kind, id: record.id, file: record.file, bump, why: told };
}

function inside(before: ReferenceRecord, after: ReferenceRecord): Change[] {
  const { kind, id, file } = after;
  return differencesOf(before.value, after.value).map((difference): Change => {
    const { bump, why } = kind === "schemas" ? judgeSchema(difference) : judgeRecord(kind, difference);
    return { what: "changed", kind, id, file, path: difference.path, before: difference.before, after: difference.after, bump, why };
  });
}

/** Which tube goes by each name. */
function tubesByName(records: Records): Map<string, string> {
  const tubes = [...records.values()].filter(({ kind }) => kind === "tubes");
  return new Map(
    tubes.flatMap(({ id, value: { names } }) =>
      (Array.isArray(names) ? names : []).map((name) => [String(name).toUpperCase(), id] as const),
    ),
  );
}

/** A name that another tube has taken over is not gone: a job that names it is read with that tube. */
function withHandedOver(change: Change, names: ReadonlyMap<string, string>): Change {
  const { kind, path = "", before, after, bump } = change;
  const heir = kind === "tubes" && path.startsWith("names[") && after === undefined ? names.get(String(before).toUpperCase()) : undefined;
  return heir === undefined || bump !== "major" ? change : { ...change, bump: "minor", why: `the name now belongs to the tube "${heir}"` };
}

/** Every difference between two states of the reference, in the order of kinds and ids. */
export function compareRecords(before: Records, after: Records): Change[] {
  const added = [...after].flatMap(([key, record]) => (before.has(key) ? [] : [record]));
  const changes = [...new Set([...before.keys(), ...after.keys()])].sort().flatMap((key): Change[] => {
    const [was, is] = [before.get(key), after.get(key)];
    if (was === undefined) return is === undefined ? [] : [whole(is, "added")];
    return is === undefined ? [whole(was, "removed", renamed(was, added))] : inside(was, is);
  });
  const names = tubesByName(after);
  return changes.map((change) => withHandedOver(change, names)).filter(({ kind, id }) => kind !== "schemas" || !OUTPUT_SCHEMAS.has(id));
}

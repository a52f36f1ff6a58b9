import { nearestOf } from "@underchassis/source-text";
import type { FiledComplaint } from "../model/rule.ts";
import type { Collection, ReferenceKind } from "../model/subjects.ts";

/** Kinds that people look up by words. */
const FOUND: ReadonlySet<ReferenceKind> = new Set(["caution", "failure-note", "tube", "stage"]);

/** The nearest id, or else how to look for one. */
function hintsFor(kind: ReferenceKind, id: string, known: Iterable<string>): Pick<FiledComplaint, "nearest" | "help"> {
  const nearest = nearestOf(id, known);
  if (nearest !== undefined || !FOUND.has(kind)) return { nearest };
  const words = id
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim()
    .slice(0, 60);
  return { help: `npx underchassis find ${words} --kind ${kind} looks for one by words` };
}

/** A complaint for every reference of a kind that leads nowhere; files are read again for the places. None where a file that defines some cannot be read. */
export function dangling(collection: Collection, kind: ReferenceKind, message: (id: string) => string, expected: string): FiledComplaint[] {
  if (collection.unknown.has(kind)) return [];
  const known = collection.definitions(kind);
  const files = new Set<string>();
  for (const [id, from] of collection.references(kind)) if (!known.has(id)) for (const file of from) files.add(file);
  return [...files]
    .sort()
    .flatMap((file) =>
      collection
        .recall(file)
        .references.flatMap(({ kind: of, id, at }): FiledComplaint[] =>
          of !== kind || known.has(id)
            ? []
            : [{ file, at, message: message(id), received: id, expected, ...hintsFor(kind, id, known.keys()) }],
        ),
    );
}

import type { CollectionRule, FiledComplaint } from "../../model/rule.ts";
import { UNIQUE } from "../../shared/idsOf.ts";

/** What an id is an id of, in words. */
const WORDS: Readonly<Record<string, string>> = {
  stage: "the id",
  caution: "the id",
  "failure-note": "the id",
  "rule-of-thumb": "the id",
  "worked-example": "the example",
  tube: "the tube name",
  source: "the source",
};

/** An id means one thing. */
export const idUnique: CollectionRule = {
  code: "UC-606",
  name: "id-unique",
  scope: "collection",
  severity: "error",
  title: "No two records of a kind share an id, no two tubes a name, no two examples an id",
  why: "Of two records with one id, readers get one, and not all the same one.",
  bad: 'two files with "id": "6x4"',
  good: "one file for 6x4",
  check: (collection) =>
    [...UNIQUE, "source" as const].flatMap((kind) => {
      const files = new Map<string, Set<string>>();
      for (const [id, paths] of collection.definitions(kind)) {
        // The first keeps its name; every later one is told.
        for (const [index, path] of paths.entries()) if (index > 0) files.set(path, (files.get(path) ?? new Set()).add(id));
      }
      return [...files].flatMap(([file, repeated]): FiledComplaint[] => {
        const seen = new Set<string>();
        return collection.recall(file).ids.flatMap(({ id, at }): FiledComplaint[] => {
          const name = kind === "tube" ? id.toUpperCase() : id;
          const other = collection.definitions(kind).get(name)?.[0];
          if (!repeated.has(name)) return [];
          if (other === file && !seen.has(name)) {
            seen.add(name);
            return [];
          }
          return [
            {
              file,
              at,
              message: `${WORDS[kind] ?? "the id"} "${id}" is taken`,
              received: id,
              help: `it stands in ${other ?? "another file"}; keep one`,
            },
          ];
        });
      });
    }),
};

import { listOf, type Path, recordOf, textOf } from "@underchassis/source-text";
import type { RecordKind } from "../model/fileKind.ts";
import type { ReferenceKind } from "../model/subjects.ts";
import { textsOf } from "./targets.ts";

/** What an id may be an id of. */
export type Defined = ReferenceKind | "stage" | "worked-example" | "rule-of-thumb";

/** Everything that a record defines, with the place of each name. */
export function idsOf(kind: RecordKind, value: unknown): { of: Defined; id: string; path: Path }[] {
  const record = recordOf(value);
  const id = textOf(record.id);
  const own = (of: Defined) => (id === undefined ? [] : [{ of, id, path: ["id"] as Path }]);
  switch (kind) {
    case "stage":
      return [
        ...own("stage"),
        ...listOf(record.parts).flatMap((part, index) => {
          const role = textOf(recordOf(part).role);
          return role === undefined ? [] : [{ of: "role" as const, id: role, path: ["parts", index, "role"] as Path }];
        }),
      ];
    case "tube":
      return textsOf(record.names, ["names"]).map(({ text, path }) => ({ of: "tube", id: text.toUpperCase(), path }));
    case "caution":
    case "failure-note":
    case "rule-of-thumb":
      return own(kind);
    case "worked-example":
      return listOf(record.examples).flatMap((example, index) => {
        const name = textOf(recordOf(example).id);
        return name === undefined ? [] : [{ of: "worked-example" as const, id: name, path: ["examples", index, "id"] as Path }];
      });
    case "example-record":
    case "manifest":
    case "table-descriptions":
      return [];
  }
}

/** Kinds whose ids only one file may define. Roles recur from template to template. */
export const UNIQUE: readonly Defined[] = ["stage", "tube", "caution", "failure-note", "rule-of-thumb", "worked-example"];

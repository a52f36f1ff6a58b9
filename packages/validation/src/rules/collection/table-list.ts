import { nearestOf, oneOf } from "@underchassis/source-text";
import type { CollectionRule, FiledComplaint } from "../../model/rule.ts";

const PATH = "datasets/tables/tables.json";

/** The description of tables describes what there is. */
export const tableList: CollectionRule = {
  code: "UC-608",
  name: "table-list",
  scope: "collection",
  severity: "error",
  title:
    "Every table that tables.json describes is there, its key is among its columns, its lists are there, and no two tables share a name",
  why: "A description without its table promises figures that nobody has.",
  bad: '"file": "dial-cord.csv" without such a file',
  good: '"file": "dial-cords.csv" beside datasets/tables/dial-cords.csv',
  check(collection) {
    const { descriptions } = collection;
    if (descriptions === undefined) return [];
    const names = new Set<string>();
    const tables = collection.files("table").map((path) => path.slice("datasets/tables/".length));
    return descriptions.tables.flatMap(({ file, key, columns }, index): FiledComplaint[] => {
      const at = { path: ["tables", index, "file"] };
      const name = file.slice(file.lastIndexOf("/") + 1);
      if (names.has(name)) return [{ file: PATH, at, message: `another table is called "${name}"`, received: file }];
      names.add(name);
      if (!collection.has(`datasets/tables/${file}`))
        return [{ file: PATH, at, message: "there is no such table", received: file, nearest: nearestOf(file, tables) }];
      const known = columns.map((column) => column.name);
      const lists = columns.flatMap(({ among }, place): FiledComplaint[] =>
        typeof among !== "string" || Object.hasOwn(descriptions.lists, among)
          ? []
          : [
              {
                file: PATH,
                at: { path: ["tables", index, "columns", place, "among"] },
                message: `there is no list "${among}"`,
                received: among,
                expected: `${oneOf(Object.keys(descriptions.lists))}, or a list of choices`,
                nearest: nearestOf(among, Object.keys(descriptions.lists)),
              },
            ],
      );
      const keys = key.flatMap((column, place): FiledComplaint[] =>
        known.includes(column)
          ? []
          : [
              {
                file: PATH,
                at: { path: ["tables", index, "key", place] },
                message: `the key names no column of the table`,
                received: column,
                expected: known.join(", "),
                nearest: nearestOf(column, known),
              },
            ],
      );
      return [...keys, ...lists];
    });
  },
};

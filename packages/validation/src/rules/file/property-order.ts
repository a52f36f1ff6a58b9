import type { FileRule } from "../../model/rule.ts";
import { misplacedProperties } from "../../shared/schemaOrder.ts";

/** Properties stand in the schema's order. */
export const propertyOrder: FileRule = {
  code: "UC-504",
  name: "property-order",
  scope: "file",
  of: "record",
  severity: "error",
  title: "Properties stand in the order in which the schema lists them",
  why: "Records of one kind then read alike, and comparisons show what changed, not what moved.",
  bad: '{ "title": "B+", "id": "hum" }',
  good: '{ "id": "hum", "title": "B+" }',
  fixable: true,
  check: ({ kind, value, violations, survey }) =>
    !survey.misplaced || violations.length > 0
      ? []
      : misplacedProperties(kind, value).map(({ path, before }) => ({
          at: { path, part: "key" },
          message: `"${String(path.at(-1))}" stands behind "${before}"`,
          expected: `it before "${before}", as in the schema`,
        })),
};

import type { CollectionRule } from "../../model/rule.ts";
import { dangling } from "../../shared/dangling.ts";

/** Every source that a record or table names stands in datasets/sources.csv. */
export const sourceKnown: CollectionRule = {
  code: "UC-601",
  name: "source-known",
  scope: "collection",
  severity: "error",
  title: "Every source that a record or table names stands in datasets/sources.csv",
  why: "A figure is worth what its source is worth.",
  bad: '"source": "rc30"',
  good: '"source": "rc-30"',
  check: (collection) =>
    dangling(collection, "source", (id) => `no source is called "${id}"`, "an id of datasets/sources.csv; add a row for a new source"),
};

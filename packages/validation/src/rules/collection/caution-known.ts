import type { CollectionRule } from "../../model/rule.ts";
import { dangling } from "../../shared/dangling.ts";

/** Every caution that a record names exists. */
export const cautionKnown: CollectionRule = {
  code: "UC-602",
  name: "caution-known",
  scope: "collection",
  severity: "error",
  title: "Every caution that a record names exists",
  why: "A caution that is not there is printed nowhere, and somebody may be hurt.",
  bad: '"cautions": ["high-voltage"]',
  good: '"cautions": ["high-voltage-stored-charge"]',
  check: (collection) => dangling(collection, "caution", (id) => `no caution is called "${id}"`, "the id of a file in datasets/cautions"),
};

import type { CollectionRule } from "../../model/rule.ts";
import { dangling } from "../../shared/dangling.ts";

/** Every template that a caution or rule of thumb names exists. */
export const templateKnown: CollectionRule = {
  code: "UC-611",
  name: "template-known",
  scope: "collection",
  severity: "error",
  title: "Every stage template that a caution or rule of thumb names exists",
  why: "A caution that is tied to a template of another name is printed nowhere.",
  bad: '"templates": ["keying-cathod"]',
  good: '"templates": ["keying-cathode"]',
  check: (collection) =>
    dangling(collection, "stage", (id) => `no stage template is called "${id}"`, "the id of a file in datasets/stages"),
};

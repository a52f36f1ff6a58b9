import type { CollectionRule } from "../../model/rule.ts";
import { dangling } from "../../shared/dangling.ts";

/** Every role that a failure note or rule names is a role of some template. */
export const roleKnown: CollectionRule = {
  code: "UC-605",
  name: "role-known",
  scope: "collection",
  severity: "error",
  title: "Every role that a failure note or rule names is a role of some template",
  why: "A note about a role that no stage has is never brought up.",
  bad: '"roles": ["couplingCap"]',
  good: '"roles": ["couplingCapacitor"]',
  check: (collection) => dangling(collection, "role", (id) => `no template has the role "${id}"`, "a role of a file in datasets/stages"),
};

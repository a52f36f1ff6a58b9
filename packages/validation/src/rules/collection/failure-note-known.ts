import type { CollectionRule } from "../../model/rule.ts";
import { dangling } from "../../shared/dangling.ts";

/** Every failure note that a template names exists. */
export const failureNoteKnown: CollectionRule = {
  code: "UC-603",
  name: "failure-note-known",
  scope: "collection",
  severity: "error",
  title: "Every failure note that a template names exists",
  why: "The search for suspects takes its faults from the notes.",
  bad: '"failureNotes": ["filter-dry"]',
  good: '"failureNotes": ["filter-dried-out"]',
  check: (collection) =>
    dangling(collection, "failure-note", (id) => `no failure note is called "${id}"`, "the id of a file in datasets/failure-notes"),
};

import type { CollectionRule } from "../../model/rule.ts";
import { dangling } from "../../shared/dangling.ts";

/** Every tube or rectifier type that a template names is in the dataset, under one of its names. */
export const deviceKnown: CollectionRule = {
  code: "UC-604",
  name: "device-known",
  scope: "collection",
  severity: "error",
  title: "Every tube or rectifier type that a template names is in the dataset, under one of its names",
  why: "Without its record a tube has neither limits nor curves.",
  bad: '"type": "6V6-GT"',
  good: '"type": "6V6GT"',
  check: (collection) =>
    dangling(
      collection,
      "tube",
      (id) => `no tube or diode is called "${id}"`,
      "a name of a file in datasets/tubes, or a class of datasets/tables/diodes.csv",
    ),
};

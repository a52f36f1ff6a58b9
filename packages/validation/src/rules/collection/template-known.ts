import { nearestOf } from "@underchassis/source-text";
import type { CollectionRule, FiledComplaint } from "../../model/rule.ts";
import { dangling } from "../../shared/dangling.ts";

const EXPECTED = "the id of a file in datasets/stages";
const message = (id: string): string => `no stage template is called "${id}"`;

/** Every template that a caution or rule of thumb names exists. */
export const templateKnown: CollectionRule = {
  code: "UC-611",
  name: "template-known",
  scope: "collection",
  severity: "error",
  title: "Every stage template that a caution, a rule of thumb or an example's folder names exists",
  why: "A caution that is tied to a template of another name is printed nowhere.",
  bad: '"templates": ["keying-cathod"]',
  good: '"templates": ["keying-cathode"]',
  check(collection) {
    const known = collection.definitions("stage");
    // An example lies in a folder of its template's name.
    const astray = collection.files("example-record").flatMap((file): FiledComplaint[] => {
      const id = file.split("/").at(-2) ?? "";
      return known.has(id) ? [] : [{ file, message: message(id), received: id, expected: EXPECTED, nearest: nearestOf(id, known.keys()) }];
    });
    return [...dangling(collection, "stage", message, EXPECTED), ...astray];
  },
};

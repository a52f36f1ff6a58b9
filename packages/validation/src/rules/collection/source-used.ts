import type { CollectionRule, FiledComplaint } from "../../model/rule.ts";

const PATH = "datasets/sources.csv";

/** Every source is used. */
export const sourceUsed: CollectionRule = {
  code: "UC-607",
  name: "source-used",
  scope: "collection",
  severity: "warning",
  title: "Every source of the list is named somewhere",
  why: "A list of works that nothing rests on lends weight to nothing.",
  bad: "a row that no record names",
  good: "a row that a template's figure names",
  check(collection) {
    if (collection.incomplete || !collection.has(PATH)) return [];
    const used = collection.references("source");
    return collection.recall(PATH).ids.flatMap(({ id, at }): FiledComplaint[] =>
      used.has(id) || collection.namedInCode(id)
        ? []
        : [
            {
              file: PATH,
              at,
              message: `nothing rests on the source "${id}"`,
              received: id,
              help: "name it where its figures stand, or take the row out",
            },
          ],
    );
  },
};

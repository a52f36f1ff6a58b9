import type { CollectionRule, FiledComplaint } from "../../model/rule.ts";

/** Example jobs can be graded. */
export const jobReadable: CollectionRule = {
  code: "UC-610",
  name: "job-readable",
  scope: "collection",
  severity: "error",
  title: "Every job of the datasets can be read, with its tables, against the templates that it names",
  why: "The jobs are what people copy.",
  bad: '"stages": [{ "id": "supply", "template": "suply-bridge" }]',
  good: '"stages": [{ "id": "supply", "template": "supply-bridge" }]',
  check: (collection) =>
    collection.files("job").flatMap((path) =>
      collection
        .jobProblems(path)
        .flatMap(({ severity, file, line, column, length = 1, message, expected, received, help, nearest }): FiledComplaint[] =>
          severity === "warning"
            ? []
            : [
                {
                  file,
                  ...(line === undefined || column === undefined ? {} : { at: { line, column, length } }),
                  message,
                  ...(expected === undefined ? {} : { expected }),
                  ...(received === undefined ? {} : { received }),
                  ...(help === undefined ? {} : { help }),
                  ...(nearest === undefined ? {} : { nearest }),
                },
              ],
        ),
    ),
};

import type { BytesRule } from "../../model/rule.ts";

/** Contributions are plain files. */
export const symbolicLink: BytesRule = {
  code: "UC-101",
  name: "symbolic-link",
  scope: "bytes",
  severity: "error",
  title: "Every file is a plain file",
  why: "A link may point anywhere on the machine that checks the contribution.",
  bad: "datasets/tubes/6x4.json -> ../../secret.json",
  good: "datasets/tubes/6x4.json",
  check: ({ link }) =>
    link ? [{ message: "the file is a symbolic link", expected: "a plain file", help: "put the content itself there", rank: -1 }] : [],
};

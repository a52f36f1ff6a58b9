import type { BytesRule } from "../../model/rule.ts";

const PLAIN = /^[a-z0-9-]+(\.[a-z]+)?$/;

/** File and folder names are plain on every system. */
export const fileNamePlain: BytesRule = {
  code: "UC-103",
  name: "file-name-plain",
  scope: "bytes",
  severity: "error",
  title: "Names of files and folders are small letters, digits and hyphens",
  why: "Capitals, blanks and dots (.., names with two endings) mean different files on different systems, or lead out of the folder.",
  bad: "datasets/tubes/6X4 (copy).json",
  good: "datasets/tubes/6x4.json",
  check({ path }) {
    const wrong = path.split("/").find((name) => !PLAIN.test(name));
    return wrong === undefined
      ? []
      : [{ message: `the name "${wrong}" is not plain`, received: wrong, expected: "small letters, digits and hyphens, one ending" }];
  },
};

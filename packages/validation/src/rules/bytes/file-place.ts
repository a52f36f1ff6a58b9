import { nearestOf, oneOf } from "@underchassis/source-text";
import { KINDS } from "../../model/fileKind.ts";
import type { BytesRule } from "../../model/rule.ts";

const FOLDERS = [...new Set(KINDS.map(({ words }) => words.split("/")[1] ?? "").filter((name) => !name.includes(".")))];

/** Files lie where their kind lies. */
export const filePlace: BytesRule = {
  code: "UC-102",
  name: "file-place",
  scope: "bytes",
  severity: "error",
  title: "Every file below datasets/ is of a kind that has its place there",
  why: "A file that nothing reads helps nobody, and its author believes that it does.",
  bad: "datasets/tube/6x4.json",
  good: "datasets/tubes/6x4.json",
  check({ path, kind, link }) {
    if (kind !== undefined || link) return [];
    const [, folder = "", ...rest] = path.split("/");
    const near = rest.length === 0 || FOLDERS.includes(folder) ? undefined : nearestOf(folder, FOLDERS);
    // In a folder that there is, what lies in it is of use; else all that there may be.
    const here = KINDS.filter(({ words }) => words.startsWith(`datasets/${folder}/`));
    return [
      {
        message: "no kind of file lies here",
        received: path,
        expected:
          here.length > 0 ? oneOf(here.map(({ words }) => words)) : KINDS.map(({ words }) => words.slice("datasets/".length)).join(", "),
        nearest: near === undefined ? undefined : `datasets/${near}/${rest.join("/")}`,
      },
    ];
  },
};

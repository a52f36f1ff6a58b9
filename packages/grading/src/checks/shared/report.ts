import type { Check, Finding, Life, Part } from "../../model/index.ts";
import { subject } from "./lives.ts";

/** What a check says beyond who asked and about what. Figures, cautions and sources have defaults. */
export type Said = Pick<Finding, "severity" | "title" | "found" | "shouldBe" | "why" | "action"> &
  Partial<Pick<Finding, "figures" | "cautions" | "sources" | "order" | "holds" | "condition" | "point" | "stage" | "location">>;

/** A finding of a check: its own sources, and its cautions unless there is nothing to do. */
export function report(check: Check, life: Life, part: Part | undefined, said: Said): Finding {
  return {
    check: check.id,
    life,
    ...(part === undefined ? {} : subject(part)),
    figures: [],
    cautions: said.severity === "good" ? [] : check.cautions,
    sources: check.sources,
    ...said,
  };
}

/** A finding that a part was looked at and found right. */
export function good(
  check: Check,
  life: Life,
  part: Part | undefined,
  said: Pick<Said, "title" | "found" | "shouldBe" | "why"> & Partial<Said>,
): Finding {
  return report(check, life, part, { action: "Nothing to do.", ...said, severity: "good" });
}

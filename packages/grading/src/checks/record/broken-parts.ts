import type { Check, Finding, Part } from "../../model/index.ts";
import { judgedLives } from "../shared/lives.ts";
import { report } from "../shared/report.ts";

type Fault = "open" | "shorted" | "dead" | "gassy" | "weak";

/** What each condition that a measurement can report means for the next step. */
const MEANING: Record<Fault, { word: string; why: string; severity: Finding["severity"]; holds: NonNullable<Finding["holds"]> }> = {
  open: { word: "is open", why: "What it feeds is dead, or floats where nobody expects it.", severity: "replace", holds: "full-line" },
  shorted: { word: "is shorted", why: "What feeds it burns: rectifier, winding, resistor.", severity: "danger", holds: "current-limited" },
  dead: {
    word: "is dead",
    why: "The stage does not work, and its supply rises where the tube should draw.",
    severity: "replace",
    holds: "full-line",
  },
  gassy: {
    word: "is gassy",
    why: "Grid current takes its bias away; it runs hot and takes its resistors along.",
    severity: "replace",
    holds: "full-line",
  },
  weak: { word: "is weak", why: "It works for a while yet; voltages around it lie off.", severity: "watch", holds: "service" },
};

/** Parts that a measurement found broken and that still stand in the chassis. */
export const brokenParts: Check = {
  id: "broken-parts",
  area: "record",
  title: "Parts found broken",
  question: "Is a part that was found open, shorted, dead or gassy still in its place?",
  needs: "the condition of measured parts",
  sources: ["common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      life === "planned" ? [] : [...model.parts.values()].flatMap((part): Finding[] => judge(this, part)),
    );
  },
};

function judge(check: Check, part: Part): Finding[] {
  const standing = part.change === "replaced" ? part.fittedMeasured : (part.fittedMeasured ?? part.measured);
  const condition = standing?.condition;
  if (part.change === "removed" || condition === undefined || !isFault(condition)) return [];
  const { word, why, severity, holds } = MEANING[condition];
  return [
    report(check, "restored", part, {
      severity,
      title: `${part.name} ${word}`,
      found: `${part.title}: ${standing?.asWritten ?? condition}`,
      shouldBe: part.asWritten.marked ?? "good",
      why,
      action:
        condition === "weak"
          ? "Note it in the record; change it when the readings around it leave their windows."
          : "Change it, find what broke it, and write down what was fitted.",
      ...(severity === "watch" ? { cautions: [] } : { holds }),
      ...(condition === "weak"
        ? {}
        : { order: [{ what: `${part.kind} ${part.asWritten.marked ?? ""}`.trim(), quantity: 1, for: part.name, why: word }] }),
    }),
  ];
}

function isFault(condition: string): condition is Fault {
  return condition in MEANING;
}

import type { ChassisModel, Check, Finding, Life } from "../../model/index.ts";
import { atLeast } from "../shared/figure.ts";
import { allIn, livesTouching, type Placed } from "../shared/layout.ts";
import { type LineSide, lineDuty, lineSide, nominalVolts } from "../shared/lineSide.ts";
import { good, report, type Said } from "../shared/report.ts";
import { farads, volts } from "../shared/words.ts";

/** IEC 60384-14: class Y4 is for lines below this. */
const Y4_BELOW_VOLTS = 150;

type Duty = "line-to-chassis" | "across-line";

/** Capacitors that the line stands across: only parts of the interference-suppression classes may. */
export const lineCapacitorClass: Check = {
  id: "line-capacitor-class",
  area: "line",
  title: "Class of line capacitors",
  question: "Is every capacitor from the line to the chassis of class Y, and every one across the line of class X or Y?",
  needs: "what is marked on the capacitors at the line, and the points between which they lie",
  sources: ["iec-60384-14", "common-practice"],
  cautions: ["line-wiring-licensed", "high-voltage-stored-charge"],
  run(model) {
    return livesTouching(model, "capacitor").flatMap((life) => {
      const side = lineSide(model, life);
      return allIn(model, life, "capacitor").flatMap((placed): Finding[] => {
        const duty = lineDuty(placed, side);
        return duty === undefined || (life === "planned" && placed.part.change !== "planned")
          ? []
          : [judge(model, life, placed, duty, side)];
      });
    });
  },
};

function judge(model: ChassisModel, life: Life, { part, state }: Placed, duty: Duty, side: LineSide): Finding {
  const { safetyClass, ratedVolts, dielectric } = state;
  const toChassis = duty === "line-to-chassis";
  // The capacitor that couples the chassis of a transformerless set to B- is too large for most of class Y.
  const toNegative = toChassis && model.isolation === "transformerless" && !Object.values(state.pins).some((point) => side.hot.has(point));
  const where = toChassis ? "from the line to the chassis" : "across the line";
  const value = state.marking?.value ?? state.main?.value ?? 0;
  const wanted = toChassis ? `class Y1 or Y2, ${toNegative ? farads(value) : "4.7 nF at most"}` : `class X1 or X2 (or Y), ${farads(value)}`;
  const shouldBe = `${wanted}, at least ${volts(nominalVolts(model))} AC`;
  const found = `${part.asWritten.fitted ?? part.asWritten.marked ?? "unmarked"} ${where}`;
  const why = toChassis
    ? "An ordinary part, whatever its DC volts, may short and put the line on metal that hands touch."
    : "An ordinary part here fails short, with the whole house circuit behind it: fire.";
  const order = [
    {
      what: `capacitor ${toChassis && !toNegative ? "2.2 nF Y2" : `${farads(value)} ${toChassis ? "Y2 (or X1 where no Y part of that value exists)" : "X2"}`} ${model.line.highVolts > 150 ? 300 : 250} V AC`,
      quantity: 1,
      for: part.name,
      why: `ordinary capacitor ${where}`,
    },
  ];
  const bad = (said: Pick<Said, "severity" | "title"> & Partial<Said>) =>
    report(lineCapacitorClass, life, part, { found, shouldBe, why, order, action: `Unplug, discharge, and fit ${wanted}.`, ...said });
  if (safetyClass === undefined) {
    const paper = dielectric === "paper" || dielectric === "oil";
    return bad(
      paper
        ? { severity: "danger", title: `${part.name} is a paper capacitor ${where}`, holds: "current-limited" }
        : { severity: "replace", title: `${part.name} ${where} has no class`, holds: "full-line" },
    );
  }
  if (toChassis && safetyClass.startsWith("X")) {
    return toNegative
      ? bad({
          severity: "watch",
          title: `${part.name} to the chassis is of class ${safetyClass}`,
          why: "Practice differs: class Y is the rule for metal that is touched; parts of this value are mostly class X.",
          action:
            "Keep the resistor across it; make sure that hands cannot reach the chassis; fit class Y if one of this value can be had.",
        })
      : bad({ severity: "replace", title: `${part.name} to the chassis is only of class ${safetyClass}`, holds: "full-line" });
  }
  if (toChassis && safetyClass === "Y4" && model.line.highVolts >= Y4_BELOW_VOLTS) {
    return bad({
      severity: "replace",
      title: `${part.name} is class Y4 on a ${volts(model.line.designVolts)} line`,
      holds: "full-line",
      figures: [
        atLeast(Y4_BELOW_VOLTS, model.line.highVolts, {
          label: "highest line of class Y4",
          unit: "V",
          how: "class limit against the highest line",
          source: "iec-60384-14",
        }),
      ],
    });
  }
  if (ratedVolts !== undefined && ratedVolts < nominalVolts(model)) {
    return bad({
      severity: "replace",
      title: `${part.name} is not rated for the line`,
      holds: "full-line",
      figures: [
        atLeast(ratedVolts, nominalVolts(model), {
          label: `AC rating of ${part.name}`,
          unit: "V",
          how: "marking against the line as it is; ratings of line parts allow for its swing",
          source: "iec-60384-14",
        }),
      ],
    });
  }
  return good(lineCapacitorClass, life, part, {
    title: `${part.name} is of class ${safetyClass}`,
    found,
    shouldBe,
    why: `A part made to stand ${where}.`,
  });
}

import { nearestPreferred } from "@underchassis/calc";
import type { ChassisModel, Check, Figure, Finding, Life, Part } from "../../model/index.ts";
import { figure } from "../shared/figure.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { outputAmps } from "../shared/rectifierSide.ts";
import { report } from "../shared/report.ts";
import { nextRating, ohms, RESISTOR_WATTS, volts, watts } from "../shared/words.ts";

/** What a silicon diode drops. silicon-diode-sheets. */
const SILICON_VOLTS = 1;
/** from-memory: what makers fit with silicon in such a place. */
const LEAST_OHMS = 22;

/** Selenium stacks still at work: what they drop, what ageing does, and what to put in their place. */
export const seleniumRectifier: Check = {
  id: "selenium-rectifier",
  area: "rectifiers",
  title: "Selenium rectifier",
  question: "Is a selenium rectifier still at work, and what would replace it?",
  needs: "the stack's rating (130 V 100 mA)",
  sources: ["selenium-text", "army-selenium-warning", "from-memory"],
  cautions: ["selenium-fumes", "high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "rectifier").flatMap(({ part, state }) =>
        state.device?.kind === "selenium" ? [judge(model, life, part, state.device.plates)] : [],
      ),
    );
  },
};

function judge(model: ChassisModel, life: Life, part: Part, plates: number): Finding {
  if (part.measured?.condition === "shorted" && part.change === "none") {
    return report(seleniumRectifier, life, part, {
      severity: "danger",
      title: `${part.name} is shorted`,
      found: "a shorted selenium stack",
      shouldBe: "a rectifier",
      why: "It passes alternating current into the filters, burns, and gives off poisonous fumes.",
      action: "Do not power it. Fit silicon with a series resistor; check filters and surge resistor.",
      holds: "current-limited",
    });
  }
  const drop = conductionDrop(model, life, part.id);
  const current = outputAmps(model, life, part)?.amps ?? 0;
  const figures: Figure[] =
    drop === undefined
      ? []
      : [
          figure(
            "drop of the stack while it conducts",
            drop,
            "V",
            `mean over the conducting part of the period, ${plates} plates, new; aged ones drop 10 to 25 V`,
            "from-memory",
          ),
        ];
  const value =
    drop === undefined || current === 0
      ? undefined
      : Math.max(LEAST_OHMS, nearestPreferred(Math.max(1, drop - SILICON_VOLTS) / current, "E12"));
  const rating = value === undefined ? 5 : nextRating(Math.max(5, 2 * (1.8 * current) ** 2 * value), RESISTOR_WATTS);
  const fix =
    value === undefined
      ? "silicon of 1000 V 1 A with a series resistor"
      : `silicon of 1000 V 1 A with ${ohms(value)}, ${watts(rating)}, in series`;
  return report(seleniumRectifier, life, part, {
    severity: "watch",
    title: `${part.name} is a selenium stack`,
    found: `${part.asWritten.fitted ?? part.asWritten.marked ?? "selenium"}${drop === undefined ? "" : `, about ${volts(drop)} when new`}`,
    shouldBe: "B+ as in the papers, and a stack that stays cool",
    figures,
    why: "With age its forward drop rises, B+ falls and it heats; when it fails it smokes. Practice differs: most change it, some leave one that works.",
    action: `Compare B+ with the papers. If it is low or the stack runs hot, fit ${fix}, and trim for the original B+ under load.`,
    order: [{ what: fix, quantity: 1, for: part.name, why: "selenium, if it is changed" }],
  });
}

/** Mean forward voltage while current flows: heat over mean current (reverse leakage is not modelled). */
function conductionDrop(model: ChassisModel, life: Life, part: string): number | undefined {
  const solved = model.solve({ life, condition: "operating", line: "actual" });
  if (!solved.ok) return undefined;
  const figures = solved.steady.elements.get(model.elementsOf(solved.compiled, part)[0] ?? "");
  return figures === undefined || Math.abs(figures.meanAmps) < 1e-6 ? undefined : figures.watts / Math.abs(figures.meanAmps);
}

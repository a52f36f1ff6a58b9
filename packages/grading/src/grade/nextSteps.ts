import { formatQuantity } from "@underchassis/calc";
import type { Report } from "@underchassis/dataset";
import type { Clearance } from "../clearance/clearance.ts";
import type { ChassisModel, ClearanceLevel, Finding } from "../model/index.ts";

type Step = Report["next"][number];

/** What is done at each step once nothing holds it. */
const BRING_UP: Record<Exclude<ClearanceLevel, "none">, { action: string; why: string; condition: string; cautions: string[] }> = {
  "current-limited": {
    action:
      "Bring it up through a current limiter (series lamp or current-limited variable supply), tubes out except rectifiers, one hand, clip leads only with the plug out",
    why: "A short that no measurement showed then lights the lamp and not the transformer.",
    condition: "tubes-out",
    cautions: ["first-power-limited", "high-voltage-stored-charge", "one-hand-rule"],
  },
  "full-line": {
    action:
      "Run it on the full line, all tubes in, and read the main points within the first minutes; switch off when one is outside its window",
    why: "Only the loaded chassis shows leakage, gas and wrong bias.",
    condition: "operating",
    cautions: ["high-voltage-stored-charge", "one-hand-rule", "hot-surfaces"],
  },
  service: {
    action:
      "Run it for some hours on the normal line, read the main points again, check the touch current with the plug both ways where it fits, complete the record, and hand it back with this report",
    why: "Parts that fail early do so in the first hours; the next person needs the record.",
    condition: "operating",
    cautions: ["hot-chassis-test", "line-wiring-licensed"],
  },
};

/**
 * What to do at the bench, in order: clear what holds the next step, worst first, then take the step that is open, with what the
 * meter should show there.
 */
export function nextSteps(model: ChassisModel, findings: readonly Finding[], clearance: Clearance): Step[] {
  const steps: Step[] = [];
  const said = new Set<string>();
  for (const hold of clearance.holds) {
    if (hold.step !== clearance.next) break;
    const finding = findings[hold.finding];
    if (finding === undefined || said.has(finding.action)) continue;
    said.add(finding.action);
    steps.push({
      action: `${finding.part ?? finding.point ?? finding.stage ?? ""}: ${finding.action}`.replace(/^: /, ""),
      why: finding.title,
      cautions: [...finding.cautions],
      step: hold.step,
    });
  }
  if (clearance.level !== "none") {
    const { action: usual, why, condition, cautions } = BRING_UP[clearance.level];
    // Heaters in series leave no tube to pull; dry rectifiers feed B+ whatever is pulled.
    const action =
      model.isolation === "transformerless" ? usual.replace("tubes out except rectifiers", "behind an isolation transformer") : usual;
    const expect = expectations(model, condition);
    steps.push({ action, why, ...(expect === "" ? {} : { expect }), cautions: [...cautions], step: clearance.level });
  }
  return steps;
}

/** The highest direct voltages of the chassis with their windows, in a line: what to look for first. */
function expectations(model: ChassisModel, condition: string): string {
  const situation = { life: "restored", condition, line: "actual" } as const;
  const points = new Set(
    model.stages
      .filter(({ template }) => template.family === "supply")
      .flatMap((stage) => Object.entries(stage.points).flatMap(([id, point]) => (/b-plus|bias|regulated|out/.test(id) ? [point] : []))),
  );
  points.delete(model.reference);
  return [...points]
    .flatMap((point) => {
      const prediction = model.predict(situation, { quantity: "dc-volts", at: point, to: model.reference });
      if (prediction === undefined || Math.abs(prediction.nominal) < 1) return [];
      return [
        `${point} ${formatQuantity(prediction.nominal, "voltage")} (${formatQuantity(prediction.low, "voltage")} to ${formatQuantity(prediction.high, "voltage")})`,
      ];
    })
    .slice(0, 6)
    .join(", ");
}

import type { ChassisModel, Check, Finding, Measured, Part } from "../../model/index.ts";
import { inPlace } from "../shared/inPlace.ts";
import { report } from "../shared/report.ts";
import { volts } from "../shared/words.ts";

/** How each measurement is made, in a few words. */
const HOW: Readonly<Record<string, string>> = {
  resistance: "resistance, one lead lifted",
  capacitance: "capacitance, one lead lifted",
  leakage: "leakage at the working voltage, not with an ohmmeter",
  esr: "equivalent series resistance",
  inductance: "inductance",
  dcr: "wire resistance",
  emission: "emission or transconductance",
  continuity: "contact resistance, closed, below 0.1 ohm",
  insulation: "insulation to the frame at 250 to 500 V",
};

/** What must be known before full line: what burns, bursts or shocks. The rest before the set is handed back. */
const CRITICAL_DUTY = /^(filter-|line-|across-line|decoupling)/;
const CRITICAL_MEASURE: ReadonlySet<string> = new Set(["capacitance", "leakage", "resistance", "continuity"]);
/** Instruments that not every bench has: asked for, holding nothing. */
const SPECIAL: ReadonlySet<string> = new Set(["emission", "esr", "inductance", "insulation"]);

interface Wanting {
  part: Part;
  fitted: boolean;
  missing: readonly string[];
}

/** Parts that their templates want measured and nobody has. */
export const unmeasuredParts: Check = {
  id: "unmeasured-parts",
  area: "record",
  title: "Parts still to be measured",
  question: "Which parts that should be measured before power has nobody measured?",
  needs: "stages with templates",
  sources: ["common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return model.stages.flatMap((stage) => {
      const wanting = partsOf(model, stage.id).flatMap((part) => wantingOf(part));
      const original = wanting.filter(({ fitted }) => !fitted);
      const critical = original.filter(isCritical);
      const plain = original.filter((entry) => !critical.includes(entry));
      const holding = plain.filter(({ missing }) => missing.some((kind) => !SPECIAL.has(kind)));
      const groups: [string, Wanting[], Finding["holds"] | undefined][] = [
        ["before full line", critical, "full-line"],
        ["before it is handed back", holding, "service"],
        ["where the bench has the instrument", plain.filter((entry) => !holding.includes(entry)), undefined],
        ["newly fitted", wanting.filter(({ fitted }) => fitted), undefined],
      ];
      return groups.flatMap(([when, group, holds]) =>
        group.length === 0 ? [] : [findingOf(this, stage.id, stage.title, when, group, holds)],
      );
    });
  },
};

const partsOf = (model: ChassisModel, stage: string): Part[] =>
  [...model.parts.values()].filter((part) => part.stage === stage && part.advice !== undefined);

function wantingOf(part: Part): Wanting[] {
  const place = inPlace(part, "restored");
  if (place === undefined || part.advice === undefined || !place.state.present) return [];
  const missing = part.advice.measure.filter((kind) => !isMeasured(part, kind, place.measured));
  // A new part from a known maker is measured for its value; how it ages is a matter for later.
  const asked = place.fitted ? missing.filter((kind) => kind === "capacitance" || kind === "resistance") : missing;
  return asked.length === 0 ? [] : [{ part, fitted: place.fitted, missing: asked }];
}

function isMeasured(part: Part, kind: string, measured: Measured | undefined): boolean {
  if (kind === "dcr" && part.lives.restored.windings?.some(({ ohmsFrom }) => ohmsFrom === "measurement") === true) return true;
  if (measured === undefined) return false;
  if (measured.condition === "shorted" || measured.condition === "open" || measured.condition === "dead") return true;
  switch (kind) {
    case "leakage":
      return measured.leakAmps !== undefined || measured.leakOhms !== undefined;
    case "esr":
      return measured.esrOhms !== undefined;
    case "dcr":
      return measured.dcrOhms !== undefined || (part.kind === "transformer" && measured.value !== undefined);
    case "emission":
      return measured.emission !== undefined || measured.condition !== undefined;
    case "insulation":
      return true; // any entry on the part carries it, as words
    default:
      return measured.value !== undefined;
  }
}

function isCritical({ part, missing }: Wanting): boolean {
  return (CRITICAL_DUTY.test(part.duty ?? "") || part.template === "line-input") && missing.some((kind) => CRITICAL_MEASURE.has(kind));
}

function findingOf(
  check: Check,
  stage: string,
  title: string,
  when: string,
  group: readonly Wanting[],
  holds: Finding["holds"] | undefined,
): Finding {
  const fitted = group[0]?.fitted === true;
  const lines = group.map(({ part, missing }) => `${part.name} (${missing.map((kind) => measureText(part, kind)).join("; ")})`);
  return report(check, "restored", undefined, {
    severity: "unmeasured",
    stage,
    title: `${title}: ${group.length} ${group.length === 1 ? "part" : "parts"} to measure, ${when}`,
    found: `not measured: ${group.map(({ part }) => part.name).join(", ")}`,
    shouldBe: "measured and written down",
    why: fitted
      ? "A new part misread or from the wrong bag is found in a minute before it is fitted, in an evening after."
      : "What nobody measured is taken at its marking here; old parts seldom are what they say.",
    action: `Measure ${lines.join(", ")}.`,
    cautions: fitted ? [] : check.cautions,
    ...(holds === undefined ? {} : { holds }),
  });
}

function measureText(part: Part, kind: string): string {
  const rated = part.lives.restored.ratedVolts;
  const text = HOW[kind] ?? kind;
  return kind === "leakage" && rated !== undefined ? `leakage at its working voltage, up to ${volts(rated)}, not with an ohmmeter` : text;
}

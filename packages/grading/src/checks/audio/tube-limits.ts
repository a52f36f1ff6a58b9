import type { Check, Figure, Finding, Life } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { lineWords, type TubeWork, tubesIn, workOf } from "../shared/tubes.ts";
import { percent, volts } from "../shared/words.ts";

/** common-practice: sets of the time ran up to a tenth above the tables; beyond that something is wrong. */
const TOLERATED = 1.1;

/** Voltages on every simulated tube against its limits, in every powered condition. */
export const tubeLimits: Check = {
  id: "tube-limits",
  area: "audio",
  title: "Tube voltages",
  question: "Do plate, screen and heater-cathode voltages stay within what each tube is made for?",
  needs: "the tube's limits; heater strings counted as lying at the chassis",
  sources: ["rc-30", "common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) => {
      const within: string[] = [];
      const findings = tubesIn(model, life).flatMap((tube): Finding[] => {
        const figures = worstFigures(workOf(model, life, tube));
        if (figures.length === 0) return [];
        const share = shareOf(figures);
        if (share > 1) return [beyond(this, life, tube.part, figures, share)];
        within.push(`${tube.part.name} ${percent(share)}`);
        return [];
      });
      if (within.length === 0) return findings;
      const summary = good(this, life, undefined, {
        title: `Voltages of ${within.length} ${within.length === 1 ? "tube are" : "tubes are"} within limits`,
        found: within.join(", "),
        shouldBe: "at most 100 % of the limit",
        why: "Plate, screen and heater-cathode voltage, each in its worst condition.",
      });
      return [...findings, summary];
    });
  },
};

const shareOf = (figures: readonly Figure[]): number =>
  Math.max(...figures.map(({ value, limit }) => (value ?? 0) / (limit ?? Number.POSITIVE_INFINITY)));

function worstFigures(all: readonly TubeWork[]): Figure[] {
  const limits = all[0]?.state.limits;
  if (limits === undefined) return [];
  const kinds: [string, number | undefined, (work: TubeWork) => number | undefined][] = [
    ["plate voltage", limits.plateVolts, ({ plateVolts }) => plateVolts],
    ["screen voltage", limits.screenVolts, ({ screenVolts }) => screenVolts],
    ["heater-cathode voltage", limits.heaterCathodeVolts, ({ cathodeVolts }) => Math.abs(cathodeVolts)],
  ];
  return kinds.flatMap(([label, limit, of]) => {
    const worst = all.flatMap((work) => {
      const value = of(work);
      return value === undefined ? [] : [{ value, work }];
    });
    const top = worst.reduce<(typeof worst)[number] | undefined>(
      (best, entry) => (best === undefined || entry.value > best.value ? entry : best),
      undefined,
    );
    if (limit === undefined || top === undefined) return [];
    const against = label.startsWith("heater") ? "cathode against chassis" : "against the cathode";
    return [
      atMost(top.value, limit, {
        label: `${label} of ${top.work.part.name}`,
        unit: "V",
        how: `mean, ${against}, ${top.work.condition}, ${lineWords(top.work.line)}`,
        source: limits.source,
      }),
    ];
  });
}

function beyond(check: Check, life: Life, part: TubeWork["part"], figures: readonly Figure[], share: number): Finding {
  const over = figures.filter(({ value, limit }) => value !== null && limit !== undefined && value > limit);
  const heater = over.some(({ label }) => label.startsWith("heater"));
  const far = share > TOLERATED || heater;
  return report(check, life, part, {
    severity: far ? "adjust" : "watch",
    title: `${part.name} has more voltage than its limits: ${percent(share)}`,
    found: over.map(({ label, value }) => `${label.replace(` of ${part.name}`, "")} ${volts(value ?? 0)}`).join(", "),
    shouldBe: over.map(({ label, limit }) => `${label.replace(` of ${part.name}`, "")} at most ${volts(limit ?? 0)}`).join(", "),
    figures,
    why: heater
      ? "The insulation between heater and cathode breaks down, and the fault goes on into the heater winding."
      : "Beyond the table the tube arcs or gasses sooner; makers did it, and tubes of today are no better.",
    action: heater
      ? "Check the cathode circuit and to what point the heater winding is tied."
      : "Check line voltage, winding voltages and loads in the record; then a type with a higher limit, or a dropping resistor.",
    ...(far ? { holds: heater ? ("full-line" as const) : ("service" as const) } : {}),
  });
}

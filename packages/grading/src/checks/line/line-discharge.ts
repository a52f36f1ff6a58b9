import type { ChassisModel, Check, Finding, Life } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { allIn, endsOf, livesTouching, type Placed, reach } from "../shared/layout.ts";
import { lineDuty, lineSide } from "../shared/lineSide.ts";
import { good, report } from "../shared/report.ts";
import { farads, ohms, volts } from "../shared/words.ts";

/** IEC 60335-1, 22.5: more than 0.1 uF across the plug must fall to 34 V within a second. */
const FREE_FARADS = 0.1e-6;
const LIMIT_VOLTS = 34;
const AFTER_SECONDS = 1;

/** What is left on the plug's blades after pulling it, with the switch open. */
export const lineDischarge: Check = {
  id: "line-discharge",
  area: "line",
  title: "Charge left at the plug",
  question: "Do the capacitors across the line discharge when the plug is pulled?",
  needs: "the capacitors and resistors across the line, and the switch",
  sources: ["iec-60335-1"],
  cautions: ["line-wiring-licensed"],
  run(model) {
    return livesTouching(model, "capacitor", "resistor", "switch").flatMap((life) => judge(model, life));
  },
};

function judge(model: ChassisModel, life: Life): Finding[] {
  const side = lineSide(model, life);
  const across = allIn(model, life, "capacitor", "resistor").filter((placed) => lineDuty(placed, side) === "across-line");
  // With the switch open only what lies on the plug's side of it is still there.
  const closed = ({ part }: Placed) =>
    part.kind === "fuse" || part.kind === "breaker" || part.kind === "thermistor" || part.kind === "inductor";
  const onPlug = new Set([...reach(model, life, model.line.hot, closed).keys(), ...reach(model, life, model.line.neutral, closed).keys()]);
  const onPlugSide = across.filter(({ state }) => endsOf(state)?.every((point) => onPlug.has(point)) === true);
  const capacitors = onPlugSide.filter(({ part }) => part.kind === "capacitor");
  const total = capacitors.reduce(
    (sum, { state }) => sum + (state.main === undefined ? 0 : state.main.value * (1 + state.main.tolerance.plus)),
    0,
  );
  if (total <= FREE_FARADS) return [];
  const hasPrimary = allIn(model, life, "transformer").some(({ state }) =>
    (state.windings ?? []).some(({ points }) => points.filter((point) => onPlug.has(point)).length >= 2),
  );
  const conductance = onPlugSide
    .filter(({ part }) => part.kind === "resistor")
    .reduce((sum, { state }) => sum + (state.main === undefined ? 0 : 1 / (state.main.value * (1 + state.main.tolerance.plus))), 0);
  const crest = Math.SQRT2 * model.line.highVolts;
  const left = hasPrimary ? 0 : crest * Math.exp((-AFTER_SECONDS * conductance) / total);
  const most = AFTER_SECONDS / (total * Math.log(crest / LIMIT_VOLTS));
  const names = capacitors.map(({ part }) => part.name).join(", ");
  const only = capacitors.length === 1 ? capacitors[0]?.part : undefined;
  const figures = [
    atMost(left, LIMIT_VOLTS, {
      label: "voltage at the plug one second after pulling it",
      unit: "V",
      how: `V exp(-t / R C) from the crest of the highest line, ${farads(total)} with its tolerance, switch open`,
      source: "iec-60335-1",
    }),
  ];
  const base = {
    found: `${names}: ${farads(total)} at most, ${conductance > 0 ? `${ohms(1 / conductance)} across` : hasPrimary ? "a primary across" : "nothing across"}`,
    shouldBe: `at most ${volts(LIMIT_VOLTS)} after ${AFTER_SECONDS} s`,
    figures,
  };
  if (left <= LIMIT_VOLTS)
    return [
      good(lineDischarge, life, only, {
        ...base,
        title: "The plug is dead a second after pulling it",
        why: "The capacitors discharge through what lies across them.",
      }),
    ];
  return [
    report(lineDischarge, life, only, {
      ...base,
      severity: "adjust",
      title: `${names} keep the plug live after pulling it`,
      why: "The blades of a pulled plug give a shock.",
      action: `Fit ${ohms(most)} or less across the line on the plug's side of the switch, as two resistors in series or one rated for at least 350 V RMS.`,
      holds: "service",
      order: [
        { what: `two resistors ${ohms(most / 2.2)}, 0.5 W, 350 V`, quantity: 1, for: names, why: "discharge of the line capacitors" },
      ],
    }),
  ];
}

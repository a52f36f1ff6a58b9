import type { ChassisModel, Check, Figure, Finding, Life, Part, PartState } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { report } from "../shared/report.ts";
import { type OpenSwitch, openSwitches } from "../shared/standby.ts";
import { stresses, worst } from "../shared/stress.ts";
import { farads, joules, nextRating, ohms, percent, RESISTOR_WATTS, volts, watts } from "../shared/words.ts";

/** from-memory: a small wirewound resistor stands about five times its rating for five seconds. */
const PULSE_WATTS = 5;
const PULSE_SECONDS = 5;
/** IEC 60950-1: above this, direct voltage is hazardous. */
const LIVE_VOLTS = 60;
/** common-practice: rated for twice its steady heat. */
const MARGIN = 2;

/** A resistor across an open high-voltage switch: its heat in standby, its pulses, and what stays live behind the switch. */
export const standbyBypassResistor: Check = {
  id: "standby-bypass-resistor",
  area: "standby",
  title: "Resistor across the standby switch",
  question: "Does the resistor across the open switch stand standby and switching, and what does it leave live?",
  needs: "a switch that is open in a powered condition, and a resistor across it",
  sources: ["standby-text", "common-practice"],
  cautions: ["standby-live", "high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      openSwitches(model, life).flatMap((open) => open.bypass.flatMap(({ part, state }) => judge(this, model, life, open, part, state))),
    );
  },
};

function judge(check: Check, model: ChassisModel, life: Life, open: OpenSwitch, part: Part, state: PartState): Finding[] {
  const touched = part.change === "planned" || open.part.change === "planned";
  const resistance = state.main?.value;
  if (resistance === undefined || (life === "planned" && !touched)) return [];
  const steady = worst(
    (stresses(model, life).get(part.id) ?? []).filter(({ condition }) => condition === open.condition.id),
    "watts",
  );
  const steadyWatts = steady?.watts ?? (open.supplyVolts - open.loadVolts) ** 2 / resistance;
  const figures: Figure[] = [
    state.ratedWatts === undefined
      ? figure(`dissipation of ${part.name} in standby`, steadyWatts, "W", steadyHow(open))
      : atMost(steadyWatts, state.ratedWatts, {
          label: `dissipation of ${part.name} in standby`,
          unit: "W",
          how: steadyHow(open),
          source: state.ratingsFrom === "typical" ? "typical" : "marking",
        }),
    ...pulses(open, part, resistance, state.ratedWatts),
    figure(`voltage left at ${open.load}`, open.loadVolts, "V", `mean, ${open.part.name} open, ${open.condition.title}, highest line`),
  ];
  return [heat(check, life, open, part, state, steadyWatts, figures), ...live(check, life, open, part, figures)];
}

const steadyHow = (open: OpenSwitch): string => `mean of v * i, ${open.part.name} open, ${open.condition.title}, highest line`;

/** What it takes once: filling the load side's capacitors at first power, and the whole voltage on a discharged or shorted load side. */
function pulses(open: OpenSwitch, part: Part, resistance: number, ratedWatts: number | undefined): Figure[] {
  const peakWatts = open.supplyVolts ** 2 / resistance;
  const energy = 0.5 * open.loadFarads * open.loadVolts ** 2;
  const limit = ratedWatts === undefined ? undefined : PULSE_WATTS * PULSE_SECONDS * ratedWatts;
  const label = `energy in ${part.name} at first power`;
  const how = `C V^2 / 2 of ${farads(open.loadFarads)} behind the switch charged to ${volts(open.loadVolts)}; limit 5 times the rating for 5 s`;
  return [
    figure(
      `peak dissipation of ${part.name}`,
      peakWatts,
      "W",
      `(${volts(open.supplyVolts)})^2 / ${ohms(resistance)}: load side empty, or shorted`,
    ),
    limit === undefined ? figure(label, energy, "J", how) : atMost(energy, limit, { label, unit: "J", how, source: "from-memory" }),
    figure(
      "energy that closing the switch equalises",
      0.5 * series(open.supplyFarads, open.loadFarads) * (open.supplyVolts - open.loadVolts) ** 2,
      "J",
      `C V^2 / 2 with both sides' capacitors in series and ${volts(open.supplyVolts - open.loadVolts)} between them; it goes into the contacts and capacitors, not into ${part.name}`,
    ),
  ];
}

const series = (one: number, other: number): number => (one > 0 && other > 0 ? (one * other) / (one + other) : 0);

function heat(check: Check, life: Life, open: OpenSwitch, part: Part, state: PartState, steadyWatts: number, figures: Figure[]): Finding {
  const resistance = state.marking?.value ?? state.main?.value ?? 0;
  const rated = state.ratedWatts;
  const wanted = nextRating(MARGIN * steadyWatts, RESISTOR_WATTS);
  const excessive = steadyWatts > RESISTOR_WATTS[4];
  const advice = excessive
    ? `A resistor of this kind is a trickle: 47 to 220 kohm. At ${ohms(100e3)} it bears at most ${watts(open.supplyVolts ** 2 / 100e3)}. If ${ohms(resistance)} is really wanted it needs ${wanted} W.`
    : `Fit ${ohms(resistance)} ${wanted} W.`;
  const common = {
    condition: open.condition.id,
    found: `${watts(steadyWatts)} in ${ohms(resistance)}${rated === undefined ? ", rating not known" : ` ${watts(rated)}`}`,
    shouldBe: `rated at least ${watts(MARGIN * steadyWatts)}`,
    figures,
  };
  if (rated === undefined) {
    return report(check, life, part, {
      ...common,
      severity: "unmeasured",
      title: `Wattage of ${part.name} across ${open.part.name} is not known`,
      why: "It is on for as long as the set stands by.",
      action: `Read its rating; it needs ${watts(MARGIN * steadyWatts)}.`,
      cautions: [],
      holds: "full-line",
    });
  }
  const share = steadyWatts / rated;
  if (share <= 1 / MARGIN) {
    return report(check, life, part, {
      ...common,
      severity: "good",
      title: `${part.name} stands standby at ${percent(share)} of its rating`,
      why: "Half its rating or less, switch open, highest line.",
      action: "Nothing to do.",
      cautions: [],
    });
  }
  const over = share > 1;
  return report(check, life, part, {
    ...common,
    severity: over ? (share > 2 ? "danger" : "replace") : "watch",
    title: over
      ? `${part.name} burns in standby: ${watts(steadyWatts)} in a ${watts(rated)} part`
      : `${part.name} runs above half its rating in standby`,
    why: "With the switch open it stands between the supply and everything that the load side still draws, for as long as the set stands by.",
    action: advice,
    cautions: [...check.cautions, "hot-surfaces"],
    order: [
      {
        what: excessive ? "resistor 100 kohm 5 W" : `resistor ${ohms(resistance)} ${wanted} W`,
        quantity: 1,
        for: part.name,
        why: "across the standby switch",
      },
    ],
    ...(over ? { holds: "full-line" as const } : {}),
  });
}

function live(check: Check, life: Life, open: OpenSwitch, part: Part, figures: Figure[]): Finding[] {
  if (open.loadVolts <= LIVE_VOLTS) return [];
  return [
    report(check, life, open.part, {
      severity: "watch",
      condition: open.condition.id,
      point: open.load,
      title: `${open.load} stays live in standby: ${volts(open.loadVolts)}`,
      found: `${volts(open.loadVolts)} of ${volts(open.supplyVolts)} through ${part.name}`,
      shouldBe: "no one takes an open switch for a dead circuit",
      figures: figures.filter(({ label }) => label.startsWith("voltage left")),
      why: `With ${open.part.name} open the load side looks off and is not: it holds ${joules(0.5 * open.loadFarads * open.loadVolts ** 2)} in ${farads(open.loadFarads)} and is fed again at once.`,
      action: `Put a label at ${open.part.name} and at ${open.load}: live in standby. Pull the plug, discharge and meter before touching it.`,
    }),
  ];
}

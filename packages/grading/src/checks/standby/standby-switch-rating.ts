import type { ChassisModel, Check, Figure, Finding, Life, PartState } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { allIn, endsOf } from "../shared/layout.ts";
import { judgedLives } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { type OpenSwitch, openSwitches } from "../shared/standby.ts";
import { amps, joules, volts } from "../shared/words.ts";

/** from-memory: resistance in the way when a filter charges another through a switch and no ESR is known: contact, leads, two capacitors. */
const STRAY_OHMS = 1;

/** A capacitor below this on the load side is a bypass: charging it is a tick, not an inrush. common-practice. */
const FILTER_FARADS = 1e-6;

/** A switch that breaks direct high voltage: what stands across it, and what rushes through it when it closes. */
export const standbySwitchRating: Check = {
  id: "standby-switch-rating",
  area: "standby",
  title: "Standby switch rating",
  question: "Is the switch made for the direct voltage that it breaks and the current that it makes?",
  needs: "volts and amperes marked on the switch",
  sources: ["standby-text", "common-practice"],
  cautions: ["standby-live", "high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      openSwitches(model, life).flatMap((open) =>
        life === "planned" && open.part.change !== "planned" ? [] : judge(this, model, life, open),
      ),
    );
  },
};

function judge(check: Check, model: ChassisModel, life: Life, open: OpenSwitch): Finding[] {
  const { part, state } = open;
  // With no bypass, or on its first closing, the load side is empty.
  const step = open.bypass.length === 0 ? open.supplyVolts : open.supplyVolts - open.loadVolts;
  const inTheWay = esrAt(model, life, open.supply) + esrAt(model, life, open.load) + STRAY_OHMS;
  const inrush = open.supplyFarads >= FILTER_FARADS && open.loadFarads >= FILTER_FARADS ? step / inTheWay : 0;
  const figures: Figure[] = [
    state.ratedVolts === undefined
      ? figure(`voltage across ${part.name} open`, open.supplyVolts, "V", voltsHow(open))
      : atMost(open.supplyVolts, state.ratedVolts, {
          label: `voltage across ${part.name} open`,
          unit: "V",
          how: voltsHow(open),
          source: state.ratingsFrom === "typical" ? "typical" : "marking",
        }),
    figure(
      "current at closing",
      inrush,
      "A",
      inrush === 0
        ? "no filter capacitor on one side: the load current only"
        : `${volts(step)} over ${inTheWay.toPrecision(2)} ohm (ESR of the capacitors where measured, 1 ohm for contact and leads)`,
      "from-memory",
    ),
  ];
  const base = {
    condition: open.condition.id,
    found: `${volts(open.supplyVolts)} across it open${inrush === 0 ? "" : `, up to ${amps(inrush)} at closing`}; ${state.ratedVolts === undefined ? "rating not known" : `marked ${volts(state.ratedVolts)}${saysDirect(state) ? " DC" : ""}`}`,
    shouldBe: `a switch with a DC rating of at least ${volts(open.supplyVolts)}`,
    figures,
  };
  const order = [
    { what: `switch with a DC rating of at least ${volts(open.supplyVolts)}`, quantity: 1, for: part.name, why: "breaks high voltage" },
  ];
  if (state.ratedVolts === undefined) {
    return [
      report(check, life, part, {
        ...base,
        severity: "unmeasured",
        title: `Rating of ${part.name} is not known`,
        why: "A contact made for alternating current draws an arc on direct current that does not go out.",
        action: `Look up the switch; it breaks ${volts(open.supplyVolts)} DC.`,
        cautions: [],
      }),
    ];
  }
  if (open.supplyVolts > state.ratedVolts) {
    return [
      report(check, life, part, {
        ...base,
        severity: "replace",
        title: `${part.name} breaks more than its voltage`,
        why: "The arc of direct current does not go out by itself: contacts pit, weld, or flash over to the frame that a hand is on.",
        action:
          "Switch something else (the transformer's centre tap, the screens, the bias), or fit a relay or switch rated for this direct voltage.",
        order,
        holds: "full-line",
      }),
    ];
  }
  if (!saysDirect(state)) {
    return [
      report(check, life, part, {
        ...base,
        severity: "watch",
        title: `${part.name} is not marked for direct current`,
        why: "Voltage ratings of switches are for alternating current unless they say DC; on DC the same switch breaks a fraction of it.",
        action: "Look up its DC rating; without one replace it when its contacts are pitted.",
        order: [],
      }),
    ];
  }
  if (state.ratedAmps !== undefined && inrush > 10 * state.ratedAmps) {
    return [
      report(check, life, part, {
        ...base,
        severity: "watch",
        title: `Closing ${part.name} makes ${amps(inrush)}`,
        why: `${joules(0.5 * open.loadFarads * step ** 2)} goes from one filter into another through the contacts; they weld.`,
        action:
          "Fit 100 ohm 5 W in series behind the switch, or a trickle resistor across it so that both sides stand near the same voltage.",
      }),
    ];
  }
  return [
    good(check, life, part, {
      ...base,
      title: `${part.name} is rated for what it breaks`,
      why: "Marked for direct current at or above the voltage across it.",
    }),
  ];
}

/** Whether the marking gives its voltage for direct current. */
function saysDirect({ ratedVoltsKind, marking }: PartState): boolean {
  return (ratedVoltsKind ?? marking?.ratedVoltsKind) === "dc" || /dc/i.test(marking?.asWritten ?? "");
}

const voltsHow = (open: OpenSwitch): string => `the whole supply: load side empty or shorted; ${open.condition.title}, highest line`;

/** Smallest ESR of the capacitors at a point; 0 where none was measured. */
function esrAt(model: ChassisModel, life: Life, point: string): number {
  const known = allIn(model, life, "capacitor").flatMap(({ state }) =>
    endsOf(state)?.includes(point) === true && state.esr !== undefined ? [state.esr.value] : [],
  );
  return known.length === 0 ? 0 : Math.min(...known);
}

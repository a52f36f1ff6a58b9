import type { ChassisModel, Check, Finding, Life, Part } from "../../model/index.ts";
import { atLeast, figure } from "../shared/figure.ts";
import { allIn, endsOf, livesTouching } from "../shared/layout.ts";
import { lineCurrent } from "../shared/lineCurrent.ts";
import { type LineSide, lineDuty, lineSide } from "../shared/lineSide.ts";
import { good, report } from "../shared/report.ts";
import { ohms } from "../shared/words.ts";

/** from-memory, service sheets: the resistor between B- and an isolated chassis. */
const LEAST_OHMS = 150e3;

/** Sets without a power transformer: how the chassis stands to the line. */
export const transformerlessChassis: Check = {
  id: "transformerless-chassis",
  area: "line",
  title: "Chassis of a set without a transformer",
  question: "Can line voltage stand on the chassis, and is it wired so that it should not?",
  needs: "the cord, the switch, and what lies between B- and the chassis",
  sources: ["common-practice", "service-leakage-check"],
  cautions: ["transformerless-live-chassis", "hot-chassis-test", "one-hand-rule", "line-wiring-licensed"],
  run(model) {
    if (model.isolation !== "transformerless") return [];
    return livesTouching(model, "cord", "wire", "resistor", "capacitor", "switch").flatMap((life) => {
      const side = lineSide(model, life);
      if (!side.known) return [];
      const plugs = plug(model, life, side);
      // An earth conductor on B- is the chassis on the line already.
      const shorted = plugs.some(({ severity }) => severity === "danger");
      return [bench(model, life), ...plugs, ...(shorted ? [] : chassis(model, life, side))];
    });
  },
};

function bench(model: ChassisModel, life: Life): Finding {
  const current = lineCurrent(model, life);
  const apparent = current === undefined ? undefined : current.rmsAmps * current.lineVolts;
  const size = apparent === undefined ? "" : ` of at least ${Math.ceil((1.5 * apparent) / 10) * 10} VA`;
  return report(transformerlessChassis, life, undefined, {
    severity: "watch",
    title: "No transformer between line and set: bench work only behind an isolation transformer",
    found: "one side of the line is B-, and may be the chassis",
    shouldBe: `an isolation transformer${size} ahead of the set, and behind it nothing grounded`,
    figures:
      apparent === undefined
        ? []
        : [figure("apparent power of the set", apparent, "W", "line RMS volts times RMS amperes, highest line; heater string included")],
    why: "Everything on the B- side is at line potential for one of the two ways of the plug, and a grounded test lead shorts the line.",
    action: "Use the isolation transformer, one hand, and readings against B-. Do the touch-current test afterwards, without it.",
  });
}

/** A plain plug may stand either way round; a grounded one that reaches B- shorts the line. */
function plug(model: ChassisModel, life: Life, side: LineSide): Finding[] {
  return allIn(model, life, "cord").flatMap(({ part, state }): Finding[] => {
    const text = textIn(part, life);
    const earthOut = state.earthed === true ? state.pins["earth-out"] : undefined;
    const onFrame = side.frame.has("chassis") && [...side.frame].some((point) => side.neutral.has(point) || side.hot.has(point));
    if (earthOut !== undefined && (side.neutral.has(earthOut) || side.hot.has(earthOut) || (side.frame.has(earthOut) && onFrame))) {
      return [
        report(transformerlessChassis, life, part, {
          severity: "danger",
          title: `The earth conductor of ${part.name} is on a conductor of the line`,
          found: `earth on ${earthOut}, which is B-`,
          shouldBe: "no earth conductor on B- or on a chassis joined to it",
          why: "With the plug or the outlet the other way round this is a dead short of the line through the chassis.",
          action: "Take the earth conductor off; fit a polarised two-wire cord; work behind an isolation transformer.",
          holds: "current-limited",
        }),
      ];
    }
    if (text !== undefined && /polari[sz]ed/i.test(text)) return [];
    return [
      report(transformerlessChassis, life, part, {
        severity: "replace",
        title: `${part.name} can be plugged in either way`,
        found: text ?? "a cord without a word on its plug",
        shouldBe: "a polarised plug: hot to the switch, neutral to B-",
        why: "Turned round, B- and all that hangs on it is at the hot side, also with the switch off.",
        action: "Fit a polarised cord, the narrow blade (hot) to the fuse and the switch.",
        holds: "service",
        order: [{ what: "polarised two-wire line cord", quantity: 1, for: part.name, why: "plug not polarised" }],
      }),
    ];
  });
}

function chassis(model: ChassisModel, life: Life, side: LineSide): Finding[] {
  const live =
    [...side.frame].find((point) => side.hot.has(point) || side.neutral.has(point)) ??
    (model.reference === "chassis" ? "chassis" : undefined);
  if (live !== undefined) {
    const onHot = side.hot.has(live);
    const polarised = allIn(model, life, "cord").some(({ part }) => /polari[sz]ed/i.test(textIn(part, life) ?? ""));
    if (!onHot && polarised && side.neutralParts.every(({ part }) => part.kind !== "switch")) {
      return [
        report(transformerlessChassis, life, undefined, {
          severity: "watch",
          point: live,
          title: "The chassis is B-, on the neutral by the plug alone",
          found: `${live} and B- are one point, polarised cord, neutral not switched`,
          shouldBe: "no metal of the chassis within reach: knobs, screws, back",
          why: "An outlet wired the wrong way round puts the full line on the chassis.",
          action:
            "Measure chassis to earth before touching it; keep insulated knobs and screws and a closed back; do the touch-current test on everything that can be reached.",
        }),
      ];
    }
    return [
      report(transformerlessChassis, life, undefined, {
        severity: "danger",
        point: live,
        title: onHot ? "The chassis is on the hot side of the line" : "The chassis is joined to the line",
        found: `${live} and ${onHot ? "the hot conductor" : "B-"} are one point`,
        shouldBe: "chassis on the neutral side by a polarised plug, and no metal of it within reach: knobs, screws, back",
        why: "Line voltage stands on the chassis for one way of the plug; a touch of it and of anything grounded kills.",
        action: onHot
          ? "Exchange the conductors: hot to the switch, neutral to the chassis."
          : "Energise it only behind an isolation transformer. Before it goes back: polarised plug, insulated knobs and screws, closed back, and the touch-current test.",
        holds: onHot ? "current-limited" : "full-line",
      }),
    ];
  }
  const bridges = allIn(model, life, "capacitor", "resistor").filter((placed) => lineDuty(placed, side) === "line-to-chassis");
  const resistors = bridges.filter(({ part }) => part.kind === "resistor");
  if (bridges.length === 0)
    return [
      good(transformerlessChassis, life, undefined, {
        title: "The chassis has no connection to the line",
        found: "nothing between B- and the chassis",
        shouldBe: "isolated",
        why: "The metal floats; insulation is all that separates it.",
      }),
    ];
  return resistors.flatMap(({ part, state }): Finding[] => {
    const value = state.main?.value;
    if (value === undefined || endsOf(state) === undefined) return [];
    const figures = [
      atLeast(value, LEAST_OHMS, {
        label: `resistance of ${part.name}`,
        unit: "ohm",
        how: "between B- and the chassis",
        source: "from-memory",
      }),
    ];
    const base = { found: `${ohms(value)} between B- and the chassis`, shouldBe: `${ohms(LEAST_OHMS)} to 470 kohm`, figures };
    if (value >= LEAST_OHMS)
      return [
        good(transformerlessChassis, life, part, {
          ...base,
          title: "The chassis is isolated from B-",
          why: "The resistor bleeds off static charge and passes little current.",
        }),
      ];
    return [
      report(transformerlessChassis, life, part, {
        ...base,
        severity: "danger",
        title: `${part.name} joins the chassis to the line`,
        why: "It passes a dangerous current to whoever touches the chassis.",
        action: "Fit 220 kohm, 0.5 W or more, rated for the line voltage.",
        holds: "full-line",
        order: [{ what: "resistor 220 kohm 0.5 W, 350 V", quantity: 1, for: part.name, why: "too low" }],
      }),
    ];
  });
}

function textIn(part: Part, life: Life): string | undefined {
  const { marked, fitted } = part.asWritten;
  return life === "planned" || part.change !== "planned" ? (fitted ?? marked) : marked;
}

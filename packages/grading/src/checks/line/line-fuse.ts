import type { ChassisModel, Check, Finding, Life } from "../../model/index.ts";
import { atLeast } from "../shared/figure.ts";
import { livesTouching, type Placed } from "../shared/layout.ts";
import { lineCurrent } from "../shared/lineCurrent.ts";
import { type LineSide, lineSide, nominalVolts } from "../shared/lineSide.ts";
import { good, report } from "../shared/report.ts";
import { fuseFor, primaryAllowance } from "../shared/transformerLoad.ts";
import { amps, volts } from "../shared/words.ts";

const isFuse = ({ part }: Placed) => part.kind === "fuse" || part.kind === "breaker";
const isSwitch = ({ part }: Placed) => part.kind === "switch";

/** Whether the line is fused, in the right conductor, before everything else, with a fuse for that voltage. */
export const lineFuse: Check = {
  id: "line-fuse",
  area: "line",
  title: "Line fuse",
  question: "Is there a fuse in the hot conductor, ahead of everything else, made for the line voltage?",
  needs: "the fuse, the switch and the points between which they lie",
  sources: ["common-practice", "fuse-maker-sheets"],
  cautions: ["line-wiring-licensed"],
  run(model) {
    return livesTouching(model, "fuse", "breaker", "switch", "cord").flatMap((life): Finding[] => {
      const side = lineSide(model, life);
      if (!side.known) return [];
      const hot = side.hotParts.filter(isFuse);
      const neutral = side.neutralParts.filter(isFuse);
      if (hot.length + neutral.length === 0) return [noFuse(model, life)];
      const wrong = [...wrongPlaces(life, side, hot, neutral), ...[...hot, ...neutral].flatMap((fuse) => voltage(model, life, fuse))];
      const first = hot[0];
      if (first === undefined || wrong.length > 0) return wrong;
      return [
        good(lineFuse, life, first.part, {
          title: `${first.part.name} stands first in the hot conductor`,
          found: "plug, then fuse, then the rest",
          shouldBe: "fuse ahead of the switch",
          why: "Whatever shorts behind it is cut off from the line.",
        }),
      ];
    });
  },
};

function noFuse(model: ChassisModel, life: Life): Finding {
  const current = lineCurrent(model, life);
  const allowed = current === undefined ? undefined : primaryAllowance(model, life, current.rmsAmps);
  // A fuse for what an overloaded transformer draws would not protect it: its size waits until the load is right.
  const rating = current === undefined || allowed?.overdrawn === true ? undefined : fuseFor(1.5 * current.rmsAmps, allowed?.mostFuseAmps);
  const what =
    rating === undefined ? "a slow fuse of 1.5 to 2 times the steady line current" : `a slow (T) fuse of ${amps(rating)}, 250 V AC`;
  return report(lineFuse, life, undefined, {
    severity: "replace",
    title: "No fuse in the line",
    found: "no fuse between the plug and the set",
    shouldBe: `${what}, in the hot conductor ahead of the switch`,
    why: "A shorted rectifier, filter capacitor or winding then draws from the line until something burns.",
    action: `Fit a closed fuse holder and ${what}. Until then run it only through a lamp or another current limiter.`,
    sources: ["common-practice", "fuse-design-text"],
    holds: "full-line",
    order: [
      {
        what: rating === undefined ? "fuse holder and fuse" : `fuse T ${amps(rating)} 250 V, and a closed holder`,
        quantity: 1,
        for: "line",
        why: "no fuse",
      },
    ],
  });
}

function wrongPlaces(life: Life, side: LineSide, hot: readonly Placed[], neutral: readonly Placed[]): Finding[] {
  const findings: Finding[] = [];
  const inNeutral = neutral[0];
  if (inNeutral !== undefined && hot.length === 0) {
    findings.push(
      report(lineFuse, life, inNeutral.part, {
        severity: "adjust",
        title: `${inNeutral.part.name} lies in the neutral conductor`,
        found: "fuse in the neutral, none in the hot conductor",
        shouldBe: "fuse in the hot conductor",
        why: "When it blows the set goes quiet and stays at line voltage; a short from the hot side to the chassis does not pass through it.",
        action: "Move the fuse to the hot conductor, ahead of the switch; hot is the narrow blade or the brown or black lead.",
        holds: "service",
      }),
    );
  }
  const fuseAt = side.hotParts.findIndex(isFuse);
  const switchAt = side.hotParts.findIndex(isSwitch);
  const late = side.hotParts[fuseAt];
  if (late !== undefined && switchAt >= 0 && switchAt < fuseAt) {
    findings.push(
      report(lineFuse, life, late.part, {
        severity: "adjust",
        title: `${late.part.name} comes after the switch`,
        found: `plug, ${side.hotParts.map(({ part }) => part.name).join(", ")}`,
        shouldBe: "plug, fuse, switch",
        why: "The switch, often on a control inside the set, and the leads to it are not protected.",
        action: "Bring the hot conductor to the fuse first and from there to the switch.",
        holds: "service",
      }),
    );
  }
  return findings;
}

function voltage(model: ChassisModel, life: Life, { part, state }: Placed): Finding[] {
  if (state.ratedVolts === undefined) {
    return [
      report(lineFuse, life, part, {
        severity: "unmeasured",
        title: `Voltage rating of ${part.name} not known`,
        found: part.asWritten.fitted ?? part.asWritten.marked ?? "no marking",
        shouldBe: `rated for at least ${volts(nominalVolts(model))} AC`,
        why: "A fuse made for a car's 32 V goes on burning as an arc at line voltage.",
        action: "Read the end cap; if it shows no voltage, fit one marked 250 V.",
        cautions: [],
      }),
    ];
  }
  if (state.ratedVolts >= nominalVolts(model)) return [];
  return [
    report(lineFuse, life, part, {
      severity: "replace",
      title: `${part.name} is not made for the line voltage`,
      found: `${volts(state.ratedVolts)} fuse on a line of ${volts(nominalVolts(model))}`,
      shouldBe: "250 V AC",
      figures: [
        atLeast(state.ratedVolts, nominalVolts(model), {
          label: `rated voltage of ${part.name}`,
          unit: "V",
          how: "marking against the line as it is; ratings of line parts allow for its swing",
          source: "fuse-maker-sheets",
        }),
      ],
      why: "Above its voltage a fuse may not break the arc.",
      action: "Fit a 250 V fuse of the same current and speed.",
      holds: "full-line",
      order: [
        {
          what: `fuse ${state.ratedAmps === undefined ? "" : amps(state.ratedAmps)} ${state.speed ?? "T"} 250 V`,
          quantity: 1,
          for: part.name,
          why: "voltage rating below the line",
        },
      ],
    }),
  ];
}

import type { ChassisModel, Check, Figure, Finding, Life } from "../../model/index.ts";
import { atLeast, atMost, figure } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { joined } from "../shared/phrases.ts";
import { good, report, type Said } from "../shared/report.ts";
import { allSolved } from "../shared/solved.ts";
import { LEAST_HELD, type TransformerLoad, transformerLoads, type WindingLoad } from "../shared/transformerLoad.ts";
import { BRIDGE_FORM } from "../shared/windingCurrent.ts";
import { amps, percent, watts } from "../shared/words.ts";

/** Above this share of a rating the full line waits; above the rating itself the set is not handed back. common-practice. */
const HEAVY = 1.25;
/** A plan that changes the worst load by less than this says nothing new. */
const SAME = 0.01;

/** Every winding of a transformer on the line against its rated current. */
export const transformerLoad: Check = {
  id: "transformer-load",
  area: "rectifiers",
  title: "Load of the power transformer",
  question: "Does the set draw more from any winding of its power transformer than that is made for?",
  needs: "rated currents of the windings, and the loads",
  sources: ["common-practice", "from-memory", "circuit-theory"],
  cautions: ["high-voltage-stored-charge", "first-power-limited"],
  run(model) {
    return judgedLives(model).flatMap((life) => transformerLoads(model, life).flatMap((load) => judge(model, life, load)));
  },
};

function judge(model: ChassisModel, life: Life, load: TransformerLoad): Finding[] {
  const { part } = load.placed;
  const worst = heaviest(load);
  const before = life === "planned" ? transformerLoads(model, "restored").find(({ placed }) => placed.part === part) : undefined;
  if (worst === undefined || (before !== undefined && part.change !== "planned" && unchanged(load, before))) return [];
  const name = part.name;
  const share = worst.share ?? 0;
  const said = {
    condition: worst.condition,
    found: joined(load.windings.map((winding) => `${winding.winding.id} ${amps(winding.amps)}${winding.kind === "direct" ? " DC" : ""}`)),
    shouldBe: "every winding within its rated current",
    figures: figuresOf(name, load),
  };
  if (worst.fault)
    return [report(transformerLoad, life, part, { ...said, ...fault(name, worst), severity: "danger", holds: "current-limited" })];
  if (share > 1) {
    const was = before === undefined ? undefined : heaviest(before);
    const only =
      was !== undefined && (was.share ?? 0) <= 1
        ? ` As it stands its fullest winding carries ${percent(was.share ?? 0)}: the plan overloads it.`
        : "";
    return [
      report(transformerLoad, life, part, {
        ...said,
        severity: "adjust",
        title: `${name}: ${worst.winding.id} carries ${percent(share)} of its rating`,
        why: `It heats with the square of the current, ${(share ** 2).toPrecision(2)} times as much as it is made for, and its insulation chars.${only}`,
        action: `Bring the load of ${worst.winding.id} down to ${amps(worst.limit ?? 0)}: look for leaky filters, wrong bias, added loads${only === "" ? "" : ", and change the plan"}. Replace the transformer only when the circuit asks for the current.`,
        holds: share > HEAVY ? "full-line" : "service",
      }),
    ];
  }
  if (!allSolved(model, life)) return [];
  const unknown = load.windings.filter(
    ({ winding, limit }) => limit === undefined && (load.windings.length === 1 || !/primary/.test(winding.id)),
  );
  if (unknown.length > 0) {
    const names = joined(unknown.map(({ winding }) => winding.id));
    return [
      report(transformerLoad, life, part, {
        ...said,
        severity: "unmeasured",
        title: `Rated current of ${name} not known: ${names}`,
        why: "An overloaded winding chars slowly, without a sign until it shorts.",
        action: `Look up the rated current of ${names} and enter it with the voltage, as 300-0-300 V 100 mA.`,
        cautions: [],
      }),
    ];
  }
  return [
    good(transformerLoad, life, part, {
      ...said,
      title: `${name} carries its load`,
      why: `Its fullest winding, ${worst.winding.id}, carries ${percent(share)} of its rating at the highest line.`,
    }),
  ];
}

/** The winding that decides: one that a fault loads, else the largest share, else the largest current. */
function heaviest({ windings }: TransformerLoad): WindingLoad | undefined {
  const rank = ({ fault, share, amps: current }: WindingLoad) => [fault ? 1 : 0, share ?? 0, current] as const;
  return windings.toSorted((one, other) => {
    const [a, b] = [rank(one), rank(other)];
    return b[0] - a[0] || b[1] - a[1] || b[2] - a[2];
  })[0];
}

function unchanged(now: TransformerLoad, before: TransformerLoad): boolean {
  return now.windings.every((load) => {
    const was = before.windings.find(({ winding }) => winding.id === load.winding.id);
    return was !== undefined && was.limit === load.limit && Math.abs(load.amps - was.amps) <= SAME * was.amps;
  });
}

function fault(name: string, { winding, held, share }: WindingLoad): Pick<Said, "title" | "why" | "action"> {
  const gone = held !== undefined && held < LEAST_HELD;
  return {
    title: gone
      ? `${name}: ${winding.id} is shorted, it keeps ${percent(held)} of its voltage`
      : `${name}: ${winding.id} carries ${(share ?? 0).toPrecision(2)} times its rating`,
    why: "Only a short explains that: a wire, a shorted filter or rectifier, shorted turns. The winding burns, often with the fuse whole.",
    action: `Do not energise. With the power off measure across ${winding.id} and from what it feeds to the chassis, find the short, and check the insulation of ${name} before it gets power again.`,
  };
}

function figuresOf(name: string, { windings, heat }: TransformerLoad): Figure[] {
  const figures = windings.flatMap((load): Figure[] => {
    const { winding, condition, kind, derating, limit } = load;
    const how =
      kind === "direct"
        ? `direct current of its rectifiers, ${condition}, highest line${derating === BRIDGE_FORM ? `; a bridge or doubler into a capacitor uses the rating up sooner: limit rating / ${BRIDGE_FORM}, a doubler's current counted twice` : ""}`
        : `RMS, ${condition}, highest line${kind === "past-rectifiers" ? "; more than rectifiers explain, limit 3 times the direct-current rating" : "; limit the rating, with the line's swing up to a tenth"}${/primary/.test(winding.id) ? "; core losses not counted" : ""}`;
    const label = `${winding.id} of ${name}`;
    const current =
      limit === undefined
        ? figure(label, load.amps, "A", how)
        : atMost(load.amps, limit, {
            label,
            unit: "A",
            how,
            source: kind === "rms" || (kind === "direct" && derating === 1) ? "common-practice" : "from-memory",
          });
    if (load.held === undefined || load.held >= LEAST_HELD) return [current];
    const kept = {
      label: `${winding.id}: share of its voltage kept`,
      unit: "",
      how: `at its ends, over turns ratio times primary voltage, ${condition}`,
    };
    return [current, atLeast(load.held, LEAST_HELD, { ...kept, source: "from-memory" })];
  });
  return [
    ...figures,
    figure(
      `heat in the wire of ${name}`,
      heat.watts,
      "W",
      `sum of I^2 R of all windings, ${heat.condition}: ${watts(heat.watts)}; core not counted`,
    ),
  ];
}

import type { ChassisModel, Check, Figure, Finding, Life } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { allIn, livesTouching, type Placed } from "../shared/layout.ts";
import { lineCurrent } from "../shared/lineCurrent.ts";
import { lineSide } from "../shared/lineSide.ts";
import { good, report } from "../shared/report.ts";
import { stresses, worst } from "../shared/stress.ts";
import { switchOn } from "../shared/switchOn.ts";
import { numberIn, rowsOf } from "../shared/tables.ts";
import { fuseFor, type PrimaryAllowance, primaryAllowance } from "../shared/transformerLoad.ts";
import { amps, percent } from "../shared/words.ts";

/** Share of its rating that a fuse carries for good: UL 248-14 75 %, IEC 60127 100 %. */
const UL_SHARE = 0.75;
/** Share of the melting integral for 100 000 switchings. fuse-maker-sheets. */
const PULSE_SHARE = 0.22;
/** Beyond this multiple of the steady current a fuse protects hardly anything. common-practice: 1.5 to 2.5 is customary. */
const TOO_LARGE = 3;
const LARGE = 2.5;
/** Below any heater's current. */
const LEAST_HEATER_AMPS = 0.05;

/** Rating and speed of every fuse against what it carries, steadily and at switch-on. */
export const fuseRating: Check = {
  id: "fuse-rating",
  area: "line",
  title: "Fuse rating",
  question: "Does each fuse carry the set, stand the switching on, and still blow when something shorts?",
  needs: "amperes and speed of the fuse, and a network that can be simulated",
  sources: ["ul-248-14", "iec-60127-2", "fuse-maker-sheets", "fuse-design-text"],
  cautions: ["line-wiring-licensed"],
  run(model) {
    return livesTouching(model, "fuse", "breaker").flatMap((life) => {
      const side = lineSide(model, life);
      const onLine = new Set([...side.hotParts, ...side.neutralParts].map(({ part }) => part.id));
      return allIn(model, life, "fuse", "breaker").flatMap((placed) => judge(model, life, placed, onLine.has(placed.part.id)));
    });
  },
};

function judge(model: ChassisModel, life: Life, { part, state }: Placed, onLine: boolean): Finding[] {
  const rated = state.ratedAmps;
  const load = worst(stresses(model, life).get(part.id), "rmsAmps");
  const steady = onLine ? lineCurrent(model, life)?.rmsAmps : load?.rmsAmps;
  if (rated === undefined || steady === undefined || steady === 0) return [];
  const ul = isUl(model, state.marking?.type);
  const share = ul ? UL_SHARE : 1;
  // What the papers let the primary draw counts too: an amplifier at full output draws far more than without signal.
  const allowed = onLine ? primaryAllowance(model, life, steady) : undefined;
  const most = Math.max(steady, allowed?.ratedAmps ?? 0);
  const wanted = fuseFor((ul ? 1.6 : 1.4) * steady, allowed?.mostFuseAmps);
  const figures: Figure[] = [
    atMost(steady, share * rated, {
      label: `steady current through ${part.name}`,
      unit: "A",
      how: `RMS, highest line; limit ${percent(share)} of ${amps(rated)} (${ul ? "UL 248-14" : "IEC 60127"} fuse${state.marking?.type === undefined ? ", family taken from the line frequency" : ""}); core losses not counted`,
      source: ul ? "ul-248-14" : "iec-60127-2",
    }),
    figure("rating over steady current", rated / steady, "", "customary 1.5 to 2.5", "fuse-design-text"),
  ];
  const order = [{ what: `fuse T ${amps(wanted)} 250 V`, quantity: 1, for: part.name, why: "rating does not fit what the set draws" }];
  const base = {
    found: `${amps(rated)}${state.speed === undefined ? "" : ` ${state.speed}`} fuse, ${amps(steady)} steady`,
    shouldBe: `about ${amps(wanted)}, slow`,
    figures,
  };
  if (allowed?.overdrawn) return [overdrawn(life, part, base, steady, allowed)];
  if (rated > LARGE * most && onLine && heatersMissing(model, life)) {
    return [
      report(fuseRating, life, part, {
        ...base,
        severity: "unmeasured",
        title: `${part.name} cannot be judged: the job does not say what the heaters draw`,
        why: "The transformer has heater windings, and no tube or load on them is listed.",
        action: "List the tubes, or a load on the heater winding, or measure the line current.",
        cautions: [],
      }),
    ];
  }
  if (rated > TOO_LARGE * most) {
    return [
      report(fuseRating, life, part, {
        ...base,
        figures: [
          atMost(rated, TOO_LARGE * most, {
            label: `rating of ${part.name}`,
            unit: "A",
            how: `limit ${TOO_LARGE} times ${most > steady ? "the primary's rated current" : "the steady current"}, ${amps(most)}`,
            source: "common-practice",
          }),
          ...figures,
        ],
        severity: "replace",
        title: `${part.name} is too large to protect the set`,
        why: "A shorted rectifier or a winding with shorted turns may draw less than it takes to blow it.",
        action: `Fit ${amps(wanted)} slow.`,
        order,
        holds: "full-line",
      }),
    ];
  }
  if (steady > share * rated) {
    return [
      report(fuseRating, life, part, {
        ...base,
        severity: "adjust",
        title: `${part.name} is too small for the steady current`,
        why: "It fatigues and blows without a fault, and the next hand fits a much larger one.",
        action: `First make sure that nothing draws too much, then fit ${amps(wanted)} slow.`,
        order,
      }),
    ];
  }
  const surge = onLine ? surgeFindings(model, life, part, rated, steady, state.speed, state.marking?.type) : [];
  if (rated > LARGE * most)
    surge.push(
      report(fuseRating, life, part, {
        ...base,
        severity: "watch",
        title: `${part.name} is on the large side`,
        why: "Above 2.5 times the steady current a fault has to be gross before it blows.",
        action: `Fit ${amps(wanted)} slow when it is changed next.`,
      }),
    );
  if (surge.some(({ severity }) => severity !== "unmeasured")) return surge;
  return [
    good(fuseRating, life, part, {
      ...base,
      title: `${part.name} fits what the set draws`,
      why: "It carries the set for good and blows at a few times that current.",
    }),
    ...surge,
  ];
}

/** The set draws more than its transformer is made for: a fuse to match would only let it burn. */
function overdrawn(
  life: Life,
  part: Placed["part"],
  base: Pick<Finding, "found" | "figures">,
  steady: number,
  { ratedAmps, mostFuseAmps }: PrimaryAllowance,
): Finding {
  const limit =
    ratedAmps === undefined
      ? []
      : [
          atMost(steady, ratedAmps, {
            label: "steady line current",
            unit: "A",
            how: "RMS, highest line, against the rated current of the primary",
            source: "marking",
          }),
        ];
  return report(fuseRating, life, part, {
    ...base,
    figures: [...limit, ...base.figures],
    severity: "adjust",
    title: `${part.name}: the set draws more than its transformer is made for`,
    shouldBe: ratedAmps === undefined ? "no winding loaded as by a short" : `at most ${amps(ratedAmps)} steady`,
    why: "A larger fuse would carry the excess until the transformer burns.",
    action: `Find out first why it draws so much: shorted winding, rectifier or filter, a wire to the chassis, too large a load. Fit no larger fuse${Number.isFinite(mostFuseAmps) ? `; never more than ${amps(mostFuseAmps)}` : ""}.`,
    holds: "full-line",
  });
}

/** True when a heater winding feeds nothing that the job lists: the line current then lacks the heaters' share. */
function heatersMissing(model: ChassisModel, life: Life): boolean {
  const solved = model.solve({ life, condition: "operating", line: "high" });
  if (!solved.ok) return true;
  const drawn = (winding: string) => solved.steady.elements.get(winding)?.rmsAmps ?? 0;
  return allIn(model, life, "transformer").some(({ part, state }) =>
    (state.windings ?? []).some(
      ({ id }) => /heat|fil/i.test(id) && drawn(`${part.id}.${id}`) + drawn(`${part.id}.${id}-1`) < LEAST_HEATER_AMPS,
    ),
  );
}

/** 1/4 inch fuses are of the UL family, 5 x 20 mm ones of the IEC family; unmarked ones go by the country's frequency. */
function isUl(model: ChassisModel, type: string | undefined): boolean {
  if (type !== undefined && /5\s*X\s*20/i.test(type)) return false;
  if (type !== undefined && /A[GB]$|1\/4|6\.3/i.test(type)) return true;
  return model.line.hertz === 60;
}

function surgeFindings(
  model: ChassisModel,
  life: Life,
  part: Placed["part"],
  rated: number,
  steady: number,
  speed: string | undefined,
  body: string | undefined,
): Finding[] {
  const cold = switchOn(model, life, { hot: false });
  if (cold === undefined) return [];
  const hasCore = allIn(model, life, "transformer").length > 0;
  // from-memory: a core's magnetising surge, 10 to 15 times the steady peak for half a cycle.
  const core = hasCore ? 0.5 * (12 * Math.SQRT2 * steady) ** 2 * (0.5 / model.line.hertz) : 0;
  const integral = Math.max(cold.lineAmpsSquaredSeconds, core);
  const how =
    core >= cold.lineAmpsSquaredSeconds
      ? "magnetising surge of the core, 12 times the steady peak for half a cycle, half-sine: i^2 t / 2"
      : "energy of the filters over the resistance in the way";
  const melting = meltingIntegral(model, rated, speed, body);
  const base = {
    found: `${speed ?? "speed not marked"}; about ${integral.toPrecision(2)} A2s at switch-on`,
    shouldBe: "a slow (T) fuse whose melting integral is at least 4.5 times the switch-on integral",
  };
  if (melting === undefined) {
    if (speed === "F" || speed === "FF") {
      return [
        report(fuseRating, life, part, {
          ...base,
          severity: "watch",
          title: `${part.name} is a fast fuse`,
          figures: [figure("switch-on integral", integral, "A2s", how, core > 0 ? "from-memory" : "computed")],
          why: "Transformers, filters and cold heaters draw several times the steady current for the first cycles; a fast fuse fatigues.",
          action: "Fit a slow fuse of the same current.",
        }),
      ];
    }
    return [
      report(fuseRating, life, part, {
        ...base,
        severity: "unmeasured",
        title: `Melting integral of ${part.name} not known`,
        figures: [figure("switch-on integral", integral, "A2s", how, core > 0 ? "from-memory" : "computed")],
        why: "Whether switching on wears the fuse cannot be judged without it.",
        action: `Look it up in the maker's sheet: at least ${(integral / PULSE_SHARE).toPrecision(2)} A2s.`,
        cautions: [],
      }),
    ];
  }
  const within = integral <= PULSE_SHARE * melting;
  if (within) return [];
  return [
    report(fuseRating, life, part, {
      ...base,
      severity: "watch",
      title: `Switching on wears ${part.name}`,
      figures: [
        atMost(integral, PULSE_SHARE * melting, {
          label: "switch-on integral",
          unit: "A2s",
          how: `${how}; limit 22 % of the melting integral for 100 000 switchings`,
          source: "fuse-maker-sheets",
        }),
      ],
      why: "Each surge weakens the wire, and one day it blows without a fault.",
      action: "Fit the next larger slow fuse within 2.5 times the steady current, or an inrush limiter.",
    }),
  ];
}

/** Melting integral of a fuse in A2s, between two rows of the table by the power law that joins them; undefined outside it. */
function meltingIntegral(model: ChassisModel, rated: number, speed: string | undefined, body: string | undefined): number | undefined {
  const size = (body ?? "").toLowerCase().replace(/[^0-9x]/g, "");
  const rows = rowsOf(model, "fuse-melting").flatMap((row) => {
    const [x, y] = [numberIn(row, "ratedAmps"), numberIn(row, "meltingAmpsSquaredSeconds")];
    return row.speed === speed && row.body === size && x !== undefined && y !== undefined ? [{ x, y }] : [];
  });
  rows.sort((a, b) => a.x - b.x);
  const above = rows.find(({ x }) => x >= rated);
  const below = rows.findLast(({ x }) => x <= rated);
  if (above === undefined || below === undefined) return undefined;
  if (above.x === below.x) return above.y;
  const power = Math.log(above.y / below.y) / Math.log(above.x / below.x);
  return below.y * (rated / below.x) ** power;
}

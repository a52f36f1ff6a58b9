import type { ChassisModel, Check, Finding, Life, Part, PartState } from "../../model/index.ts";
import { atLeast, atMost, figure } from "../shared/figure.ts";
import { allIn, endsOf } from "../shared/layout.ts";
import { judgedLives } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { isPowerTube, type TubeWork, tubesIn, workOf } from "../shared/tubes.ts";
import { amps, percent, volts } from "../shared/words.ts";

/** common-practice: a resistance-coupled plate stands at about half of its supply; pentodes lower. Share of the supply. */
const TRIODE = { low: 0.25, high: 0.85 };
const PENTODE = { low: 0.1, high: 0.85 };

/** Plate voltage of every resistance-coupled amplifier against its supply: saturated or cut off? */
export const amplifierOperatingPoint: Check = {
  id: "amplifier-operating-point",
  area: "audio",
  title: "Amplifier operating point",
  question: "Does every voltage amplifier stand between saturation and cut-off?",
  needs: "a tube that can be simulated with a resistor as its plate load",
  sources: ["common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      tubesIn(model, life)
        .filter(({ state }) => !isPowerTube(model, state) && !biasesItself(model, state))
        .flatMap((tube) => {
          const load = plateLoad(model, life, tube.state);
          const work = workOf(model, life, tube, "actual").find(({ condition }) => model.conditions.get(condition)?.like === "operating");
          return load === undefined || work === undefined ? [] : judge(this, model, life, work, load);
        }),
    );
  },
};

interface Load {
  part: Part;
  supply: string;
}

/**
 * A tube whose cathode lies at the reference makes its bias from its own grid current through megohms. That hangs on the tube's contact
 * potential, which no published model gives: its operating point is not judged.
 */
function biasesItself(model: ChassisModel, { pins }: PartState): boolean {
  return pins.cathode === model.reference;
}

/** The resistor that feeds the plate: the one called so, else the only one from the plate that does not end at the cathode, grid or reference. */
function plateLoad(model: ChassisModel, life: Life, { pins }: PartState): Load | undefined {
  const plate = pins.plate;
  if (plate === undefined) return undefined;
  const feeds = allIn(model, life, "resistor").flatMap(({ part, state }): Load[] => {
    const ends = endsOf(state);
    if (ends?.includes(plate) !== true) return [];
    const supply = ends[0] === plate ? ends[1] : ends[0];
    return supply === model.reference || supply === pins.grid || supply === pins.cathode ? [] : [{ part, supply }];
  });
  return feeds.find(({ part }) => part.duty === "plate-load") ?? (feeds.length === 1 ? feeds[0] : undefined);
}

function judge(check: Check, model: ChassisModel, life: Life, work: TubeWork, load: Load): Finding[] {
  const solved = model.solve({ life, condition: work.condition, line: "actual" });
  const name = solved.ok ? solved.compiled.pointOf(load.supply) : undefined;
  const supplyVolts = solved.ok && name !== undefined ? solved.steady.points.get(name)?.meanVolts : undefined;
  if (supplyVolts === undefined || supplyVolts < 10) return [];
  const plateVolts = work.plateVolts + work.cathodeVolts;
  const share = plateVolts / supplyVolts;
  const window = work.screenVolts === undefined ? TRIODE : PENTODE;
  const { part } = work;
  const basics = {
    label: `plate of ${part.name} over its supply`,
    unit: "",
    how: `${volts(plateVolts)} / ${volts(supplyVolts)}, ${work.condition}, usual line`,
    source: "common-practice",
  };
  const base = {
    condition: work.condition,
    found: `plate at ${volts(plateVolts)} of ${volts(supplyVolts)}, ${amps(work.plateAmps)}, bias ${volts(work.gridVolts)}`,
    shouldBe: `between ${percent(window.low)} and ${percent(window.high)} of the supply`,
    figures: [
      share < window.low ? atLeast(share, window.low, basics) : atMost(share, window.high, basics),
      figure(`plate current of ${part.name}`, work.plateAmps, "A", "simulation"),
    ],
  };
  if (share >= window.low && share <= window.high) {
    return [
      good(check, life, part, {
        ...base,
        title: `${part.name} amplifies where it should: plate at ${percent(share)} of its supply`,
        why: "There is room to swing either way.",
      }),
    ];
  }
  const saturated = share < window.low;
  return [
    report(check, life, part, {
      ...base,
      severity: "adjust",
      title: saturated
        ? `${part.name} is saturated: plate at ${percent(share)} of its supply`
        : `${part.name} is all but cut off: plate at ${percent(share)} of its supply`,
      why: saturated
        ? "Half of every wave is cut: too little bias, a plate load or cathode resistor of the wrong value, or a grid pulled up."
        : "Hardly any current flows: too much bias, an open or drifted cathode resistor, low screen voltage, or a spent tube.",
      action: saturated
        ? `Check the grid for positive voltage, then the cathode resistor (low or shorted by its bypass), then ${load.part.name} (high).`
        : `Check the cathode resistor (high or open), the screen resistor, then the tube, then ${load.part.name} (low).`,
      holds: "service",
    }),
  ];
}

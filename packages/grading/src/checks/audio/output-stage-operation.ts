import type { ChassisModel, Check, Figure, Finding, Life, Part, PartState } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { allIn, endsOf } from "../shared/layout.ts";
import { judgedLives } from "../shared/lives.ts";
import { standingReadings } from "../shared/readings.ts";
import { good, report } from "../shared/report.ts";
import { isPowerTube, lineWords, type TubeWork, tubesIn, workOf } from "../shared/tubes.ts";
import { amps, ohms, percent, volts, watts } from "../shared/words.ts";

/** common-practice: design-center limits are approached no nearer than this. */
const WARN_SHARE = 0.9;
/** common-practice: other limits hold for the worst tube on the worst line; a simulated average this near leaves no room for a strong tube. */
const NEAR_SHARE = 0.95;
/** from-memory: half as much again shows as a red plate and ends the tube within minutes. */
const RED_SHARE = 1.5;

/** Plate and screen heat and cathode current of every power tube, as simulated and as the cathode voltage says. */
export const outputStageOperation: Check = {
  id: "output-stage-operation",
  area: "audio",
  title: "Output tube operation",
  question: "Does every output tube stay within its plate and screen dissipation?",
  needs: "the tube's limits; for the second opinion a reading at its cathode",
  sources: ["rc-30", "common-practice"],
  cautions: ["hot-surfaces", "high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      tubesIn(model, life)
        .filter(({ state }) => isPowerTube(model, state))
        .flatMap((tube) => [...simulated(this, model, life, tube), ...(life === "planned" ? [] : fromReadings(this, model, life, tube))]),
    );
  },
};

interface Tube {
  part: Part;
  state: PartState;
}

function simulated(check: Check, model: ChassisModel, life: Life, tube: Tube): Finding[] {
  const { part, state } = tube;
  const all = workOf(model, life, tube);
  const hottest = all.reduce<TubeWork | undefined>(
    (best, entry) => (best === undefined || entry.plateWatts > best.plateWatts ? entry : best),
    undefined,
  );
  const limits = state.limits;
  if (hottest === undefined || limits?.plateWatts === undefined) return [];
  const how = `simulation, ${hottest.condition}, ${lineWords(hottest.line)}`;
  const figures: Figure[] = [
    atMost(hottest.plateWatts, limits.plateWatts, {
      label: `plate dissipation of ${part.name}`,
      unit: "W",
      how: `(plate - cathode) times plate current, ${how}`,
      source: limits.source,
    }),
  ];
  if (limits.screenWatts !== undefined && hottest.screenVolts !== undefined) {
    figures.push(
      atMost(hottest.screenWatts, limits.screenWatts, {
        label: `screen dissipation of ${part.name}`,
        unit: "W",
        how: `(screen - cathode) times screen current, ${how}`,
        source: limits.source,
      }),
    );
  }
  figures.push(
    limits.cathodeAmps === undefined
      ? figure(`cathode current of ${part.name}`, hottest.cathodeAmps, "A", how)
      : atMost(hottest.cathodeAmps, limits.cathodeAmps, {
          label: `cathode current of ${part.name}`,
          unit: "A",
          how,
          source: limits.source,
        }),
  );
  const found = `${amps(hottest.plateAmps)} at ${volts(hottest.plateVolts)}: ${watts(hottest.plateWatts)} at the plate, ${watts(hottest.screenWatts)} at the screen; bias ${volts(hottest.gridVolts)}`;
  return [verdict(check, life, part, state, hottest, found, figures, "simulated")];
}

function verdict(
  check: Check,
  life: Life,
  part: Part,
  state: PartState,
  work: TubeWork,
  found: string,
  figures: Figure[],
  basis: "simulated" | "read",
): Finding {
  const share = Math.max(...figures.map(({ value, limit }) => (value === null || limit === undefined ? 0 : value / limit)));
  const worst = figures.find(({ value, limit }) => value !== null && limit !== undefined && value / limit === share);
  const warn = state.limits?.system === "design-center" ? WARN_SHARE : NEAR_SHARE;
  const limit = watts(state.limits?.plateWatts ?? 0);
  const base = {
    condition: work.condition,
    found,
    shouldBe: `plate at most ${limit}${state.limits?.screenWatts === undefined ? "" : `, screen at most ${watts(state.limits.screenWatts)}`}`,
    figures,
  };
  const by = basis === "simulated" ? "" : " by its readings";
  if (share <= warn)
    return good(check, life, part, {
      ...base,
      title: `${part.name} runs within its limits${by}`,
      why: `At most ${percent(share)} of a limit.`,
    });
  const over = share > 1;
  return report(check, life, part, {
    ...base,
    severity: share > RED_SHARE ? "danger" : over ? "adjust" : "watch",
    title: over
      ? `${part.name} is beyond a limit${by}: ${worst?.label ?? "dissipation"} ${percent(share)}`
      : `${part.name} runs close to its limits${by}`,
    why: over
      ? "The plate reddens, gas comes out of the metal, and the current runs away; output transformer and rectifier go with it."
      : "Tubes of one type differ by a fifth and more: a strong one goes beyond the limit where an average one comes close.",
    action: over
      ? `Check the coupling capacitor for leakage, ${hasFixedBias(work) ? "the bias at the grid, back to its supply," : "the cathode resistor"} and the screen supply; if all are right, ${hasFixedBias(work) ? "set the bias more negative" : "raise the cathode resistor in steps of a tenth"} or lower the line voltage that reaches the set.`
      : "Watch the plate in the dark on first power; check the line voltage that reaches the set.",
    ...(over ? { holds: "full-line" as const } : {}),
  });
}

/** The grid stands below the reference by more than a leak or a meter would put it there. */
const hasFixedBias = ({ gridVolts, cathodeVolts }: TubeWork): boolean => gridVolts + cathodeVolts < -1;

/** Ik = Vk / Rk: the current that the tube really draws, from the voltage read at its cathode. */
function fromReadings(check: Check, model: ChassisModel, life: Life, tube: Tube): Finding[] {
  const { part, state } = tube;
  const limits = state.limits;
  const cathode = state.pins.cathode;
  const work = workOf(model, life, tube, "actual");
  if (limits?.plateWatts === undefined || cathode === undefined || cathode === model.reference) return [];
  const readings = standingReadings(model).map(({ reading }) => reading);
  const direct = (point: string | undefined, condition: string) =>
    readings.find(
      ({ at, to, quantity, condition: own }) => at === point && to === model.reference && quantity === "dc-volts" && own === condition,
    )?.value;
  return work.flatMap((simulation): Finding[] => {
    const cathodeVolts = direct(cathode, simulation.condition);
    const resistance = parallel(model, life, cathode);
    if (cathodeVolts === undefined || resistance === undefined || simulation.cathodeAmps <= 0) return [];
    const share = shareOfCathode(model, life, tube, simulation);
    const cathodeAmps = (cathodeVolts / resistance) * share;
    const plateShare = simulation.plateAmps / simulation.cathodeAmps;
    const plateRead = direct(state.pins.plate, simulation.condition);
    const plateVolts = plateRead === undefined ? simulation.plateVolts : plateRead - cathodeVolts;
    const plateWatts = cathodeAmps * plateShare * plateVolts;
    const shared = share < 1 ? ` * ${percent(share)} (its part of the common cathode, simulation)` : "";
    const how = `${volts(cathodeVolts)} / ${ohms(resistance)}${shared} = ${amps(cathodeAmps)}, ${percent(plateShare)} of it to the plate (simulation), ${volts(plateVolts)} ${plateRead === undefined ? "simulated" : "read"} across the tube`;
    const figures = [
      atMost(plateWatts, limits.plateWatts ?? 0, {
        label: `plate dissipation of ${part.name} from the readings`,
        unit: "W",
        how,
        source: limits.source,
      }),
      figure(
        `cathode current of ${part.name} from the readings`,
        cathodeAmps,
        "A",
        `${volts(cathodeVolts)} over ${ohms(resistance)}`,
        "job",
      ),
    ];
    return [
      verdict(
        check,
        life,
        part,
        state,
        simulation,
        `${volts(cathodeVolts)} at the cathode: ${amps(cathodeAmps)}, about ${watts(plateWatts)} at the plate`,
        figures,
        "read",
      ),
    ];
  });
}

/** What a tube draws of the current in a cathode resistor that several tubes share, as the simulation splits it. */
function shareOfCathode(model: ChassisModel, life: Life, { state }: Tube, own: TubeWork): number {
  const together = tubesIn(model, life)
    .filter((other) => other.state.pins.cathode === state.pins.cathode)
    .flatMap((other) => workOf(model, life, other, "actual").filter(({ condition }) => condition === own.condition))
    .reduce((sum, { cathodeAmps }) => sum + cathodeAmps, 0);
  return together > own.cathodeAmps ? own.cathodeAmps / together : 1;
}

/** Resistors between a cathode and the reference, in parallel. */
function parallel(model: ChassisModel, life: Life, cathode: string): number | undefined {
  const conductance = allIn(model, life, "resistor").reduce((sum, { state }) => {
    const ends = endsOf(state);
    return ends?.includes(cathode) === true && ends.includes(model.reference) && state.main !== undefined
      ? sum + 1 / state.main.value
      : sum;
  }, 0);
  return conductance > 0 ? 1 / conductance : undefined;
}

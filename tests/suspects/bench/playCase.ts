/** Plays one case: first readings, search, the measurement that the search asks for, search again. */
import type { searchSuspects } from "@underchassis/grading";
import type { ChassisModel, Reading, ReadingQuantity } from "../../../packages/grading/src/model/index.ts";
import type { CaseFile, StoredReadings } from "../cases/caseFile.ts";
import { METER_INPUT_OHMS, SHARE, type StoredQuantity } from "../cases/meterError.ts";
import type { Play } from "../chassisFiles.ts";
import { type Asked, lookUp } from "./lookUp.ts";

export type Search = (model: ChassisModel, options: NonNullable<Parameters<typeof searchSuspects>[1]>) => Report;

/** As much of the search's report as the benchmark looks at. */
export type Report = Pick<
  ReturnType<typeof searchSuspects>,
  "verdict" | "healthy" | "noneOfThese" | "suspects" | "next" | "hypotheses" | "unexplained"
>;

/** Effort of a measurement: the leads lie on it, live, with ripple to be told from volts, a lead to be lifted. */
const COST: Readonly<Record<string, number>> = { ohms: 1, "dc-volts": 2, "ripple-volts": 4, "ac-volts": 4 };

export interface Played {
  report: Report;
  /** The report from the first readings alone. */
  first: Report;
  readings: readonly Reading[];
  measurements: number;
  cost: number;
  /** The search asked for something that the tables do not hold. */
  unanswered: boolean;
  searches: number;
  cpuSeconds: number;
  hypotheses: number;
}

export interface PlaySetting {
  model: ChassisModel;
  file: CaseFile;
  play: Play;
  search: Search;
  /** Most measurements after the first readings. */
  measurements: number;
}

function readingOf(asked: Asked, value: number, index: number): Reading {
  const accuracy = SHARE[asked.quantity as StoredQuantity] ?? 0.01;
  const meter = {
    id: "bench",
    title: "digital multimeter",
    inputOhms: METER_INPUT_OHMS,
    accuracy,
    testVolts: 0.3,
    source: "common-practice",
  };
  return {
    index,
    at: asked.at,
    to: asked.to,
    quantity: asked.quantity as ReadingQuantity,
    condition: asked.condition,
    life: "found",
    value,
    asWritten: String(value),
    meter,
    loadOhms: METER_INPUT_OHMS,
    location: { file: "job.json", path: "/readings" } as unknown as Reading["location"],
  };
}

/** The chassis' first readings as a meter shows them. */
function firstReadings({ file, play }: Pick<PlaySetting, "file" | "play">, stored: StoredReadings): Reading[] {
  const asked = [
    ...play.dc.map((at) => ({ at, to: file.reference, quantity: "dc-volts", condition: play.condition })),
    ...play.ripple.map((at) => ({ at, to: file.reference, quantity: "ripple-volts", condition: play.condition })),
  ];
  return asked.map((each, index) => {
    const value = lookUp(file, stored, each, stored.seed);
    if (value === undefined) throw new Error(`${file.chassis}: no ${each.quantity} at ${each.at}`);
    return readingOf(each, value, index);
  });
}

function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

export function playCase(setting: PlaySetting, stored: StoredReadings): Played {
  const { model, file, search } = setting;
  const readings = firstReadings(setting, stored);
  const begin = cpu();
  let report = search(model, { readings, top: 10 });
  const first = report;
  let [measurements, cost, searches, hypotheses, unanswered] = [0, 0, 1, report.hypotheses, false];
  while (measurements < setting.measurements && report.next !== undefined) {
    const { at, to, quantity, condition } = report.next;
    const known = model.compile({ life: "found", condition, line: "actual" });
    const asked = { at: known.pointOf(at) ?? at, to: known.pointOf(to) ?? to, quantity, condition };
    const value = lookUp(file, stored, asked, stored.seed);
    if (value === undefined) {
      unanswered = true;
      break;
    }
    measurements += 1;
    cost += COST[quantity] ?? 6;
    readings.push(readingOf({ at, to, quantity, condition }, value, readings.length));
    report = search(model, { readings, top: 10 });
    searches += 1;
    hypotheses += report.hypotheses;
  }
  return { report, first, readings, measurements, cost, unanswered, searches, hypotheses, cpuSeconds: cpu() - begin };
}

import type { SteadyState } from "@underchassis/calc";
import type { Report } from "@underchassis/dataset";
import { poweredConditions } from "../checks/shared/stress.ts";
import type { ChassisModel } from "../model/index.ts";

type ExpectedLine = Report["expected"][number];

/** Points worth a line of their own: where stages meet, and where a reading was taken. Tapped windings and the line side are left out. */
function mainPoints(model: ChassisModel): Map<string, string | undefined> {
  const points = new Map<string, string | undefined>();
  for (const stage of model.stages) {
    if (stage.template.family === "line") continue;
    for (const terminal of stage.template.terminals) {
      const point = stage.points[terminal.id];
      if (point !== undefined && !points.has(point)) points.set(point, stage.id);
    }
    for (const expected of stage.template.expected) {
      const point = expected.at === undefined ? undefined : stage.points[expected.at];
      if (point !== undefined && !points.has(point)) points.set(point, stage.id);
    }
  }
  for (const reading of model.readings)
    if (reading.quantity.endsWith("volts") && !points.has(reading.at)) points.set(reading.at, undefined);
  if (points.size === 0) for (const [point, parts] of model.points) if (parts.length > 1) points.set(point, undefined);
  points.delete(model.reference);
  return points;
}

/** Below this a point carries no direct voltage worth a line. */
const WORTH_VOLTS = 0.05;

/** What the chassis as it stands should read at its main points on today's line, in every powered condition. */
export function expectedLines(model: ChassisModel): ExpectedLine[] {
  const lines: ExpectedLine[] = [];
  const seen = new Set<SteadyState>();
  // Standby without a standby switch is operating again, and goes by that name.
  const isStandby = ({ like }: { like: string }) => Number(like === "standby");
  for (const condition of poweredConditions(model).sort((a, b) => isStandby(a) - isStandby(b))) {
    const situation = { life: "restored", condition: condition.id, line: "actual" } as const;
    const solved = model.solve(situation);
    if (!solved.ok || seen.has(solved.steady)) continue;
    seen.add(solved.steady);
    for (const [point, stage] of mainPoints(model)) {
      const prediction = model.predict(situation, { quantity: "dc-volts", at: point, to: model.reference });
      const name = solved.compiled.pointOf(point);
      const figures = name === undefined ? undefined : solved.steady.points.get(name);
      if (prediction === undefined || Math.abs(prediction.nominal) < WORTH_VOLTS) continue;
      // Ends of windings and the line side carry alternating voltage; their mean says nothing.
      if (figures !== undefined && figures.acRmsVolts > Math.abs(prediction.nominal)) continue;
      const read = model.readings.find(
        (reading) =>
          reading.life === "restored" &&
          reading.at === point &&
          reading.to === model.reference &&
          reading.condition === condition.id &&
          reading.quantity === "dc-volts",
      );
      lines.push({
        point,
        to: model.reference,
        condition: condition.id,
        quantity: "dc-volts",
        life: "restored",
        nominal: prediction.nominal,
        low: prediction.low,
        high: prediction.high,
        ...(figures === undefined ? {} : { ripple: figures.maxVolts - figures.minVolts }),
        ...(stage === undefined ? {} : { stage }),
        ...(read === undefined ? {} : { measured: read.value }),
      });
    }
  }
  return lines;
}

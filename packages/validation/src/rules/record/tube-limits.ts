import type { TubeRecord } from "@underchassis/dataset";
import type { Complaint, RecordRule } from "../../model/rule.ts";

type Point = TubeRecord["typical"][number];

/** Half of the last digit that sheets print: many points sit at exactly 100 % of a limit. */
const ROUNDING = 1.01;
/** Small diodes are measured a little beyond the peak that they bear for long. */
const DROP_MARGIN = 1.5;
/** Twice what the largest filament of the dataset takes. */
const MOST_HEATER_WATTS = 150;

/** mu = gm rp at one point (van der Bijl's relation, common-practice); sheets round each, and all of the dataset come within 15 %. */
const MU_RATIO = 1.3;
/** Both ways to feed a heater take the same power, but for the rounding of the sheet. common-practice. */
const HEATER_RATIO = 1.03;

/** A tube's published operation keeps its limits. */
export const tubeLimits: RecordRule = {
  code: "UC-425",
  name: "tube-limits",
  scope: "record",
  severity: "error",
  title: "A tube's published operation lies within its limits, and its heater takes a power that a heater can have",
  why: "A limit below what the maker publishes as usual calls sound sets wrong; mostly it is milliamperes taken for amperes.",
  bad: '"limits": { "plateVolts": 30 } beside a typical "plateVolts": 250',
  good: '"limits": { "plateVolts": 300 } beside a typical "plateVolts": 250',
  kinds: ["tube"],
  check(record) {
    const { heater, limits, typical, units } = record.value as TubeRecord;
    const watts = heater.volts * heater.amps;
    return [
      ...(watts <= MOST_HEATER_WATTS
        ? []
        : [
            {
              at: { path: ["heater", "amps"] },
              message: `a heater of ${shown(watts)} W`,
              received: `${heater.volts} V, ${heater.amps} A`,
              expected: `at most ${MOST_HEATER_WATTS} W; amperes, not milliamperes`,
            },
          ]),
      ...(limits.dcAmps === undefined || limits.peakAmps === undefined || limits.dcAmps < limits.peakAmps
        ? []
        : [
            {
              at: { path: ["limits", "dcAmps"] },
              message: "the direct current is not below the peak current",
              received: `${limits.dcAmps} A`,
              expected: `less than ${limits.peakAmps} A`,
              help: "a rectifier conducts for a part of the time: its peaks are several times the direct current",
            },
          ]),
      ...heaterFaults(heater),
      ...typical.flatMap(pointFaults),
      // The other units of a bulb have limits of their own, which the record does not hold; ICAS points stand beside CCS limits.
      ...typical.flatMap((point, index) =>
        /ICAS/.test(point.service) || (point.unit ?? 1) > 1 ? [] : faultsAt(point, index, limits, units),
      ),
    ];
  },
};

function heaterFaults({ volts, amps, parallel }: TubeRecord["heater"]): Complaint[] {
  if (parallel === undefined) return [];
  const [series, beside] = [volts * amps, parallel.volts * parallel.amps];
  return Math.max(series / beside, beside / series) <= HEATER_RATIO
    ? []
    : [
        {
          at: { path: ["heater", "amps"] },
          message: "the heater takes another power in series than in parallel",
          received: `${volts} V, ${amps} A: ${shown(series)} W`,
          expected: `${shown(beside)} W, as with ${parallel.volts} V, ${parallel.amps} A`,
        },
      ];
}

/** What a published point contradicts by itself. */
function pointFaults({ gridVolts, mu, plateOhms, siemens }: Point, index: number): Complaint[] {
  const wrong: Complaint[] = [];
  if (gridVolts !== undefined && gridVolts > 0)
    wrong.push({
      at: { path: ["typical", index, "gridVolts"] },
      message: "a grid that is positive without drive",
      received: `${gridVolts} V`,
      expected: `zero or less: -${gridVolts}`,
      rank: -0.5,
    });
  if (mu !== undefined && plateOhms !== undefined && siemens !== undefined) {
    const ratio = mu / (plateOhms * siemens);
    if (ratio > MU_RATIO || ratio < 1 / MU_RATIO)
      wrong.push({
        at: { path: ["typical", index, "mu"] },
        message: "mu is not the product of plate resistance and transconductance",
        received: `${mu}, and ${plateOhms} ohm * ${siemens} S = ${shown(plateOhms * siemens)}`,
        expected: "all three in SI units: 62.5 kohm is 62500, 1600 umho is 0.0016",
        rank: -0.5,
      });
  }
  return wrong;
}

function faultsAt(point: Point, index: number, limits: TubeRecord["limits"], units: TubeRecord["units"]): Complaint[] {
  const { plateVolts = 0, screenVolts = 0, plateAmps = 0, screenAmps = 0, dropAmps, service } = point;
  const classC = /class C/.test(service);
  const beyond = (limit: keyof TubeRecord["limits"], value: number, unit: string, property: string, margin = 1): Complaint[] => {
    const most = limits[limit];
    if (typeof most !== "number" || value <= margin * most) return [];
    return [
      {
        at: { path: ["typical", index, property] },
        message: `the published operation is beyond the limit "${limit}"`,
        received: `${shown(value)} ${unit}`,
        expected: `at most ${most} ${unit}`,
        help: "one of the two is wrong, or in another unit",
      },
    ];
  };
  return [
    ...beyond("plateVolts", plateVolts, "V", "plateVolts"),
    ...beyond("screenVolts", screenVolts, "V", "screenVolts"),
    ...(classC || /for a moment/.test(service) ? [] : beyond("plateWatts", plateVolts * plateAmps, "W", "plateAmps", ROUNDING)),
    ...beyond("screenWatts", screenVolts * screenAmps, "W", "screenAmps", ROUNDING),
    // Transmitting records hold the plate current limit under cathodeAmps.
    ...beyond("cathodeAmps", plateAmps + (classC ? 0 : screenAmps), "A", "plateAmps", ROUNDING),
    // Sheets print the drop at more than the direct current, mostly at twice: that is a peak.
    ...(units[0]?.kind === "gas-regulator"
      ? beyond("maxRegulatorAmps", dropAmps ?? 0, "A", "dropAmps")
      : beyond("peakAmps", dropAmps ?? 0, "A", "dropAmps", DROP_MARGIN)),
  ];
}

const shown = (value: number): number => Number(value.toPrecision(3));

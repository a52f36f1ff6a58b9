import type { Report } from "@underchassis/dataset";
import { fixtureFindings } from "./fixtureFindings.ts";
import { fixtureReadings } from "./fixtureReadings.ts";
import { fixtureStages } from "./fixtureStages.ts";
import { fixtureSuspects } from "./fixtureSuspects.ts";

/** A full-wave supply and an output stage with everything that a report can hold. For tests only. */
export const fixtureReport: Report = {
  reportVersion: 1,
  tool: { name: "underchassis", version: "0.1.0" },
  dataset: { version: "0.3.0", jobWrittenFor: "0.2.0" },
  job: {
    title: "Lighthouse six-tube receiver",
    file: "lighthouse/job.json",
    description: "Table set, found in a barn; power transformer warm to the touch after a minute.",
    era: 1938,
    assembly: "factory",
    isolation: "transformer",
    line: { designVolts: 117, actualVolts: 122, lowVolts: 118, highVolts: 125, hertz: 60 },
    partCount: 6,
    stageCount: 2,
    readingCount: 5,
    notes: ["The cord was replaced before this sheet was begun."],
  },
  cautions: [
    {
      id: "high-voltage",
      title: "Lethal voltage is present under the chassis when it is powered",
      text: "Plate supplies here reach several hundred volts and can kill. Work with the plug pulled; when a reading needs power, clip the meter on first, keep one hand away and do not work alone. Line wiring follows local codes and belongs to licensed people where the law says so.",
      because: [],
    },
    {
      id: "stored-charge",
      title: "Filter capacitors hold their charge after the plug is pulled",
      text: "Discharge each filter section through a resistor and check it with a meter before you touch anything; check again, since the charge can creep back.",
      because: ["C1", "C2", "stage supply"],
    },
    {
      id: "line-to-chassis",
      title: "The chassis may stand at line potential",
      text: "A shorted line capacitor puts the line on the chassis. Use an isolating transformer and measure chassis to earth first.",
      because: ["C9"],
    },
  ],
  clearance: {
    level: "none",
    next: "current-limited",
    meaning: "Do not connect it to power.",
    holds: [
      { step: "current-limited", reason: "C1 stands above its rated voltage", finding: 0 },
      { step: "current-limited", reason: "C9 bridges line and chassis", finding: 1 },
      { step: "full-line", reason: "Leaking coupling capacitor at V5", finding: 2 },
      { step: "service", reason: "Resistance from B+ to chassis has not been measured", finding: -1 },
    ],
    notMade: ["Heater current of V2 and V3: the dataset does not know the tubes' heaters"],
    steps: [
      { level: "none", reached: true, text: "cold checks at the bench, plug pulled" },
      { level: "current-limited", reached: false, text: "first power through a current-limiting lamp" },
      { level: "full-line", reached: false, text: "power from the line, watched and metered" },
      { level: "service", reached: false, text: "back in its cabinet and in use" },
    ],
  },
  counts: { danger: 2, replace: 1, adjust: 1, watch: 0, unmeasured: 1, good: 1 },
  findings: fixtureFindings,
  stages: fixtureStages,
  readings: fixtureReadings,
  suspects: fixtureSuspects,
  expected: [
    {
      point: "B+",
      to: "chassis",
      condition: "operating",
      quantity: "dc-volts",
      life: "restored",
      nominal: 263.4,
      low: 247,
      high: 281,
      ripple: 0.31,
      stage: "supply",
      measured: 258,
    },
    {
      point: "V5 plate",
      to: "chassis",
      condition: "operating",
      quantity: "dc-volts",
      life: "restored",
      nominal: 251,
      low: 234,
      high: 269,
      stage: "audio",
    },
  ],
  changes: [
    {
      part: "C1",
      title: "first filter capacitor",
      what: "replaced",
      from: "8 uF 450 V",
      to: "47 uF 450 V",
      why: "open",
      planned: false,
      effects: [
        { label: "B+ raw", unit: "V", condition: "operating", before: 291, after: 318 },
        { label: "rectifier peak current", unit: "A", condition: "operating", before: 0.212, after: 0.436, limit: 0.4, limitSource: "S41" },
      ],
    },
    { part: "C9", title: "line bypass capacitor", what: "removed", from: ".05/600", to: "", planned: true, effects: [] },
  ],
  order: [
    { what: "capacitor 47 uF 500 V 105 degC", quantity: 2, for: ["C1", "C2"], why: ["rating above the switch-on voltage"] },
    { what: "capacitor 0.047 uF 630 V film", quantity: 1, for: ["C7"], why: ["leaking"] },
  ],
  next: [
    { action: "Replace C1 with a part rated 500 V", why: "C1 stands above its rated voltage", cautions: ["stored-charge"], step: "none" },
    {
      action: "Measure resistance from B+ to chassis",
      why: "holds back first power",
      expect: "more than 20 kohm once the capacitors have charged",
      cautions: ["stored-charge", "high-voltage"],
      step: "none",
    },
  ],
  checks: [
    { id: "filter-voltage-rating", title: "Voltage ratings of filter capacitors", area: "filters", outcome: "danger", findings: 1 },
    { id: "ripple", title: "Ripple at the supply's outputs", area: "filters", outcome: "good", findings: 1 },
    { id: "fuse-size", title: "Size of the line fuse", area: "line", outcome: "unmeasured", note: "needs heater currents", findings: 1 },
    {
      id: "balancing",
      title: "Series capacitors share their voltage",
      area: "filters",
      outcome: "not-applicable",
      note: "no capacitors in series",
      findings: 0,
    },
  ],
  sources: [
    { id: "computed", kind: "computed", title: "Follows from the chassis as recorded" },
    { id: "S41", kind: "published", title: "A handbook of receiving tubes, 1940, page 12" },
    { id: "S12", kind: "published", title: "Standard for fixed composition resistors, table 2" },
    { id: "common-practice", kind: "common-practice", title: "What the trade does, without one source" },
    { id: "from-memory", kind: "from-memory", title: "Not looked up" },
  ],
  warnings: [{ message: "tube type not in the dataset; its heater is left out", file: "job.json", line: 31, column: 9 }],
};

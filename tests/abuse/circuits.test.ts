/** Jobs that read well and make no sense as circuits: a report or a diagnostic at its place, never an exception, in bounded time. */
import type { Job, JobPart } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { type GradeResult, gradeJob } from "@underchassis/grading";
import { describe, expect, it } from "vitest";

const dataset = loadDataset();
const NAME = "bench/job.json";

function grade(parts: readonly JobPart[], more: Partial<Job> = {}): { result: GradeResult; seconds: number } {
  const job = { format: 1, title: "abuse", chassis: { line: { designVolts: "117 V", hertz: 60 } }, ...more, parts };
  const start = process.cpuUsage();
  const result = gradeJob({ job: { name: NAME, text: JSON.stringify(job, null, 1) } }, dataset, { toolVersion: "0.0.0" });
  const { user, system } = process.cpuUsage(start);
  return { result, seconds: (user + system) / 1e6 };
}

const two = (kind: JobPart["kind"], name: string, a: string, b: string, marked?: string, more: Partial<JobPart> = {}): JobPart => ({
  name,
  kind,
  between: [a, b],
  ...(marked === undefined ? {} : { marked }),
  ...more,
});
const transformer = (hv = "300 V 100 mA", primary = "117 V"): JobPart => ({
  name: "T1",
  kind: "transformer",
  windings: {
    primary: { between: ["line hot", "line neutral"], marked: primary, measured: "3 ohm" },
    hv: { between: ["hv", "chassis"], marked: hv },
  },
});
const supply: readonly JobPart[] = [
  transformer(),
  { name: "D1", kind: "rectifier", type: "1N4007", between: ["hv", "B+"] },
  two("capacitor", "C1", "B+", "chassis", "20 uF 450 V"),
  two("resistor", "R1", "B+", "chassis", "10 kohm 10 W"),
];
const measuredAs = (measured: NonNullable<JobPart["measured"]>) => supply.map((part) => ({ ...part, measured }));
/** A resistor from B+ to a point that another 10 kohm holds. */
const inSeries = (marked: string, more: Partial<JobPart> = {}): JobPart[] => [
  ...supply,
  two("resistor", "R2", "B+", "C+", marked, more),
  two("resistor", "R3", "C+", "chassis", "10 kohm"),
];
const without = (name: string): JobPart[] => supply.filter((part) => part.name !== name);

const REPORTS: readonly [string, readonly JobPart[]][] = [
  ["no parts at all", []],
  ["every part open", measuredAs({ condition: "open" })],
  ["every part shorted", measuredAs({ condition: "shorted" })],
  ["every part taken out", supply.map((part) => ({ ...part, removed: true }))],
  [
    "a loop of wires",
    [...supply, two("wire", "J1", "a", "b"), two("wire", "J2", "b", "c"), two("wire", "J3", "c", "a"), two("wire", "J4", "a", "B+")],
  ],
  ["a secondary shorted by a wire", [...supply, two("wire", "J1", "hv", "chassis")]],
  ["a secondary shorted by a hundredth of an ohm", [...supply, two("resistor", "R2", "hv", "chassis", "0.01 ohm")]],
  ["a resistor of no ohms in series", inSeries("0 ohm")],
  ["a resistor measured as no ohms", inSeries("100 ohm", { measured: { value: "0 ohm" } })],
  ["a resistor of no ohms across the supply", [...supply, two("resistor", "R2", "B+", "chassis", "0 ohm")]],
  ["a capacitor measured as nothing", [...supply, two("capacitor", "C2", "B+", "chassis", "10 uF 450 V", { measured: { value: "0 uF" } })]],
  [
    "a rectifier tube without any emission",
    [
      ...without("D1"),
      { name: "V1", kind: "rectifier", type: "5Y3GT", measured: { emission: "0 %" }, pins: { "plate-1": "hv", cathode: "B+" } },
    ],
  ],
  ["a capacitor of one farad", [...supply, two("capacitor", "C2", "B+", "chassis", "1000000 uF")]],
  ["a capacitor of a millionth of a picofarad", [...supply, two("capacitor", "C2", "B+", "chassis", "0.000001 pF")]],
  [
    "resistors of a million megohms",
    [...supply, two("resistor", "R2", "B+", "x", "1000 Gohm"), two("resistor", "R3", "x", "chassis", "1000 Gohm")],
  ],
  ["windings of no current", [transformer("300 V 0 mA", "117 V 0 A"), ...without("T1")]],
  [
    "an inrush limiter of no current",
    [...inSeries("100 ohm"), two("thermistor", "RT1", "C+", "D+", "10 ohm 0 A"), two("resistor", "R4", "D+", "chassis", "10 kohm")],
  ],
];

describe("a report", () => {
  it.each(REPORTS)("for %s", (_name, parts) => {
    const { result, seconds } = grade(parts);
    if (!result.ok) throw new Error(JSON.stringify(result.diagnostics, null, 1));
    expect(result.report.checks.filter(({ outcome }) => outcome === "failed")).toEqual([]);
    expect(JSON.stringify(result.report)).not.toMatch(/NaN|undefined|\[object/);
    expect(seconds).toBeLessThan(5);
  });

  it("clears nothing where there was nothing to look at", () => {
    const { result } = grade([]);
    expect(result.ok && result.report.clearance.level).toBe("none");
  });

  it("for a dead short where the supply was never cleared for the full line", () => {
    const { result } = grade(measuredAs({ condition: "shorted" }));
    expect(result.ok && ["none", "current-limited"].includes(result.report.clearance.level)).toBe(true);
  });
});

const REFUSED: readonly [string, readonly JobPart[], RegExp][] = [
  ["a negative measured resistance", inSeries("10 kohm", { measured: { value: "-5 kohm" } }), /value-unreadable/],
  ["a capacitor of no farads", [...supply, two("capacitor", "C2", "B+", "chassis", "0 uF")], /value-unreadable/],
  ["a hundred farads", [...supply, two("capacitor", "C2", "B+", "chassis", "100 F")], /value-unreadable/],
  [
    "a fuse of no amperes",
    [...supply, two("fuse", "F1", "B+", "C+", "0 A"), two("resistor", "R3", "C+", "chassis", "10 kohm")],
    /value-unreadable/,
  ],
  ["a primary of no volts", [transformer("300 V", "0 V"), ...without("T1")], /value-unreadable/],
  ["a load that nothing could feed", [...supply, two("load", "L1", "B+", "chassis", "50 A")], /circuit-no-convergence/],
  [
    "a battery that a wire shorts",
    [two("battery", "BT", "a", "chassis", "90 V"), two("wire", "J1", "a", "b"), two("wire", "J2", "b", "chassis")],
    /circuit-/,
  ],
  [
    "a part that hangs in the air",
    [...supply, two("resistor", "R2", "x", "y", "1 kohm"), two("resistor", "R3", "y", "x", "1 kohm")],
    /circuit-floating-point/,
  ],
  ["both leads of a wire on one point", [...supply, two("wire", "J1", "B+", "B+")], /leads-shorted/],
];

describe("a diagnostic", () => {
  it.each(REFUSED)("for %s, at its place", (_name, parts, code) => {
    const { result, seconds } = grade(parts);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    const errors = result.diagnostics.filter(({ severity }) => severity === "error");
    expect(errors.length).toBeGreaterThan(0);
    for (const error of errors) {
      expect(error.code).toMatch(code);
      expect(error.file).toBe(NAME);
      expect(error.line).toBeGreaterThan(1);
      expect(error.column).toBeGreaterThan(0);
    }
    expect(seconds).toBeLessThan(5);
  });
});

describe("size", () => {
  const battery = two("battery", "BT", "p0", "chassis", "300 V");

  it("two thousand parts on two points", () => {
    const many = Array.from({ length: 1999 }, (_, index) => two("resistor", `R${index}`, "p0", "chassis", "1 Mohm 1 W"));
    const { result, seconds } = grade([battery, ...many]);
    expect(result.ok && result.report.job.partCount).toBe(2000);
    expect(seconds).toBeLessThan(20);
  });

  it("a ladder of two hundred points", () => {
    const rungs = Array.from({ length: 400 }, (_, index) => {
      const from = Math.floor(index / 2);
      return two("resistor", `R${index}`, `p${from}`, index % 2 === 0 ? `p${from + 1}` : "chassis", "1 kohm 1 W");
    });
    const { result, seconds } = grade([battery, ...rungs]);
    expect(result.ok).toBe(true);
    expect(seconds).toBeLessThan(20);
  });
});

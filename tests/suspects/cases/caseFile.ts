/** What is stored of the benchmark: readings of seeded chassis, five significant digits. Meter errors are added when they are read. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { SeededFault } from "../faults/seededFault.ts";

const FOLDER = new URL("../data/", import.meta.url);

/** At every point of the file's `points`, in order; null where the condition did not settle. */
export interface PoweredReadings {
  /** Mean volts against the reference, without a meter. */
  volts: number[];
  /** Peak to peak volts. */
  ripple: number[];
  /**
   * Ohms that a meter sees: a meter of R ohms shows R / (R + ohms) of the volts. 0 at a point that nothing but insulation
   * holds: its volts were simulated with the meter in place.
   */
  sourceOhms: number[];
}

export interface StoredReadings {
  /** What the values within their tolerances were drawn with. */
  seed: string;
  /** Ohms between each of the file's `pairs`; null: open. */
  cold: (number | null)[];
  operating: PoweredReadings;
  /** Null: no steady state was found. Absent: the chassis has no such condition. */
  "tubes-out"?: PoweredReadings | null;
}

export interface StoredCase extends StoredReadings {
  /** One fault; two for a chassis whose trouble is not a single fault. */
  faults: SeededFault[];
  /** Some stored reading is more than three standard deviations from the healthy chassis. */
  detectable: boolean;
  /** The same for the first readings of the chassis alone. */
  atFirstReadings: boolean;
}

export interface CaseFile {
  chassis: string;
  simulator: string;
  /** Digest of the healthy chassis' netlist: a changed job, tube record or exporter shows as stale figures. */
  netlist: string;
  reference: string;
  points: string[];
  pairs: [string, string][];
  nominal: StoredReadings;
  healthy: StoredReadings[];
  cases: StoredCase[];
  /** Networks of which the simulator, asked again with care, still says something else than our engine, and by how much. */
  disagreements: string[];
  /** What was drawn and not kept, by reason. */
  redrawn: Record<string, number>;
}

const pathOf = (id: string): string => fileURLToPath(new URL(`${id}.json`, FOLDER));

const round = (value: unknown): unknown => {
  if (typeof value === "number") return Number(value.toPrecision(5));
  if (Array.isArray(value)) return value.map(round);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, round(held)]));
};

/** One healthy chassis or case a line, so that a change shows as what it is. */
export function writeCaseFile(file: CaseFile): void {
  const { healthy, cases, ...head } = file;
  const rows = (list: readonly unknown[]): string => `[\n${list.map((each) => JSON.stringify(round(each))).join(",\n")}\n]`;
  const text = `${JSON.stringify(round(head)).slice(0, -1)},\n"healthy":${rows(healthy)},\n"cases":${rows(cases)}}\n`;
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(pathOf(file.chassis), text);
}

export function readCaseFile(id: string): CaseFile | undefined {
  const path = pathOf(id);
  return existsSync(path) ? (JSON.parse(readFileSync(path, "utf8")) as CaseFile) : undefined;
}

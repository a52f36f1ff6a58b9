/** What is stored of one simulated circuit: plain figures, rounded to 7 significant digits, keys in order. */
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Figures } from "./trace-figures.ts";

export interface ElementRecord {
  volts: Figures;
  amps: Figures;
  watts: number;
  /** Further electrodes: mean amps. */
  electrodes?: Record<string, number>;
}

export interface OracleRecord {
  simulator: string;
  /** Digest of the netlist: a changed circuit or exporter shows as a stale record. */
  netlist: string;
  points?: Record<string, Figures>;
  elements?: Record<string, ElementRecord>;
  /** Steady only: settling runs, last change of a state over a run, and change of point means between the last two windows. */
  settling?: { runs: number; drift: number; windows: number };
  /** Transient only: volts of each point at the sample instants; I^2 t of each element. */
  samples?: Record<string, number[]>;
  ampsSquaredSeconds?: Record<string, number>;
  /** Discharge only: seconds for each point to fall to the limit. */
  seconds?: Record<string, number>;
  /** Sensitivity only: rows of probes, columns of parameters. */
  sensitivities?: number[][];
  /** Ohmmeter only: ohms of each pair, null where there is no path. */
  ohms?: (number | null)[];
  /** Small signal only: [real, imaginary] gain of each output at each frequency. */
  gains?: Record<string, [number, number][]>;
}

const FOLDER = new URL("../data/", import.meta.url);

function pathOf(name: string, folder: URL): string {
  return fileURLToPath(new URL(`${name}.json`, folder));
}

function tidy(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(7));
  if (Array.isArray(value)) return value.map(tidy);
  if (value === null || typeof value !== "object") return value;
  const entries = Object.entries(value).filter(([, held]) => held !== undefined);
  return Object.fromEntries(entries.sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, held]) => [key, tidy(held)]));
}

/** Short digest of netlist lines and analysis. */
export function digestOf(lines: readonly string[], analysis: unknown): string {
  return createHash("sha256").update(lines.join("\n")).update(JSON.stringify(analysis)).digest("hex").slice(0, 16);
}

export function writeRecord(name: string, record: OracleRecord, folder: URL = FOLDER): void {
  writeFileSync(pathOf(name, folder), `${JSON.stringify(tidy(record), null, 1)}\n`);
}

/** The stored record; undefined when there is none. */
export function readRecord(name: string, folder: URL = FOLDER): OracleRecord | undefined {
  const path = pathOf(name, folder);
  return existsSync(path) ? (JSON.parse(readFileSync(path, "utf8")) as OracleRecord) : undefined;
}

/** Names of all stored records. */
export function recordNames(folder: URL = FOLDER): string[] {
  return readdirSync(folder).flatMap((file) => (file.endsWith(".json") ? [file.slice(0, -".json".length)] : []));
}

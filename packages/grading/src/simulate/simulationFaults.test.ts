import { expect, it } from "vitest";
import { buildModel } from "../grade/gradeJob.ts";
import type { Diagnostic } from "../model/index.ts";
import { smallDataset } from "../testing/smallDataset.ts";

const CHASSIS = '"format": 1, "title": "t", "chassis": { "line": { "designVolts": "117 V", "hertz": 60 } }';

/** One part a line, from line 2 on. */
function faults(...parts: string[]): Diagnostic[] {
  const text = `{ ${CHASSIS}, "parts": [\n${parts.join(",\n")}\n] }`;
  const built = buildModel({ job: { name: "bench/job.json", text } }, smallDataset());
  return built.ok ? [] : built.diagnostics.filter(({ severity }) => severity === "error");
}
const part = (name: string, kind: string, a: string, b: string, marked: string, more = "") =>
  `  { "name": "${name}", "kind": "${kind}", "between": ["${a}", "${b}"], "marked": "${marked}"${more} }`;

const battery = part("BT", "battery", "B+", "chassis", "250 V");
const bleeder = part("R1", "resistor", "B+", "chassis", "100 kohm");

it("finds nothing wrong with a sound network", () => {
  expect(faults(battery, bleeder)).toEqual([]);
});

it("names a part that hangs in the air, its file, line and column", () => {
  const [fault, ...rest] = faults(battery, bleeder, part("R2", "resistor", "x", "y", "1 kohm"), part("R3", "resistor", "y", "x", "1 kohm"));
  expect(rest).toEqual([]);
  expect(fault).toMatchObject({ code: "circuit-floating-point", severity: "error", file: "bench/job.json", line: 4, column: 3 });
  expect(fault?.received).toMatch(/\b[xy]\b/);
  expect(fault?.help).toMatch(/bind|wire/);
});

it("names two sources across each other", () => {
  const [fault] = faults(battery, bleeder, part("BT2", "battery", "B+", "chassis", "90 V"));
  expect(fault?.code).toMatch(/^circuit-(source-loop|singular)$/);
  expect(`${fault?.received} ${fault?.message}`).toContain("BT2");
  expect(fault?.line).toBeGreaterThan(1);
});

it("names a source that a wire shorts", () => {
  const [fault] = faults(
    battery,
    bleeder,
    '  { "name": "J1", "kind": "wire", "between": ["B+", "tag"] }',
    '  { "name": "J2", "kind": "wire", "between": ["tag", "chassis"] }',
  );
  expect(fault?.code).toMatch(/^circuit-/);
  expect(`${fault?.received} ${fault?.message}`).toContain("BT");
});

it("names a line that a wire shorts", () => {
  const [fault] = faults(
    part("R1", "resistor", "line hot", "chassis", "1 kohm"),
    '  { "name": "J1", "kind": "wire", "between": ["line hot", "line neutral"] }',
  );
  expect(fault?.code).toMatch(/^circuit-/);
  expect(`${fault?.received} ${fault?.message}`).toContain("line");
});

it("names the wires that short a source as designed, and nothing else", () => {
  const [fault, ...rest] = faults(
    battery,
    bleeder,
    '  { "name": "J1", "kind": "wire", "between": ["B+", "tag"] }',
    '  { "name": "J2", "kind": "wire", "between": ["tag", "chassis"] }',
    '  { "name": "J3", "kind": "wire", "between": ["B+", "elsewhere"] }',
  );
  expect(rest).toEqual([]);
  expect(fault).toMatchObject({ code: "circuit-source-loop", received: "J1, J2", line: 4, column: 3 });
});

it("does not hold a short that was found on the chassis against the job", () => {
  const found = (from: string, to: string, wrong: string) =>
    `  { "name": "J1", "kind": "wire", "between": ["${from}", "${to}"], "foundBetween": ["${from}", "${wrong}"] }`;
  expect(faults(battery, bleeder, found("B+", "plate", "chassis"), part("R2", "resistor", "plate", "chassis", "1 kohm"))).toEqual([]);
  const lamp = part("R1", "resistor", "a", "line neutral", "1 kohm");
  expect(faults(found("line hot", "a", "line neutral"), lamp)).toEqual([]);
});

it("names a load that nothing feeds", () => {
  const [fault] = faults(
    battery,
    bleeder,
    part("LOAD", "load", "B++", "chassis", "60 mA"),
    part("C1", "capacitor", "B++", "chassis", "10 uF 450 V"),
  );
  expect(fault?.code).toMatch(/^circuit-/);
  expect(`${fault?.received} ${fault?.message}`).toMatch(/B\+\+/);
  expect(fault?.file).toBe("bench/job.json");
  expect([4, 5]).toContain(fault?.line);
});

it("does not hold an open part against the job: the gap is what was found", () => {
  const open = part("R2", "resistor", "B+", "plate", "1 kohm", ', "measured": { "condition": "open" }');
  const load = part("C1", "capacitor", "plate", "chassis", "10 uF 450 V");
  expect(faults(battery, bleeder, open, load, part("LOAD", "load", "plate", "chassis", "10 mA"))).toEqual([]);
});

it("asks no path of parts that no source feeds", () => {
  expect(faults(part("R1", "resistor", "a", "b", "47 kohm"), part("C1", "capacitor", "b", "c", "0.1 uF"))).toEqual([]);
});

import type { JobPart } from "@underchassis/dataset";

type Changes = Readonly<Record<string, Partial<JobPart> | null>>;

const changed = (parts: readonly JobPart[], changes: Changes): JobPart[] =>
  parts.flatMap((part) => {
    const change = changes[part.name];
    return change === null ? [] : [{ ...part, ...change }];
  });

const output: readonly JobPart[] = [
  { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "265 V" },
  { name: "V1", kind: "tube", type: "6V6GT", pins: { plate: "plate", screen: "B+", grid: "grid", cathode: "cathode" } },
  { name: "T1", kind: "inductor", marked: "10 H 50 ohm", between: ["B+", "plate"] },
  { name: "R1", kind: "resistor", role: "bias", marked: "250 ohm 5% 2 W", between: ["cathode", "chassis"] },
  { name: "R2", kind: "resistor", role: "gridLeak", marked: "470 kohm 5% 0.5 W", between: ["grid", "chassis"] },
  { name: "BD", kind: "battery", between: ["drive supply", "chassis"], marked: "200 V" },
  { name: "R3", kind: "resistor", role: "plateLoad", marked: "100 kohm 0.5 W", between: ["drive supply", "drive"] },
  { name: "C1", kind: "capacitor", role: "coupling", marked: "0.02 uF 400 V paper", between: ["drive", "grid"] },
];

/** A 6V6GT near its published point (250 V, 250 V, -12.5 V: 45 mA and 4.5 mA), driven through C1 from a point at 200 V. */
export function outputParts(changes: Changes = {}): JobPart[] {
  return changed(output, changes);
}

const amplifier: readonly JobPart[] = [
  { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "250 V" },
  { name: "V1", kind: "tube", type: "12AX7", pins: { plate: "plate", grid: "grid", cathode: "cathode" } },
  { name: "R1", kind: "resistor", role: "plateLoad", marked: "220 kohm 1 W", between: ["B+", "plate"] },
  { name: "R2", kind: "resistor", role: "bias", marked: "2.2 kohm 0.5 W", between: ["cathode", "chassis"] },
  { name: "R3", kind: "resistor", role: "gridLeak", marked: "1 Mohm 0.5 W", between: ["grid", "chassis"] },
];

/** One half of a 12AX7, resistance coupled: 220 k plate, 2.2 k cathode. */
export function amplifierParts(changes: Changes = {}): JobPart[] {
  return changed(amplifier, changes);
}

import type { JobPart } from "@underchassis/dataset";
import { type PartChanges, supplyParts } from "./supply.ts";

/** The full-wave supply with S2 in its output: open in standby; 10 uF, 30 kohm and a 60 mA load behind it. */
export function standbyParts(bypass: Partial<JobPart> | null, changes: PartChanges = {}): JobPart[] {
  return supplyParts({ LOAD: { between: ["B+ load", "chassis"], presentIn: ["operating"] }, ...changes }, [
    {
      name: "S2",
      kind: "switch",
      role: "standbySwitch",
      marked: "3 A 600 VDC",
      between: ["B+2", "B+ load"],
      positions: { standby: "open", operating: "closed", "tubes-out": "closed" },
    },
    { name: "C3", kind: "capacitor", marked: "10 uF 500 V", between: ["B+ load", "chassis"] },
    { name: "R3", kind: "resistor", marked: "30 kohm 10 W", between: ["B+ load", "chassis"] },
    ...(bypass === null ? [] : [{ name: "R2", kind: "resistor" as const, between: ["B+2", "B+ load"] as [string, string], ...bypass }]),
  ]);
}

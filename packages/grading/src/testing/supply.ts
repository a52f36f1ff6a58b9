import type { JobPart } from "@underchassis/dataset";

/** Parts of a test job, by name, with the changes that a test asks for; null leaves one out. */
export type PartChanges = Readonly<Record<string, Partial<JobPart> | null>>;

const base: readonly JobPart[] = [
  {
    name: "W1",
    kind: "cord",
    marked: "3-wire grounded cord",
    pins: {
      "hot-in": "line hot",
      "hot-out": "fuse in",
      "neutral-in": "line neutral",
      "neutral-out": "primary 2",
      "earth-in": "earth",
      "earth-out": "chassis",
    },
  },
  { name: "F1", kind: "fuse", marked: "T 1 A 250 V 5x20", between: ["fuse in", "switch in"] },
  { name: "S1", kind: "switch", role: "lineSwitch", marked: "3 A 250 V", between: ["switch in", "primary 1"] },
  {
    name: "T1",
    kind: "transformer",
    windings: {
      primary: { between: ["primary 1", "primary 2"], marked: "120 V", measured: "5 ohm" },
      hv: { between: ["plate 1", "chassis", "plate 2"], marked: "300-0-300 V 100 mA", measured: "200 ohm" },
      "rectifier-filament": { between: ["B+1", "filament 2"], marked: "5 V 2 A", measured: "0.1 ohm" },
      heaters: { between: ["chassis", "heater 2"], marked: "6.3 V 3 A", measured: "0.1 ohm" },
    },
  },
  { name: "V1", kind: "rectifier", type: "5Y3GT", pins: { "plate-1": "plate 1", "plate-2": "plate 2", cathode: "B+1" } },
  { name: "C1", kind: "capacitor", role: "filterInput", marked: "20 uF 450 V electrolytic", between: ["B+1", "chassis"] },
  { name: "L1", kind: "inductor", role: "filterChoke", marked: "10 H 100 mA 300 ohm", between: ["B+1", "B+2"] },
  { name: "C2", kind: "capacitor", role: "filterLater", marked: "20 uF 450 V electrolytic", between: ["B+2", "chassis"] },
  { name: "R1", kind: "resistor", role: "bleeder", marked: "100 kohm 5 W", between: ["B+2", "chassis"] },
  { name: "LOAD", kind: "load", marked: "60 mA", between: ["B+2", "chassis"] },
];

function changed(parts: readonly JobPart[], changes: PartChanges, more: readonly JobPart[]): JobPart[] {
  const kept = parts.flatMap((part) => {
    const change = changes[part.name];
    return change === null ? [] : [{ ...part, ...change }];
  });
  return [...kept, ...more];
}

/** A full-wave supply: 300-0-300 V, 5Y3GT, 20 uF, 10 H, 20 uF, 60 mA, fused and switched on a three-wire cord. */
export function supplyParts(changes: PartChanges = {}, more: readonly JobPart[] = []): JobPart[] {
  return changed(base, changes, more);
}

const universal: readonly JobPart[] = [
  {
    name: "W1",
    kind: "cord",
    marked: "2-wire polarized cord",
    pins: { "hot-in": "line hot", "hot-out": "switch in", "neutral-in": "line neutral", "neutral-out": "B-" },
  },
  { name: "S1", kind: "switch", role: "lineSwitch", marked: "3 A 125 V", between: ["switch in", "line 1"] },
  { name: "R1", kind: "resistor", role: "surgeLimiting", marked: "33 ohm 2 W", between: ["line 1", "plate"] },
  { name: "V1", kind: "rectifier", type: "35W4", pins: { plate: "plate", cathode: "B+1" } },
  { name: "C1", kind: "capacitor", role: "filterInput", marked: "40 uF 150 V electrolytic", between: ["B+1", "B-"] },
  { name: "R2", kind: "resistor", role: "dropping", marked: "1 kohm 2 W", between: ["B+1", "B+2"] },
  { name: "C2", kind: "capacitor", role: "filterLater", marked: "40 uF 150 V electrolytic", between: ["B+2", "B-"] },
  { name: "LOAD", kind: "load", marked: "50 mA", between: ["B+1", "B-"] },
  { name: "C9", kind: "capacitor", marked: "0.1 uF 400 V paper", between: ["B-", "chassis"] },
  { name: "R9", kind: "resistor", marked: "220 kohm 0.5 W", between: ["B-", "chassis"] },
];

/** A transformerless supply: 35W4 half-wave from 120 V, B- on the line's neutral, chassis isolated by 0.1 uF and 220 kohm. */
export function universalParts(changes: PartChanges = {}, more: readonly JobPart[] = []): JobPart[] {
  return changed(universal, changes, more);
}

/** The full-wave supply with two silicon diodes in place of the tube, as they stand in the maker's design. */
export function siliconSupply(type: string, changes: PartChanges = {}): JobPart[] {
  return supplyParts({ V1: null, ...changes }, [
    { name: "D1", kind: "rectifier", type, between: ["plate 1", "B+1"] },
    { name: "D2", kind: "rectifier", type, between: ["plate 2", "B+1"] },
  ]);
}

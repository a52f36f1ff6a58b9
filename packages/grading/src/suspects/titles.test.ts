import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { outputStageParts } from "../testing/suspectChassis.ts";
import { FAULT_KINDS, type Fault, type FaultKind } from "./fault.ts";
import { titleOf } from "./titles.ts";

const model = modelOf({ parts: [...outputStageParts] });

/** Each kind with its value, and the sentence that a restorer reads. */
const SENTENCES: readonly (readonly [FaultKind, Omit<Fault, "kind">, string])[] = [
  ["open", { part: "R1", element: "R1" }, "R1 is open"],
  ["open", { part: "T1", element: "T1.hv" }, "T1 hv is open"],
  ["short", { part: "C1", element: "C1" }, "C1 is shorted"],
  [
    "drift-high",
    { part: "R1", element: "R1", parameter: "ohms", value: 1834, nominal: 1000 },
    "R1 has risen to about 1.8 kohm from 1 kohm",
  ],
  ["drift-high", { part: "R1", element: "R1" }, "R1 has risen"],
  [
    "drift-low",
    { part: "R2", element: "R2", parameter: "ohms", value: 12e3, nominal: 47e3 },
    "R2 has fallen to about 12 kohm from 47 kohm",
  ],
  ["wrong-value", { part: "R2", element: "R2", parameter: "ohms", value: 4700, nominal: 47e3 }, "R2 is 4.7 kohm where 47 kohm belongs"],
  [
    "leaky",
    { part: "C2", element: "C2", parameter: "leakOhms", value: 51_234, nominal: Number.POSITIVE_INFINITY },
    "C2 leaks, about 51 kohm",
  ],
  ["lost-capacity", { part: "C1", element: "C1", parameter: "farads", value: 3.04e-6, nominal: 20e-6 }, "C1 has about 3 uF left of 20 uF"],
  ["high-esr", { part: "C1", element: "C1", parameter: "esrOhms", value: 42.3, nominal: 0 }, "C1 has a series resistance of about 42 ohm"],
  ["reversed", { part: "C1", element: "C1", parameter: "leakOhms", value: 2000 }, "C1 is the wrong way round"],
  ["exchanged", { part: "R1", element: "R1", with: "R2" }, "R1 and R2 are in each other's place"],
  ["moved-lead", { part: "R1", element: "R1", lead: "1", from: "B+", to: "plate" }, "R1: the second lead that belongs on B+ lies on plate"],
  [
    "moved-lead",
    { part: "V2", element: "V2", lead: "screen", from: "B+", to: "plate" },
    "V2: the screen lead that belongs on B+ lies on plate",
  ],
  ["bridge", { part: "grid", element: "grid", to: "B+", parameter: "ohms", value: 0.1 }, "grid and B+ are joined: solder, or a wire's end"],
  [
    "bridge",
    { part: "grid", element: "grid", to: "B+", parameter: "ohms", value: 8211 },
    "a path of about 8.2 kohm between grid and B+: dirt, or charred board",
  ],
  ["dead", { part: "V1", element: "V1/plate-1", also: ["V1/plate-2"] }, "V1 draws no current: dead, or not lit"],
  ["weak", { part: "V2", element: "V2", parameter: "emission", value: 0.41, nominal: 1 }, "V2 is weak: about 41 % of new"],
  [
    "gassy",
    { part: "V2", element: "V2", parameter: "gridOhms", value: 1.02e6 },
    "V2 is gassy: grid current as through 1 Mohm from its plate",
  ],
  ["electrode-short", { part: "V2", element: "V2", lead: "plate-screen" }, "V2: short between plate and screen"],
  [
    "electrode-short",
    { part: "V2", element: "V2", lead: "cathode-heater", parameter: "ohms", value: 330 },
    "V2: short between cathode and heater, about 330 ohm",
  ],
  [
    "shorted-turns",
    { part: "T1", element: "T1.primary", parameter: "turns", value: 0.06 },
    "T1 primary: shorted turns, about 6 % of the winding",
  ],
  [
    "line-voltage",
    { part: "line", element: "line", parameter: "rmsVolts", value: 101.4, nominal: 120 },
    "the line gives about 100 V, not 120 V",
  ],
];

describe("titleOf", () => {
  it.each(SENTENCES)("%s %j", (kind, fault, sentence) => {
    expect(titleOf(model, { kind, ...fault })).toBe(sentence);
  });

  it("has a sentence for every kind", () => {
    expect(new Set(SENTENCES.map(([kind]) => kind))).toEqual(new Set(FAULT_KINDS));
  });
});

import type { CircuitSheet } from "@underchassis/grading";
import { describe, expect, it } from "vitest";
import { textWidth } from "../text/wrapText.ts";
import { renderCircuit } from "./renderCircuit.ts";

/** Ohm's law by hand: 6.3 V RMS across 63 ohm is 100 mA RMS, 141.4 mA at the peak (sqrt 2), 0.63 W. */
const sheet: CircuitSheet = {
  title: "Lamp chassis",
  life: "restored",
  condition: "operating",
  lineVolts: 117,
  hertz: 60,
  reference: "chassis",
  elements: [
    { kind: "voltage-source", id: "line", nodes: ["line hot", "line neutral"], rmsVolts: 117, hertz: 60 },
    {
      kind: "transformer",
      id: "T1",
      windings: [
        { id: "primary", nodes: ["line hot", "line neutral"], turns: 117, ohms: 2.5 },
        { id: "heater", nodes: ["heater a", "chassis"], turns: 6.3, ohms: 0.0125 },
      ],
    },
    { kind: "resistor", id: "R1", nodes: ["heater a", "chassis"], ohms: 63 },
    {
      kind: "triode",
      id: "V1",
      nodes: { plate: "B+", grid: "g", cathode: "k" },
      mu: 100,
    } as unknown as CircuitSheet["elements"][number],
  ],
  notes: ["I1 stands as 63 ohm."],
  points: [{ point: "heater a", meanVolts: 0, acRmsVolts: 6.3, maxVolts: 8.91, minVolts: -8.91, rippleVolts: 17.82 }],
  currents: [{ element: "R1", meanAmps: 0, rmsAmps: 0.1, peakAmps: 0.141421, watts: 0.63 }],
  currentResidual: 2.5e-9,
};

const text = renderCircuit(sheet);
const cellsOf = (start: string): string[] => {
  const line = text.split("\n").find((candidate) => candidate.startsWith(`${start} `));
  return (line ?? "").split(/ {2,}/);
};

describe("renderCircuit", () => {
  it("says what was simulated, against which point, and how well the currents balance", () => {
    const [head, balance, note] = text.split("\n");
    expect(head).toBe("Lamp chassis: restored, operating, line 117 V 60 Hz");
    expect(balance).toContain("0 V is chassis.");
    expect(balance).toContain("2.5e-9");
    expect(note).toBe("I1 stands as 63 ohm.");
  });

  it("lists each element with its points and values, windings under their transformer, tubes by pin", () => {
    expect(cellsOf("R1")).toStrictEqual(["R1", "resistor", "heater a - chassis", "ohms 63"]);
    expect(cellsOf("T1.heater")).toStrictEqual(["T1.heater", "winding", "heater a - chassis", "turns 6.3000, ohms 0.01250"]);
    expect(cellsOf("V1")).toStrictEqual(["V1", "triode", "plate B+, grid g, cathode k", "mu 100"]);
    for (const element of sheet.elements) expect(text).toMatch(new RegExp(`^${element.id} `, "m"));
  });

  it("lists what each point and element carries", () => {
    expect(cellsOf("heater a")).toStrictEqual(["heater a", "0 V", "6.3 V", "8.91 V", "-8.91 V", "17.82 V"]);
    const carried = text.split("\n").filter((line) => line.startsWith("R1 "))[1] ?? "";
    expect(carried.split(/ {2,}/)).toStrictEqual(["R1", "0 A", "100 mA", "141.4 mA", "0.63 W"]);
  });

  it("keeps to the width and lets nothing hidden through", () => {
    const hostile = renderCircuit(
      { ...sheet, title: "\u001b[31mred", notes: [], elements: [{ kind: "resistor", id: "R\u202e9", nodes: ["a\u0007", "b"], ohms: 1 }] },
      72,
    );
    expect(/[\p{Cc}\p{Cf}]/u.exec(hostile.replaceAll("\n", ""))).toBeNull();
    expect(hostile).toContain("[U+202E]");
    for (const line of renderCircuit(sheet, 72).split("\n").slice(3)) expect(textWidth(line)).toBeLessThanOrEqual(72);
  });

  it("makes every head line and note visible, however many there are", () => {
    expect(renderCircuit({ ...sheet, notes: ["one", "two\u001b[2J"] })).not.toContain("\u001b");
  });
});

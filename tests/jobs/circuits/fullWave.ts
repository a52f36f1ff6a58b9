/** Full-wave supplies from a centre-tapped winding. Values are typical of the trade (common-practice). */
import type { JobCircuit } from "./case.ts";
import { capacitorInput, load, sourceOhms, transformer, two } from "./shorthand.ts";

const hv = (marked: string, measured: string) => ({ between: ["hv 1", "chassis", "hv 2"] as [string, string, string], marked, measured });
const filament = { between: ["raw", "filament 2"] as [string, string], marked: "5 V 2 A", measured: "0.1 ohm" };
const heaters = { between: ["chassis", "heater 2"] as [string, string], marked: "6.3 V 3 A", measured: "0.08 ohm" };

const plates = (type: string, cathode: string) =>
  ({ name: "V1", kind: "rectifier", type, pins: { "plate-1": "hv 1", "plate-2": "hv 2", cathode } }) as const;

/** Resistance of one plate in its pulses, from the published drops: 5Y3GT 50 V at 125 mA, 6X4 22 V at 70 mA. */
const OHMS_5Y3 = 230;
const OHMS_6X4 = 200;

export const FULL_WAVE: readonly JobCircuit[] = [
  {
    name: "full-wave-capacitor-input",
    around: [
      transformer({ hv: hv("300-0-300 V", "200 ohm"), "rectifier-filament": filament, heaters }),
      load("LOAD", "B+", "chassis", "80 mA"),
    ],
    stage: {
      template: "supply-full-wave-capacitor",
      bind: { "hv-a": "hv 1", "hv-b": "hv 2", "b-plus": "B+", cathode: "raw", input: "B+ in" },
      parts: {
        rectifier: { name: "V1", type: "5Y3GT" },
        surgeResistor: { name: "R1", marked: "47 ohm 10 W" },
        reservoir: { name: "C1", marked: "20 uF 450 V" },
        choke: { name: "L1", marked: "8 H 100 mA 250 ohm" },
        outputCapacitor: { name: "C2", marked: "40 uF 450 V" },
        bleeder: { name: "R2", marked: "47 kohm 5 W" },
      },
    },
    parts: [
      plates("5Y3GT", "raw"),
      two("resistor", "R1", "raw", "B+ in", "47 ohm 10 W"),
      two("capacitor", "C1", "B+ in", "chassis", "20 uF 450 V electrolytic"),
      two("inductor", "L1", "B+ in", "B+", "8 H 100 mA 250 ohm"),
      two("capacitor", "C2", "B+", "chassis", "40 uF 450 V electrolytic"),
      two("resistor", "R2", "B+", "chassis", "47 kohm 5 W"),
    ],
    byHand: {
      point: "B+",
      loaded: capacitorInput(300, 0.086, sourceOhms(300, 100) + OHMS_5Y3 + 47, 20, 2) - 0.086 * 250,
      noLoad: capacitorInput(300, 0.0085, sourceOhms(300, 100) + 2 * OHMS_5Y3 + 47, 20, 2),
      within: 0.1,
      formula: "capacitor input, less the choke's drop; a tube's resistance is twice as high at a tenth of the current",
    },
  },
  {
    name: "full-wave-choke-input",
    around: [
      transformer({ hv: hv("425-0-425 V", "140 ohm") }),
      // The loss in the choke's iron: without it the simulator finds no voltage for the cathode while nothing conducts.
      two("resistor", "RL1", "raw", "B+ mid", "470 kohm 2 W"),
      load("LOAD", "B+", "chassis", "120 mA"),
    ],
    stage: {
      template: "supply-full-wave-choke",
      bind: { "hv-a": "hv 1", "hv-b": "hv 2", "b-plus": "B+", cathode: "raw", first: "B+ mid" },
      parts: {
        rectifier: { name: "V1", type: "5U4GB" },
        inputChoke: { name: "L1", marked: "15 H 200 mA 150 ohm" },
        firstCapacitor: { name: "C1", marked: "16 uF 700 V oil" },
        smoothingChoke: { name: "L2", marked: "8 H 200 mA 100 ohm" },
        outputCapacitor: { name: "C2", marked: "16 uF 700 V oil" },
        bleeder: { name: "R1", marked: "15 kohm 25 W" },
      },
    },
    parts: [
      plates("5U4GB", "raw"),
      two("inductor", "L1", "raw", "B+ mid", "15 H 200 mA 150 ohm"),
      two("capacitor", "C1", "B+ mid", "chassis", "16 uF 700 V oil"),
      two("inductor", "L2", "B+ mid", "B+", "8 H 200 mA 100 ohm"),
      two("capacitor", "C2", "B+", "chassis", "16 uF 700 V oil"),
      two("resistor", "R1", "B+", "chassis", "15 kohm 25 W"),
    ],
    byHand: {
      point: "B+",
      // 2 sqrt(2) / pi of the winding, less the resistances and the tube's drop (44 V at 225 mA, by the 3/2 power).
      loaded: 0.9 * 425 - 0.142 * (sourceOhms(425, 70) + 250) - 44 * (0.142 / 0.225) ** (2 / 3),
      noLoad: 0.9 * 425 - 0.025 * (sourceOhms(425, 70) + 250) - 44 * (0.025 / 0.225) ** (2 / 3),
      within: 0.03,
      formula: "2 sqrt(2) / pi of the winding's volts, less I R and the tube's drop",
    },
  },
  {
    name: "full-wave-resistor-filter",
    around: [transformer({ hv: hv("250-0-250 V", "500 ohm"), heaters }), load("LOAD", "B+", "chassis", "30 mA")],
    stage: {
      template: "supply-full-wave-resistor-filter",
      bind: { "hv-a": "hv 1", "hv-b": "hv 2", "b-plus": "B+", cathode: "raw", input: "B+ in" },
      parts: {
        rectifier: { name: "V1", type: "6X4" },
        surgeResistor: { name: "R3", marked: "220 ohm 5 W" },
        reservoir: { name: "C1", marked: "10 uF 450 V" },
        filterResistor: { name: "R1", marked: "1.5 kohm 10 W" },
        outputCapacitor: { name: "C2", marked: "20 uF 450 V" },
        bleeder: { name: "R2", marked: "100 kohm 2 W" },
      },
    },
    parts: [
      plates("6X4", "raw"),
      two("resistor", "R3", "raw", "B+ in", "220 ohm 5 W"),
      two("capacitor", "C1", "B+ in", "chassis", "10 uF 450 V electrolytic"),
      two("resistor", "R1", "B+ in", "B+", "1.5 kohm 10 W"),
      two("capacitor", "C2", "B+", "chassis", "20 uF 450 V electrolytic"),
      two("resistor", "R2", "B+", "chassis", "100 kohm 2 W"),
    ],
    byHand: {
      point: "B+",
      loaded: capacitorInput(250, 0.032, sourceOhms(250, 250) + OHMS_6X4 + 220, 10, 2) - 0.032 * 1500,
      noLoad: capacitorInput(250, 0.0033, sourceOhms(250, 250) + 2 * OHMS_6X4 + 220, 10, 2) - 0.0033 * 1500,
      within: 0.1,
      formula: "capacitor input, less the filter resistor's drop",
    },
  },
];

/** Supplies from a plain winding: bridge, doublers, half-wave. Values are typical of the trade (common-practice). */
import type { JobCircuit } from "./case.ts";
import { capacitorInput, diode, load, sourceOhms, transformer, two } from "./shorthand.ts";

const winding = (a: string, b: string, marked: string, measured: string) => transformer({ hv: { between: [a, b], marked, measured } });

export const SINGLE_WINDING: readonly JobCircuit[] = [
  {
    name: "bridge",
    around: [
      winding("hv 1", "hv 2", "250 V", "30 ohm"),
      // Insulation of the winding, which holds it while no diode conducts.
      two("resistor", "R8", "hv 1", "chassis", "20 Mohm"),
      two("resistor", "R9", "hv 2", "chassis", "20 Mohm"),
      load("LOAD", "B+", "chassis", "100 mA"),
    ],
    stage: {
      template: "supply-bridge",
      bind: { "ac-a": "hv 1", "ac-b": "hv 2", "b-plus": "B+", cathode: "raw", input: "B+ in" },
      parts: {
        rectifierA: { name: "D1", type: "1N4007" },
        rectifierB: { name: "D2", type: "1N4007" },
        rectifierC: { name: "D3", type: "1N4007" },
        rectifierD: { name: "D4", type: "1N4007" },
        surgeResistor: { name: "R1", marked: "22 ohm 5 W" },
        reservoir: { name: "C1", marked: "47 uF 450 V" },
        filterResistor: { name: "R2", marked: "220 ohm 5 W" },
        outputCapacitor: { name: "C2", marked: "47 uF 450 V" },
        bleeder: { name: "R3", marked: "100 kohm 2 W" },
      },
    },
    parts: [
      diode("D1", "hv 1", "raw"),
      diode("D2", "hv 2", "raw"),
      diode("D3", "chassis", "hv 1"),
      diode("D4", "chassis", "hv 2"),
      two("resistor", "R1", "raw", "B+ in", "22 ohm 5 W"),
      two("capacitor", "C1", "B+ in", "chassis", "47 uF 450 V electrolytic"),
      two("resistor", "R2", "B+ in", "B+", "220 ohm 5 W"),
      two("capacitor", "C2", "B+", "chassis", "47 uF 450 V electrolytic"),
      two("resistor", "R3", "B+", "chassis", "100 kohm 2 W"),
    ],
    byHand: {
      point: "B+",
      loaded: capacitorInput(250, 0.103, sourceOhms(250, 30) + 22, 47, 2) - 0.103 * 220,
      noLoad: capacitorInput(250, 0.0035, sourceOhms(250, 30) + 22, 47, 2),
      within: 0.06,
      formula: "capacitor input, less the filter resistor's drop",
    },
  },
  {
    name: "doubler-full-wave",
    around: [winding("hv 1", "middle", "120 V", "8 ohm"), load("LOAD", "B+", "chassis", "100 mA")],
    stage: {
      template: "supply-doubler-full-wave",
      bind: { "ac-a": "hv 1", "ac-b": "middle", "b-plus": "B+", pump: "pump" },
      parts: {
        surgeResistor: { name: "R1", marked: "22 ohm 5 W" },
        rectifierA: { name: "D1", type: "1N4007" },
        rectifierB: { name: "D2", type: "1N4007" },
        upperCapacitor: { name: "C1", marked: "100 uF 250 V" },
        lowerCapacitor: { name: "C2", marked: "100 uF 250 V" },
        upperBalancing: { name: "R2", marked: "100 kohm 2 W" },
        lowerBalancing: { name: "R3", marked: "100 kohm 2 W" },
      },
    },
    parts: [
      two("resistor", "R1", "hv 1", "pump", "22 ohm 5 W"),
      diode("D1", "pump", "B+"),
      diode("D2", "chassis", "pump"),
      two("capacitor", "C1", "B+", "middle", "100 uF 250 V electrolytic"),
      two("capacitor", "C2", "middle", "chassis", "100 uF 250 V electrolytic"),
      two("resistor", "R2", "B+", "middle", "100 kohm 2 W"),
      two("resistor", "R3", "middle", "chassis", "100 kohm 2 W"),
    ],
    byHand: {
      point: "B+",
      loaded: 2 * capacitorInput(120, 0.1015, sourceOhms(120, 8) + 22, 100, 1),
      noLoad: 2 * capacitorInput(120, 0.0017, sourceOhms(120, 8) + 22, 100, 1),
      within: 0.06,
      formula: "two half-wave supplies in series",
    },
  },
  {
    name: "doubler-half-wave",
    around: [winding("hv 1", "chassis", "120 V", "8 ohm"), load("LOAD", "B+", "chassis", "60 mA")],
    stage: {
      template: "supply-doubler-half-wave",
      bind: { "ac-hot": "hv 1", "b-plus": "B+", driven: "driven", pump: "pump" },
      parts: {
        surgeResistor: { name: "R1", marked: "22 ohm 5 W" },
        seriesCapacitor: { name: "C1", marked: "100 uF 250 V" },
        rectifierA: { name: "D1", type: "1N4007" },
        rectifierB: { name: "D2", type: "1N4007" },
        reservoir: { name: "C2", marked: "100 uF 450 V" },
        bleeder: { name: "R2", marked: "100 kohm 2 W" },
      },
    },
    parts: [
      two("resistor", "R1", "hv 1", "driven", "22 ohm 5 W"),
      two("capacitor", "C1", "pump", "driven", "100 uF 250 V electrolytic"),
      diode("D1", "chassis", "pump"),
      diode("D2", "pump", "B+"),
      two("capacitor", "C2", "B+", "chassis", "100 uF 450 V electrolytic"),
      two("resistor", "R2", "B+", "chassis", "100 kohm 2 W"),
    ],
    byHand: {
      point: "B+",
      // The series capacitor gives its charge once a cycle too: another I / (f C) on top of the half ripple of each.
      loaded: 2 * capacitorInput(120, 0.063, sourceOhms(120, 8) + 22, 100, 1) - 0.063 / (2 * 60 * 100e-6),
      noLoad: 2 * capacitorInput(120, 0.0034, sourceOhms(120, 8) + 22, 100, 1),
      within: 0.06,
      formula: "twice the peak, less 3 I / (2 f C) and the source's drop in both pulses",
    },
  },
  {
    name: "half-wave-silicon",
    around: [winding("hv 1", "chassis", "125 V", "20 ohm"), load("LOAD", "B+", "chassis", "20 mA")],
    stage: {
      template: "supply-half-wave",
      bind: { hv: "hv 1", "b-plus": "B+", cathode: "raw", input: "B+ in" },
      parts: {
        rectifier: { name: "D1", type: "1N4007" },
        surgeResistor: { name: "R1", marked: "100 ohm 2 W" },
        reservoir: { name: "C1", marked: "40 uF 250 V" },
        filterResistor: { name: "R2", marked: "1 kohm 2 W" },
        outputCapacitor: { name: "C2", marked: "40 uF 250 V" },
        bleeder: { name: "R3", marked: "100 kohm 1 W" },
      },
    },
    parts: [
      diode("D1", "hv 1", "raw"),
      two("resistor", "R1", "raw", "B+ in", "100 ohm 2 W"),
      two("capacitor", "C1", "B+ in", "chassis", "40 uF 250 V electrolytic"),
      two("resistor", "R2", "B+ in", "B+", "1 kohm 2 W"),
      two("capacitor", "C2", "B+", "chassis", "40 uF 250 V electrolytic"),
      two("resistor", "R3", "B+", "chassis", "100 kohm 1 W"),
    ],
    byHand: {
      point: "B+",
      loaded: capacitorInput(125, 0.0214, sourceOhms(125, 20) + 100, 40, 1) - 0.0214 * 1000,
      noLoad: capacitorInput(125, 0.0017, sourceOhms(125, 20) + 100, 40, 1),
      within: 0.06,
      formula: "half-wave capacitor input, less the filter resistor's drop",
    },
  },
  {
    name: "half-wave-selenium",
    around: [winding("hv 1", "chassis", "125 V", "20 ohm"), load("LOAD", "B+", "chassis", "40 mA")],
    stage: {
      template: "supply-half-wave",
      bind: { hv: "hv 1", "b-plus": "B+", cathode: "raw" },
      parts: {
        rectifier: { name: "SR1", type: "selenium 130 V 100 mA" },
        reservoir: { name: "C1", marked: "40 uF 250 V" },
        filterResistor: { name: "R2", marked: "470 ohm 2 W" },
        outputCapacitor: { name: "C2", marked: "40 uF 250 V" },
        bleeder: { name: "R3", marked: "47 kohm 1 W" },
      },
    },
    // No surge resistor: the rectifier's cathode and the reservoir's input are one point.
    parts: [
      diode("SR1", "hv 1", "raw", "selenium 130 V 100 mA"),
      two("capacitor", "C1", "raw", "chassis", "40 uF 250 V electrolytic"),
      two("resistor", "R2", "raw", "B+", "470 ohm 2 W"),
      two("capacitor", "C2", "B+", "chassis", "40 uF 250 V electrolytic"),
      two("resistor", "R3", "B+", "chassis", "47 kohm 1 W"),
    ],
    byHand: {
      point: "B+",
      // Five plates (130 V over 26 V each): 0.55 V knee and 4.5 ohm apiece.
      loaded: capacitorInput(125, 0.043, sourceOhms(125, 20) + 22.5, 40, 1) - 0.043 * 470 - 2.75,
      noLoad: capacitorInput(125, 0.0037, sourceOhms(125, 20) + 22.5, 40, 1) - 0.0037 * 470 - 2.75,
      within: 0.06,
      formula: "half-wave capacitor input, less the plates' knees and the filter resistor's drop",
    },
  },
];

/** The other supply stages: transformerless, stacked capacitors, divider, bias, regulator tube. Values are typical of the trade (common-practice). */
import type { JobPart } from "@underchassis/dataset";
import type { JobCircuit } from "./case.ts";
import { capacitorInput, diode, load, sourceOhms, transformer, two } from "./shorthand.ts";

/** A silicon full-wave supply for the stages that need one: `volts` a side open, 47 uF at "raw", 220 kohm across it. */
const fed = (volts: number): JobPart[] => [
  transformer({ hv: { between: ["hv 1", "chassis", "hv 2"], marked: `${volts}-0-${volts} V`, measured: "160 ohm" } }),
  diode("D8", "hv 1", "raw"),
  diode("D9", "hv 2", "raw"),
  two("capacitor", "C9", "raw", "chassis", "47 uF 500 V electrolytic"),
  two("resistor", "R9", "raw", "chassis", "220 kohm 2 W"),
];

const fedVolts = (volts: number, amps: number): number => capacitorInput(volts, amps, sourceOhms(volts, 80), 47, 2);

/** (V - I R1) / (1 + R1 / R2): a divider with a load at its tap. */
const tapVolts = (volts: number, amps: number, upperOhms: number, lowerOhms: number): number =>
  (volts - amps * upperOhms) / (1 + upperOhms / lowerOhms);

export const SPECIAL: readonly JobCircuit[] = [
  {
    name: "half-wave-transformerless",
    reference: "B-",
    isolation: "transformerless",
    around: [
      {
        name: "W1",
        kind: "cord",
        marked: "2-wire",
        pins: { "hot-in": "line hot", "hot-out": "line 1", "neutral-in": "line neutral", "neutral-out": "B-" },
      },
      load("LOAD", "B+", "B-", "25 mA"),
      load("LOAD2", "B+ in", "B-", "30 mA"),
      two("resistor", "R8", "B+", "B-", "470 kohm 0.5 W"),
    ],
    stage: {
      template: "supply-half-wave-transformerless",
      bind: { "line-a": "line 1", "b-minus": "B-", "b-plus": "B+", chassis: "chassis", plate: "plate", input: "B+ in" },
      parts: {
        surgeResistor: { name: "R1", marked: "33 ohm 5 W" },
        rectifier: { name: "V1", type: "35W4" },
        reservoir: { name: "C1", marked: "40 uF 150 V" },
        filterResistor: { name: "R2", marked: "1 kohm 2 W" },
        outputCapacitor: { name: "C2", marked: "30 uF 150 V" },
        heaterString: { name: "HEATERS", marked: "810 ohm 121.5 V" },
        lineToChassis: { name: "C9", marked: "0.1 uF 250 VAC X2" },
        chassisReturn: { name: "R9", marked: "220 kohm 0.5 W" },
      },
    },
    parts: [
      two("resistor", "R1", "line 1", "plate", "33 ohm 5 W"),
      { name: "V1", kind: "rectifier", type: "35W4", between: ["plate", "B+ in"] },
      two("capacitor", "C1", "B+ in", "B-", "40 uF 150 V electrolytic"),
      two("resistor", "R2", "B+ in", "B+", "1 kohm 2 W"),
      two("capacitor", "C2", "B+", "B-", "30 uF 150 V electrolytic"),
      { name: "HEATERS", kind: "load", between: ["line 1", "B-"], marked: "810 ohm 121.5 V", presentIn: ["standby", "operating"] },
      two("capacitor", "C9", "B-", "chassis", "0.1 uF 250 VAC X2"),
      two("resistor", "R9", "B-", "chassis", "220 kohm 0.5 W"),
    ],
    byHand: {
      point: "B+",
      // 35W4: 18 V at 200 mA, 90 ohm in its pulses.
      loaded: capacitorInput(120, 0.055, 33 + 60, 40, 1) - 0.025 * 1000,
      noLoad: Math.SQRT2 * 120,
      within: 0.1,
      formula: "half-wave capacitor input, less the filter resistor's drop; with nothing drawn, the line's peak",
    },
  },
  {
    name: "series-capacitors",
    around: [...fed(400), two("resistor", "R8", "raw", "B+", "100 ohm 5 W"), load("LOAD", "B+", "chassis", "60 mA")],
    stage: {
      template: "series-filter-capacitors",
      bind: { plus: "B+", middle: "middle" },
      parts: {
        upperCapacitor: { name: "C1", marked: "100 uF 350 V" },
        lowerCapacitor: { name: "C2", marked: "100 uF 350 V", measured: { leakage: "600 kohm" } },
        upperBalancing: { name: "R1", marked: "100 kohm 2 W" },
        lowerBalancing: { name: "R2", marked: "100 kohm 2 W" },
      },
    },
    parts: [
      two("capacitor", "C1", "B+", "middle", "100 uF 350 V electrolytic"),
      { ...two("capacitor", "C2", "middle", "chassis", "100 uF 350 V electrolytic"), measured: { leakage: "600 kohm" } },
      two("resistor", "R1", "B+", "middle", "100 kohm 2 W"),
      two("resistor", "R2", "middle", "chassis", "100 kohm 2 W"),
    ],
    byHand: {
      point: "middle",
      // 100 kohm beside a leak of 600 kohm is 85.7 kohm.
      loaded: ((fedVolts(400, 0.065) - 0.065 * 100) * 85.714) / 185.714,
      noLoad: (fedVolts(400, 0.0055) * 85.714) / 185.714,
      within: 0.06,
      formula: "the balancing resistors' share, the lower one with the capacitor's leak across it",
    },
  },
  {
    name: "bleeder-divider",
    around: [...fed(350), load("LOAD", "screen", "chassis", "20 mA")],
    stage: {
      template: "bleeder-divider",
      bind: { supply: "raw", tap: "screen", return: "chassis" },
      parts: {
        upper: { name: "R1", marked: "5 kohm 25 W" },
        lower: { name: "R2", marked: "15 kohm 25 W" },
        tapCapacitor: { name: "C1", marked: "8 uF 450 V oil" },
      },
    },
    parts: [
      two("resistor", "R1", "raw", "screen", "5 kohm 25 W"),
      two("resistor", "R2", "screen", "chassis", "15 kohm 25 W"),
      two("capacitor", "C1", "screen", "chassis", "8 uF 450 V oil"),
    ],
    byHand: {
      point: "screen",
      loaded: tapVolts(fedVolts(350, 0.04), 0.02, 5000, 15000),
      noLoad: tapVolts(fedVolts(350, 0.026), 0, 5000, 15000),
      within: 0.06,
      formula: "(V - I R1) / (1 + R1 / R2)",
    },
  },
  {
    name: "bias-supply",
    around: [
      transformer({ hv: { between: ["tap", "chassis"], marked: "60 V", measured: "15 ohm" } }),
      load("GRIDS", "chassis", "bias", "220 kohm"),
    ],
    stage: {
      template: "bias-supply",
      bind: { "bias-tap": "tap", "bias-out": "bias", rectified: "bias raw", filtered: "bias filtered" },
      parts: {
        biasRectifier: { name: "D1", type: "1N4007" },
        reservoir: { name: "C1", marked: "22 uF 100 V" },
        filterResistor: { name: "R1", marked: "4.7 kohm 1 W" },
        filterCapacitor: { name: "C2", marked: "22 uF 100 V" },
        upper: { name: "R2", marked: "10 kohm 1 W" },
        lower: { name: "R3", marked: "33 kohm 1 W" },
      },
    },
    parts: [
      diode("D1", "bias raw", "tap"),
      two("capacitor", "C1", "chassis", "bias raw", "22 uF 100 V electrolytic"),
      two("resistor", "R1", "bias filtered", "bias raw", "4.7 kohm 1 W"),
      two("capacitor", "C2", "chassis", "bias filtered", "22 uF 100 V electrolytic"),
      two("resistor", "R2", "bias", "bias filtered", "10 kohm 1 W"),
      two("resistor", "R3", "chassis", "bias", "33 kohm 1 W"),
    ],
    byHand: {
      point: "bias",
      // 33 kohm beside the grids' 220 kohm is 28.696 kohm.
      loaded: (-(capacitorInput(60, 0.0019, sourceOhms(60, 15), 22, 1) - 0.7) * 28.696) / (28.696 + 14.7),
      noLoad: (-(capacitorInput(60, 0.0017, sourceOhms(60, 15), 22, 1) - 0.7) * 33) / 47.7,
      within: 0.03,
      formula: "half-wave peak less sag and the diode's drop, divided",
    },
  },
  {
    name: "regulator-gas-tube",
    around: [...fed(220), load("LOAD", "VR", "chassis", "10 mA")],
    stage: {
      template: "regulator-gas-tube",
      bind: { supply: "raw", regulated: "VR" },
      parts: {
        feedResistor: { name: "R1", marked: "4.7 kohm 10 W" },
        regulator: { name: "V2", type: "0D3" },
        shuntCapacitor: { name: "C1", marked: "0.1 uF 400 V film" },
      },
    },
    parts: [
      two("resistor", "R1", "raw", "VR", "4.7 kohm 10 W"),
      { name: "V2", kind: "regulator-tube", type: "0D3", between: ["VR", "chassis"] },
      two("capacitor", "C1", "VR", "chassis", "0.1 uF 400 V film"),
    ],
    byHand: {
      point: "VR",
      loaded: 153,
      noLoad: fedVolts(220, 0.0014),
      within: 0.03,
      formula: "the tube's nominal 153 V; pulled, what the supply gives",
    },
    lit: { V2: true },
  },
];

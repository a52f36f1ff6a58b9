import type { Dimension } from "./types.ts";

export interface DimensionFacts {
  /** With article, for messages: "a resistance". */
  name: string;
  /** What a reader should write, with an example. */
  expected: string;
  /** The unit a suggestion falls back to. */
  usualUnit: string;
  /** May it be below zero? */
  signed: boolean;
  /** What a number without unit means; null where it would be a guess. */
  bareUnit: string | null;
}

/** What the reader of quantities knows of each dimension. */
export const dimensionFacts: Readonly<Record<Dimension, DimensionFacts>> = {
  resistance: {
    name: "a resistance",
    expected: 'a resistance such as "470 ohm", "4k7" or "2.2 Mohm"',
    usualUnit: "ohm",
    signed: false,
    bareUnit: "ohm",
  },
  capacitance: {
    name: "a capacitance",
    expected: 'a capacitance such as "0.05 uF", "250 pF" or "40 mfd"',
    usualUnit: "uF",
    signed: false,
    bareUnit: null,
  },
  inductance: { name: "an inductance", expected: 'an inductance such as "8 H" or "2.5 mH"', usualUnit: "H", signed: false, bareUnit: "H" },
  voltage: { name: "a voltage", expected: 'a voltage such as "285 V" or "-55 V"', usualUnit: "V", signed: true, bareUnit: "V" },
  current: { name: "a current", expected: 'a current such as "60 mA" or "1.5 A"', usualUnit: "mA", signed: true, bareUnit: "A" },
  power: { name: "a power", expected: 'a power such as "0.5 W" or "1/2 W"', usualUnit: "W", signed: false, bareUnit: "W" },
  energy: { name: "an energy", expected: 'an energy such as "20 J"', usualUnit: "J", signed: false, bareUnit: "J" },
  frequency: {
    name: "a frequency",
    expected: 'a frequency such as "60 Hz", "455 kHz" or "7.1 Mc"',
    usualUnit: "Hz",
    signed: false,
    bareUnit: "Hz",
  },
  time: { name: "a time", expected: 'a time such as "30 s" or "50 us"', usualUnit: "s", signed: false, bareUnit: "s" },
  temperature: {
    name: "a temperature",
    expected: 'a temperature with its unit, such as "25 degC" or "298 K"',
    usualUnit: "degC",
    signed: false,
    bareUnit: null,
  },
  conductance: {
    name: "a conductance",
    expected: 'a conductance such as "5.2 mS" or "5200 umho"',
    usualUnit: "umho",
    signed: false,
    bareUnit: "S",
  },
  charge: { name: "a charge", expected: 'a charge such as "45 uC"', usualUnit: "uC", signed: true, bareUnit: "C" },
  length: { name: "a length", expected: 'a length with its unit, such as "3 mm"', usualUnit: "mm", signed: false, bareUnit: null },
  ratio: { name: "a ratio", expected: 'a ratio such as "0.95" or "95 %"', usualUnit: "%", signed: true, bareUnit: "" },
};

import type { CodeReading } from "./codeReading.ts";
import type { Colour } from "./colours.ts";
import { farads, type Percents, percentsOf, type Reader } from "./dotReading.ts";

/** RMA: the digit is the tolerance and the hundreds of volts (S14; black tolerance doubtful, from-memory). */
export const rmaPercents: Percents = {
  black: 20,
  brown: 1,
  red: 2,
  orange: 3,
  yellow: 4,
  green: 5,
  blue: 6,
  violet: 7,
  grey: 8,
  white: 9,
  gold: 5,
  silver: 10,
  none: 20,
};
export const rmaVolts: Percents = {
  brown: 100,
  red: 200,
  orange: 300,
  yellow: 400,
  green: 500,
  blue: 600,
  violet: 700,
  grey: 800,
  white: 900,
  gold: 1000,
  silver: 2000,
  none: 500,
};

/** AWS, JAN, MIL and EIA (from-memory; yellow from 1940s charts, reference section 2.1). Blue as 2 % in one lesson (S15) is an error. */
export const awsPercents: Percents = { black: 20, brown: 1, red: 2, orange: 3, yellow: 4, green: 5, gold: 5, silver: 10, none: 20 };

/** Powers of ten of the same codes (S11; silver from-memory). */
export const awsPowers: readonly Colour[] = ["black", "brown", "red", "orange", "yellow", "gold", "silver"];

/** Characteristic: letter and temperature coefficient in ppm/K (S11; F from-memory). */
export const micaCharacteristics: Readonly<Partial<Record<Colour, readonly [string, number, number]>>> = {
  black: ["A", -1000, 1000],
  brown: ["B", -500, 500],
  red: ["C", -200, 200],
  orange: ["D", -100, 100],
  yellow: ["E", -20, 100],
  green: ["F", 0, 70],
  grey: ["I", -50, 150],
  white: ["J", -50, 100],
};

/** What the first of six dots says of the make (S15, S16). */
export const micaTypes: Readonly<Partial<Record<Colour, string>>> = {
  black: "mica, AWS/JAN/MIL",
  white: "mica, EIA",
  silver: "moulded paper, AWS",
};

/** RMA three dots: figure, figure, power of ten; 500 V, 20 % (S14). */
export const rmaThreeDots: Reader = ([first, second, power]) => {
  const value = farads([first, second], power);
  if (value === undefined) return [];
  return [
    {
      ...base(value, "RMA 3-dot mica", "two figures and a power of ten"),
      ...percentsOf(20),
      toleranceWritten: false,
      ratedVolts: 500,
      notes: ["voltage and tolerance are the code's defaults"],
    },
  ];
};

/** RMA five dots; the extra two are volts and tolerance, in an order that differed: both are given when both fit (S14). */
export const rmaFiveDots: Reader = ([first, second, power, fourth = "none", fifth = "none"]) => {
  const value = farads([first, second], power);
  if (value === undefined) return [];
  const orders = [
    [fourth, fifth, "volts, then tolerance"],
    [fifth, fourth, "tolerance, then volts"],
  ] as const;
  return orders.flatMap(([voltDot, toleranceDot, order]): CodeReading[] => {
    const volts = rmaVolts[voltDot];
    const percent = rmaPercents[toleranceDot];
    if (volts === undefined || percent === undefined) return [];
    const notes = ["several layouts of five dots existed: the reading order is not settled"];
    return [
      {
        ...base(value, "RMA 5-dot mica", order),
        ...percentsOf(percent),
        toleranceWritten: toleranceDot !== "none",
        ratedVolts: volts,
        notes,
      },
    ];
  });
};

/** Old RMA six dots: top three figures, bottom from the right power of ten, tolerance, volts (S14; order from-memory). */
export const rmaSixDots: Reader = ([first, second, third, volts = "none", tolerance = "none", power]) => {
  const value = farads([first, second, third], power);
  const percent = rmaPercents[tolerance];
  const rated = rmaVolts[volts];
  if (value === undefined || percent === undefined || rated === undefined) return [];
  return [
    {
      ...base(value, "RMA 6-dot mica", "the first dot is a figure, three figures in all"),
      ...percentsOf(percent),
      toleranceWritten: tolerance !== "none",
      ratedVolts: rated,
      notes: ["order of the lower row doubtful"],
    },
  ];
};

/** AWS, JAN, MIL and EIA six dots: type, two figures; bottom from the right power of ten, tolerance, characteristic (S15, S16). */
export const awsSixDots: Reader = ([type = "none", first, second, characteristic = "none", tolerance = "none", power]) => {
  const make = micaTypes[type];
  const value = farads([first, second], power, awsPowers);
  const percent = awsPercents[tolerance];
  if (make === undefined || value === undefined || percent === undefined) return [];
  const [letter, low, high] = micaCharacteristics[characteristic] ?? [];
  const known = letter !== undefined && low !== undefined && high !== undefined;
  return [
    {
      ...base(value, type === "silver" ? "AWS 6-dot paper" : "AWS/JAN/EIA 6-dot mica", `a ${type} first dot is the type: ${make}`),
      ...percentsOf(percent),
      toleranceWritten: tolerance !== "none",
      ...(known ? { characteristic: letter, temperatureCoefficientPpm: [low, high] as const } : {}),
      notes: ["voltage is not coded: it follows from the size"],
    },
  ];
};

function base(value: number, family: string, because: string): Pick<CodeReading, "value" | "dimension" | "family" | "because"> {
  return { value, dimension: "capacitance", family, because };
}
